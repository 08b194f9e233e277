import type { Card, CardSet, Hold } from '../../model/index.js';
import {
  countSubset,
  countableKind,
  opensLater,
  plannedNumbers,
  realCount,
  subsetHold,
  isIssued,
  isVariation,
} from '../../model/index.js';
import { traceHold } from '../known-hold.js';
import type { Thing } from './things.js';
import type { Subject, SubsetView } from '../subject.js';
import { partsOf, statedTotal } from '../totals.js';

/** A real count that a claim can be compared with. */
export interface RealCount {
  readonly value: number;
  /** "the subset `charts`", for people. */
  readonly of: string;
  /** Whether no other rule says that the cards are not as planned. */
  readonly sure: boolean;
  /** What holds a card of it that leaves no trace for the text; null if there is none. */
  readonly absent: Hold | null;
  /** The id by which a count link can name it. */
  readonly id: string | null;
}

/** Where a claim stands: what its set is and who reads it when. */
export interface Standing {
  readonly subject: Subject;
  readonly set: CardSet;
  readonly hold: Hold;
  /** The subset and the card that it stands on. */
  readonly subset: string | null;
  readonly card: Card | null;
}

/** The real counts that a thing can mean: none where the plan says nothing of it. */
export function realCounts(thing: Thing, standing: Standing): readonly RealCount[] {
  switch (thing.kind) {
    case 'part':
      return partCount(thing.id, standing);
    case 'whole':
      return wholeCounts(standing);
    case 'own':
      return ownCounts(standing);
    case 'any':
      return standing.set.plan.value.subsets
        .filter(({ group }) => thing.group === null || group === thing.group)
        .flatMap(({ id }) => partCount(id, standing));
    case 'subsets':
      return subsetsCounts(thing.group, standing);
    case 'run':
      return runCounts(thing.parallel, standing);
    case 'parallels':
      return parallelCounts(standing);
    case 'artists':
      return rosterCounts(standing);
    case 'signers':
      return signerCounts(standing);
    case 'number':
      return numberCounts(thing.among, standing);
    case 'caseful':
      // No plan says yet what a case holds.
      return [];
    case 'pack':
    case 'box':
    case 'boxful':
      return productCounts(thing.kind, thing.product, standing);
  }
}

function partCount(id: string, standing: Standing): readonly RealCount[] {
  const { set } = standing;
  const kind = countableKind(set, id);
  const parts = partsOf(set, id);
  const value = realCount(set, id);
  if (kind === null || value === null || (!parts.ok && parts.why !== 'doubled')) return [];
  const members = parts.ok ? [...parts.subsets] : [];
  const of = `the ${kind} \`${id}\``;
  return [{ ...countOver(members, standing), value, of, id, sure: isSure(id, members, standing) }];
}

function isSure(id: string, members: readonly string[], standing: Standing): boolean {
  const { set } = standing;
  const stated = set.plan.value.totals?.[id];
  if (stated !== undefined && statedTotal(stated) !== realCount(set, id)) return false;
  return members.every((member) => believable(member, standing));
}

const views = new WeakMap<Subject, ReadonlyMap<string, SubsetView>>();

function viewOf(id: string, { subject, set }: Standing): SubsetView | undefined {
  const before = views.get(subject);
  const known =
    before ?? new Map(subject.subsets.map((view) => [`${view.set.id}/${view.plan.id}`, view]));
  if (!before) views.set(subject, known);
  return known.get(`${set.id}/${id}`);
}

function believable(id: string, standing: Standing): boolean {
  const view = viewOf(id, standing);
  if (!view) return false;
  const { set, plan, cards, numbering } = view;
  if (plan.roster === undefined) return numbering.clean && cards.length > 0;
  return set.rosters.has(plan.roster) && cards.length === 0;
}

/** What holds a card of these subsets that leaves no trace for the text. */
function countOver(members: readonly string[], standing: Standing): Pick<RealCount, 'absent'> {
  for (const id of members) {
    const absent = absentIn(id, standing);
    if (absent) return { absent };
  }
  return { absent: null };
}

function absentIn(id: string, standing: Standing): Hold | null {
  const { subject, set, hold } = standing;
  const { schedule } = subject;
  const later = (of: Hold): boolean => opensLater(traceHold(schedule, of), hold);
  const whole = subsetHold(schedule, set.plan.value, id);
  if (later(whole)) return whole;
  for (const held of cardHolds(id, standing)) if (later(held)) return held;
  return null;
}

const heldCards = new WeakMap<Subject, Map<string, readonly Hold[]>>();

/** What the issued cards of a subset are held by, each hold once. */
function cardHolds(id: string, standing: Standing): readonly Hold[] {
  const { subject, set } = standing;
  const known = heldCards.get(subject) ?? new Map<string, readonly Hold[]>();
  heldCards.set(subject, known);
  const key = `${set.id}/${id}`;
  const before = known.get(key);
  if (before) return before;
  const cards = viewOf(id, standing)?.cards ?? [];
  const holds = new Map<string, Hold>();
  for (const card of cards) {
    const hold = isIssued(card) && !isVariation(card) ? subject.holds.get(card) : undefined;
    if (hold) holds.set([hold.level, ...hold.embargoes].join(' '), hold);
  }
  const all = [...holds.values()];
  known.set(key, all);
  return all;
}

function ownCounts(standing: Standing): readonly RealCount[] {
  const { set, subset } = standing;
  const group = set.plan.value.subsets.find(({ id }) => id === subset)?.group;
  const ids = new Set([subset, group].flatMap((id) => (id == null ? [] : [id])));
  return [...ids].flatMap((id) => partCount(id, standing));
}

