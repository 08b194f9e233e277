import { isIssued, isVariation, type CardSet } from './content.js';
import { plannedNumbers } from './number.js';

/** What a count can be asked of: a subset, a group or a total of the plan. */
export type Countable = 'subset' | 'group' | 'total';

/** Issued cards of a subset; variations are not counted. Of a roster: artists who are in. */
export function countSubset(set: CardSet, id: string): number {
  const subset = set.plan.value.subsets.find((candidate) => candidate.id === id);
  if (subset?.roster !== undefined) {
    const artists = set.rosters.get(subset.roster)?.value.artists ?? [];
    return artists.filter((artist) => artist.state !== 'withdrawn').length;
  }
  return set.cards.filter((card) => card.subset === id && isIssued(card) && !isVariation(card))
    .length;
}

/** Issued cards of all subsets of a group. */
export function countGroup(set: CardSet, group: string): number {
  return set.plan.value.subsets
    .filter((subset) => subset.group === group)
    .reduce((sum, subset) => sum + countSubset(set, subset.id), 0);
}

/** What a name counts in this plan: a subset first, else a group, else a total. */
export function countableKind(set: CardSet, name: string): Countable | null {
  const plan = set.plan.value;
  if (plan.subsets.some((subset) => subset.id === name)) return 'subset';
  if (plan.subsets.some((subset) => subset.group === name)) return 'group';
  return Object.hasOwn(plan.totals ?? {}, name) ? 'total' : null;
}

/**
 * The real count of a subset, group or total; null for a name that counts nothing, and for a total
 * that counts itself.
 */
export function realCount(set: CardSet, name: string): number | null {
  return countWithin(set, name, []);
}

function countWithin(set: CardSet, name: string, above: readonly string[]): number | null {
  const kind = countableKind(set, name);
  if (kind === 'subset') return countSubset(set, name);
  if (kind === 'group') return countGroup(set, name);
  const total = set.plan.value.totals?.[name];
  if (kind === null || typeof total !== 'object' || total.of === undefined) return null;
  const path = [...above, name];
  const members = total.of.map((member) =>
    path.includes(member) ? null : countWithin(set, member, path),
  );
  return members.reduce<number | null>(
    (sum, count) => (sum === null || count === null ? null : sum + count),
    0,
  );
}

/** How many cards the plan gives numbers to in a subset; null where there are no numbers. */
export function plannedCount(set: CardSet, id: string): number | null {
  const subset = set.plan.value.subsets.find((candidate) => candidate.id === id);
  return subset ? (plannedNumbers(subset.numbers)?.length ?? null) : null;
}
