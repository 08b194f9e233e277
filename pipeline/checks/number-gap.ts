import { spotOf } from '../model/index.js';
import { foldNumbers } from './fold-numbers.js';
import { numbersKey } from './planned.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { SubsetView } from './subject.js';

/** Numbers of the plan that no card bears. A subset without any card is for `subset-count`. */
export const numberGap: Rule = {
  id: 'number-gap',
  about: 'numbers',
  severity: 'error',
  lenientIn: ['planning'],
  why: 'A number that the checklist skips is a card that collectors search for and nobody printed.',
  look: ({ subsets }) => subsets.flatMap(gapOf),
  examples: {
    passes: [
      { says: 'a card for each number', files: {} },
      {
        says: 'a card that was pulled keeps its number',
        files: {
          ...edited('one/cards/base/a2.md', ['spoiler: open', 'spoiler: open\nissued: "no"']),
          ...edited('one/plan.yaml', ['base: 2', 'base: 1'], ['is: 3', 'is: 2']),
        },
      },
    ],
    fails: [
      {
        says: 'no card 1',
        files: { 'one/cards/base/a1.md': null },
        gives: {
          at: 'one/plan.yaml:7:54',
          covers: 'from',
          message: 'no card of `base` has the number 1',
          expected: 'a card for each number; a card that was pulled stays, with `issued: "no"`',
        },
      },
      {
        says: 'a set in planning with most of its cards still to come',
        files: edited('one/plan.yaml', ['stage: locked', 'stage: planning'], ['to: 2', 'to: 9']),
        gives: {
          at: 'one/plan.yaml:7:54',
          covers: 'from',
          message: 'no card of `base` has the numbers 3 to 9',
          expected: 'a card for each number; a card that was pulled stays, with `issued: "no"`',
          severity: 'warning',
        },
      },
    ],
  },
};

function gapOf({ set, plan, at, cards, numbering }: SubsetView): Remark[] {
  if (cards.length === 0 || numbering.gap.length === 0) return [];
  const numbers = foldNumbers(numbering.gap, numbering.planned ?? []);
  return [
    {
      spot: spotOf(set.plan.source, ['subsets', at, 'numbers', numbersKey(plan)], 'key'),
      message: `no card of \`${plan.id}\` has the number${numbering.gap.length > 1 ? 's' : ''} ${numbers}`,
      expected: 'a card for each number; a card that was pulled stays, with `issued: "no"`',
    },
  ];
}
