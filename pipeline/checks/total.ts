import { countSubset, realCount, spotOf, type CardSet } from '../model/index.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { SubsetView } from './subject.js';
import { partsOf, statedTotal } from './totals.js';

/** A total of the plan that its cards do not add up to. */
export const total: Rule = {
  id: 'total',
  about: 'counts',
  severity: 'error',
  lenientIn: ['planning'],
  why: 'The total that is announced must be the total that is printed.',
  look: ({ sets, subsets }) =>
    sets.flatMap((set) =>
      wrongTotals(
        set,
        subsets.filter((view) => view.set === set),
      ),
    ),
  examples: {
    passes: [{ says: 'totals that add up', files: {} }],
    fails: [
      {
        says: 'one too many',
        files: edited('one/plan.yaml', ['totals: { base: 2', 'totals: { base: 3']),
        gives: {
          at: 'one/plan.yaml:9:17',
          covers: '3',
          message: 'the total `base` is not what its cards add up to',
          found: 'base: 3',
          expected: 'base: 2',
          fix: '2',
        },
      },
      {
        says: 'a total over others',
        files: edited('one/plan.yaml', ['is: 3', 'is: 4']),
        gives: {
          at: 'one/plan.yaml:9:83',
          covers: '4',
          message: 'the total `all` is not what its cards add up to',
          found: 'all: 4',
          expected: 'all: 3',
          fix: '3',
        },
      },
    ],
  },
};

function wrongTotals(set: CardSet, subsets: readonly SubsetView[]): Remark[] {
  const believable = new Set(subsets.filter(isBelievable).map((view) => view.plan.id));
  return Object.entries(set.plan.value.totals ?? {}).flatMap(([key, stated]) => {
    const parts = partsOf(set, key);
    if (!parts.ok || [...parts.subsets].some((subset) => !believable.has(subset))) return [];
    const real = realCount(set, key);
    if (real === null || real === statedTotal(stated)) return [];
    const path = typeof stated === 'number' ? ['totals', key] : ['totals', key, 'is'];
    return [
      {
        spot: spotOf(set.plan.source, path),
        message: `the total \`${key}\` is not what its cards add up to`,
        found: `${key}: ${statedTotal(stated)}`,
        expected: `${key}: ${real}`,
        fix: String(real),
      },
    ];
  });
}

/** Whether nothing else is wrong that would make the count of a subset wrong. */
function isBelievable({ set, plan, cards, numbering }: SubsetView): boolean {
  if (plan.roster === undefined) return numbering.clean && cards.length > 0;
  if (!set.rosters.has(plan.roster) || cards.length > 0) return false;
  return numbering.planned === null || numbering.planned.length === countSubset(set, plan.id);
}
