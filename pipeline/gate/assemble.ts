import { asOf, openingsOf, statedHold, cardHold, type Instant } from '../model/index.js';
import type { Released } from '../select/index.js';
import { lensOf, type Audience } from './lens.js';
import { viewSet } from './set.js';
import type { Tables } from './tables.js';
import { seal, type View, type ViewProperty } from './view.js';

/**
 * What an audience may see of a released property, key by key, as the tables decide. Null before
 * `since`, when nothing is public.
 */
export function assembleView(released: Released, audience: Audience, tables: Tables): View | null {
  const step = audience.kind === 'house' ? null : stepOf(released, audience.at);
  if (step === null && audience.kind === 'public') return null;
  const lens = lensOf(released.property, atStep(audience, step));
  return {
    [seal]: true,
    audience: audience.kind,
    person:
      audience.kind === 'person' && lens.admits(tables.person.name) ? audience.person.name : null,
    asOf: step,
    highest: audience.kind === 'house' ? highestLevel(released) : null,
    property: viewProperty(released, tables, lens.admits),
    layouts:
      audience.kind === 'public'
        ? new Map()
        : new Map([...released.layouts].map(([id, layout]) => [id, layout.value])),
    sets: released.sets.flatMap((set) => viewSet(set, lens, tables) ?? []),
  };
}

function stepOf(released: Released, at: Instant): Instant | null {
  return asOf(released.property, released.sets, at);
}

/** The public's view depends on an instant only through the steps of time. */
function atStep(audience: Audience, step: Instant | null): Audience {
  return audience.kind === 'public' && step !== null ? { ...audience, at: step } : audience;
}

function viewProperty(
  { property }: Released,
  tables: Tables,
  admits: (decision: Tables['property']['title']) => boolean,
): ViewProperty {
  const legal = admits(tables.property.legal) && admits(tables.legal.line);
  const look = admits(tables.property.site) && admits(tables.site.look);
  return {
    title: property.title,
    zone: property.zone,
    legal: (legal ? property.legal?.line : undefined) ?? null,
    accent: (look ? property.site?.look?.accent : undefined) ?? null,
  };
}

/** The label of the highest level that any card or held span of the property has. */
function highestLevel({ property, sets }: Released): string | null {
  const schedule = lensOf(property, { kind: 'house' }).schedule;
  const levels = sets.flatMap((set) => [
    statedHold(schedule, set.plan.value).level,
    ...set.cards.flatMap((card) => [
      cardHold(schedule, set.plan.value, card).level,
      ...[
        ...Object.values(card.front.holds ?? {}),
        ...card.bio.flat().flatMap((run) => run.hold ?? []),
      ].map((id) => schedule.levels.findIndex((level) => level.id === id)),
    ]),
  ]);
  const highest = Math.max(0, ...levels);
  return openingsOf(schedule, { level: highest, embargoes: [] })[0]?.label ?? null;
}