/** The printed number of the card that speaks, and its place, if there are so many beside it. */
function numberCounts(among: number, standing: Standing): readonly RealCount[] {
  const { set, card } = standing;
  const printed = card?.front.number ?? 'none';
  const own = set.plan.value.subsets.find(({ id }) => id === card?.subset);
  if (!card || !own || printed === 'none' || isVariation(card)) return [];
  const together = ownCounts(standing).find(({ value }) => value === among);
  const numbers = plannedNumbers(own.numbers);
  if (!together || !numbers) return [];
  const of = 'the number of this card';
  const sure = believable(own.id, standing);
  const digits = /\d+$/.exec(printed)?.[0];
  const shown = digits === undefined ? [] : [{ ...plain(Number(digits), of), sure }];
  const before = set.plan.value.subsets
    .slice(0, set.plan.value.subsets.indexOf(own))
    .filter(({ id, group }) => together.id !== own.id && group === own.group && id !== own.id)
    .reduce((sum, { id }) => sum + countSubset(set, id), 0);
  const at = before + numbers.indexOf(printed) + 1;
  return [...shown, { ...plain(at, of), sure }];
}

/** Totals over several groups, the base set, and all cards that are printed. */
function wholeCounts(standing: Standing): readonly RealCount[] {
  const { subsets, totals } = standing.set.plan.value;
  const over = Object.entries(totals ?? {}).flatMap(([id, total]) =>
    typeof total === 'object' && total.of !== undefined ? [id] : [],
  );
  const base = subsets.some(({ group }) => group === 'base') ? ['base'] : [];
  const numbered = subsets.filter(({ roster }) => roster === undefined).map(({ id }) => id);
  const shown = numbered.filter((id) => absentIn(id, standing) === null);
  return [
    ...[...new Set([...over, ...base])].flatMap((id) => partCount(id, standing)),
    allOf(shown, standing),
    ...(shown.length === numbered.length ? [] : [allOf(numbered, standing)]),
  ];
}

function allOf(subsets: readonly string[], standing: Standing): RealCount {
  return {
    ...countOver(subsets, standing),
    value: subsets.reduce((sum, id) => sum + countSubset(standing.set, id), 0),
    of: 'all cards of the set',
    sure: subsets.every((id) => believable(id, standing)),
    id: null,
  };
}

function subsetsCounts(group: string | null, standing: Standing): readonly RealCount[] {
  const all = standing.set.plan.value.subsets.filter(
    (subset) => group === null || subset.group === group,
  );
  if (all.length === 0) return [];
  const shown = all.filter(({ id }) => absentIn(id, standing) === null);
  const of = group === null ? 'the subsets of the plan' : `the subsets of \`${group}\``;
  const count = (list: typeof all): RealCount => ({
    ...countOver(
      list.map(({ id }) => id),
      standing,
    ),
    value: list.length,
    of,
    sure: true,
    id: null,
  });
  return shown.length === all.length ? [count(all)] : [count(shown), count(all)];
}

function plain(value: number, of: string): RealCount {
  return { value, of, sure: true, absent: null, id: null };
}

function runCounts(id: string | null, { set, card }: Standing): readonly RealCount[] {
  const all = set.plan.value.parallels ?? [];
  const own = card?.front.run;
  const ofCard = own === undefined || id !== null ? [] : [plain(own, 'the copies of this card')];
  const ofParallels = all
    .filter((parallel) => id === null || parallel.id === id)
    .flatMap(({ id: made, run, copies }) => {
      const count = run ?? copies;
      return count === undefined ? [] : [plain(count, `the copies of \`${made}\``)];
    });
  return [...ofCard, ...ofParallels];
}

function parallelCounts({ subject, set, hold }: Standing): readonly RealCount[] {
  const all = set.plan.value.parallels ?? [];
  if (all.length === 0) return [];
  const held = all.filter(({ embargo = [], spoiler }) => {
    const later = embargo.some((id) => !hold.embargoes.includes(id));
    const level = subject.schedule.levels.findIndex(({ id }) => id === spoiler);
    return later || level > hold.level;
  });
  const of = 'the parallels of the plan';
  return [plain(all.length, of), ...(held.length > 0 ? [plain(all.length - held.length, of)] : [])];
}

function rosterCounts(standing: Standing): readonly RealCount[] {
  return standing.set.plan.value.subsets
    .filter(({ roster }) => roster !== undefined)
    .flatMap(({ id }) => partCount(id, standing));
}

function signerCounts({ set }: Standing): readonly RealCount[] {
  const names = new Set(
    set.cards
      .filter((card) => isIssued(card))
      .flatMap(({ front }) => front.signers ?? [])
      .flatMap(({ name, state }) => (state === 'withdrawn' ? [] : [name])),
  );
  return names.size === 0 ? [] : [plain(names.size, 'the signers of the set')];
}

function productCounts(
  kind: 'pack' | 'box' | 'boxful',
  id: string | null,
  { set }: Standing,
): readonly RealCount[] {
  const all = set.plan.value.products ?? [];
  return all
    .filter((product) => id === null || product.id === id)
    .flatMap(({ id: own, pack, box }) => {
      const value = kind === 'pack' ? pack : kind === 'box' ? box : pack && box && pack * box;
      const what = { pack: 'cards a pack', box: 'packs a box', boxful: 'cards a box' }[kind];
      return value === undefined ? [] : [plain(value, `${what} of \`${own}\``)];
    });
}
