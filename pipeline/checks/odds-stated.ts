import { oddsMissing, oddsUnlike } from './packed-odds.js';
import { packedOf } from './packed-plan.js';
import { packedRemarks } from './packed-remarks.js';
import { packedWith } from './packed-sample.js';
import type { Rule } from './rule.js';

/** Odds that are said and are not what is packed, or are not said at all. */
export const oddsStated: Rule = {
  id: 'odds-stated',
  about: 'packs',
  severity: 'error',
  why: 'Odds on a wrapper are read by whoever decides to buy: better than the truth they mislead.',
  look: (subject) => [
    ...packedRemarks(subject, 'odds-stated'),
    ...subject.sets.flatMap((set) => {
      const packed = packedOf(set);
      return packed === null || packed.gaps.length > 0
        ? []
        : [...oddsMissing(set, packed), ...oddsUnlike(set, packed)];
    }),
  ],
  examples: {
    passes: [
      {
        says: 'odds that are the truth',
        files: packedWith(['{ of: extra, odds: 2 }', '{ of: extra, perBox: 1, odds: 2 }']),
      },
    ],
    fails: [
      {
        says: 'odds that are better than the truth',
        files: packedWith(['{ of: extra, odds: 2 }', '{ of: extra, perBox: 1, odds: 1 }']),
        gives: {
          at: 'one/plan.yaml:19:39',
          covers: '1',
          message:
            '`Hobby`: 1:1 packs for Extra is better than the truth, which is 10 copies in 20 packs: at best 1:2 may be said',
          found: '1',
          expected: '2',
          fix: '2',
        },
      },
      {
        says: 'odds that are far worse than the truth',
        files: packedWith(['{ of: extra, odds: 2 }', '{ of: extra, perBox: 1, odds: 3 }']),
        gives: {
          at: 'one/plan.yaml:19:39',
          covers: '3',
          message:
            '`Hobby`: 1:3 packs for Extra is far worse than the truth, which is 10 copies in 20 packs: 1:2, or 1:2 in round numbers, may be said',
          found: '3',
          expected: '2',
          fix: '2',
          severity: 'warning',
        },
      },
      {
        says: 'a line without odds',
        files: packedWith(['{ of: extra, odds: 2 }', '{ of: extra, perBox: 1 }']),
        gives: {
          at: 'one/plan.yaml:19:15',
          covers: 'extra',
          message: '`Hobby`: nothing says the odds of `extra`',
          found: 'no `odds`',
          expected: '`odds: 2`',
        },
      },
    ],
  },
};
