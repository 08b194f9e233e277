import { RULES } from '../checks/index.js';
import {
  cardHold,
  identityOf,
  realCount,
  subsetHold,
  subsetOf,
  type Card,
  type CardSet,
} from '../model/index.js';
import type { Ground } from './ground.js';
import { sayOpening, sayOpeningOf } from './openings.js';
import type { Line } from './shown.js';
import type { ValueKind } from './value-kinds.js';

/** What an editor says of the thing that an id names; null if nothing has that id. */
export function linesOfThing(kind: ValueKind, id: string, ground: Ground): readonly Line[] | null {
  const { content, property, set } = ground;
  switch (kind) {
    case 'level':
    case 'embargo':
    case 'hold':
      return linesOfHold(id, ground);
    case 'subset':
    case 'group':
    case 'countable':
      return linesOfCount(id, ground);
    case 'document': {
      const found = property.documents?.find((each) => each.id === id);
      if (!found) return null;
      const gone: readonly Line[] =
        found.withdrawn === undefined ? [] : [[`Withdrawn on ${found.withdrawn}`]];
      const level = found.level ?? null;
      return [
        [{ strong: found.title }, ', a source document'],
        ...levelLine(level, ground),
        ...gone,
      ];
    }
    case 'cut':
      return linesOfCut(id, ground);
    case 'person': {
      const found = content.people?.value.people.find((each) => each.id === id);
      return found
        ? [
            [{ strong: found.name }, `, ${found.role}`],
            ['Clearance: ', { code: found.clearance }],
          ]
        : null;
    }
    case 'layout': {
      const trim = content.layouts.get(id)?.value.trim;
      return trim
        ? [['Card layout ', { code: id }], [`${String(trim.width)} × ${String(trim.height)} mm`]]
        : null;
    }
    case 'card': {
      const card = set?.cards.find((each) => identityOf(each) === id);
      return card && set ? linesOfCard(card, set, ground) : null;
    }
    case 'rule': {
      const rule = RULES.find((each) => each.id === id);
      return rule ? [['Rule ', { code: rule.id }], [rule.why]] : null;
    }
    default:
      return null;
  }
}

function linesOfHold(id: string, { property, schedule, clock }: Ground): readonly Line[] | null {
  const level = property.levels.find((each) => each.id === id);
  const hold = level ?? property.embargoes?.find((each) => each.id === id);
  const opening = sayOpeningOf(schedule, id, clock);
  if (!hold || opening === null) return null;
  return [
    [{ strong: hold.label ?? id }, level ? ', level ' : ', embargo ', { code: id }],
    [capital(opening)],
    ...(hold.print === undefined ? [] : [[`In shops from ${hold.print}`]]),
  ];
}

/** The line of a level; none for something without one. */
function levelLine(id: string | null, ground: Ground): readonly Line[] {
  const opening = id === null ? null : sayOpeningOf(ground.schedule, id, ground.clock);
  return id === null || opening === null ? [] : [[`Level `, { code: id }, `: ${opening}`]];
}

/** What a subset, group or total counts, in the set of the file or, if that has none, in all. */
export function linesOfCount(id: string, ground: Ground): readonly Line[] | null {
  const sets = ground.set ? [ground.set] : ground.content.sets;
  const lines = sets.flatMap((set) => {
    const count = realCount(set, id);
    const subset = subsetOf(set.plan.value, id);
    const total = set.plan.value.totals?.[id];
    const title =
      subset?.title ??
      (typeof total === 'object' ? (total.title ?? id) : count === null ? null : id);
    if (title === null) return [];
    const kind = subset ? 'subset' : total === undefined || isGroup(set, id) ? 'group' : 'total';
    return [
      [{ strong: title }, `, ${kind} `, { code: id }],
      ...(count === null ? [] : [[`Counts ${String(count)}`]]),
      ...(subset ? [[capital(openingOfSubset(set, id, ground))]] : []),
    ];
  });
  return lines.length > 0 ? lines : null;
}

function openingOfSubset({ plan }: CardSet, id: string, { schedule, clock }: Ground): string {
  return sayOpening(schedule, subsetHold(schedule, plan.value, id), clock);
}

function isGroup(set: CardSet, id: string): boolean {
  return set.plan.value.subsets.some(({ group }) => group === id);
}

function linesOfCut(id: string, { property }: Ground): readonly Line[] | null {
  const cut = property.cuts?.find((each) => each.id === id);
  if (!cut) return null;
  const current = property.cuts?.at(-1) === cut ? ', the current one' : '';
  return [
    ['Cut ', { code: id }, current],
    [`Received on ${cut.received}`],
    ...(cut.touches ? [[`Changes ${cut.touches.join(', ')}`]] : []),
    ...(cut.names ? [[`Changes what is said of ${cut.names.join(', ')}`]] : []),
  ];
}

function linesOfCard(card: Card, set: CardSet, { schedule, clock }: Ground): readonly Line[] {
  const { number, name } = card.front;
  const hold = cardHold(schedule, set.plan.value, card);
  return [
    [{ strong: name }, `, number ${number}, `, { code: identityOf(card) }],
    [capital(sayOpening(schedule, hold, clock))],
  ];
}

/** A sentence begins with a capital. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
