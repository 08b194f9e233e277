import { standingOf, toldOf } from './claims/odds.js';
import { oddsRemark } from './claims/odds-say.js';
import { countedTexts } from './claims/claims.js';
import { oddsMissing, oddsUnlike } from './packed/odds.js';
import { packedOf } from './packed/plan.js';
import { packedRemarks } from './packed/remarks.js';
import { packedWith } from './packed/sample.js';
import type { Files, Remark, Rule } from './rule.js';
import type { Subject } from './subject.js';

const TRUE_ODDS: [from: string, to: string] = [
  '{ of: extra, odds: 2 }',
  '{ of: extra, perBox: 1, odds: 2 }',
];

/** The sample with packs, and a text that sells it. */
function sells(words: string, amount = 'perBox: 1, '): Files {
  return {
    ...packedWith(['{ of: extra, odds: 2 }', `{ of: extra, ${amount}odds: 2 }`]),
    'one/sales/a.md': `---\nkind: web\ngoes: unset\nspoiler: open\n---\n${words}\n\n© 2027 Lantern & Oar\n`,
  };
}

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
    ...wrongOdds(subject),
  ],
  examples: {
    passes: [
      {
        says: 'odds that are the truth',
        files: packedWith(TRUE_ODDS),
      },
      {
        says: 'a text that says the same',
        files: sells('Inserts 1:2 packs: one insert in every Hobby box.'),
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
      {
        says: 'a text with better odds than the truth',
        files: sells('Inserts 1:1 packs.'),
        gives: {
          at: 'one/sales/a.md:6:11',
          covers: '1',
          message:
            'this text says better odds than the truth, which in `Hobby` is 10 copies of Extra in 20 packs',
          found: 'Inserts 1:1 packs',
          expected: '1:2 packs at best',
        },
      },
      {
        says: 'a text with other odds than the plan',
        files: sells('One in three packs holds an insert.'),
        gives: {
          at: 'one/sales/a.md:6:8',
          covers: 'three',
          message: 'this text says other odds than the plan, of Extra in `Hobby`',
          found: 'One in three packs holds an insert',
          expected: '1:2 packs, as the plan says',
          fix: 'two',
        },
      },
      {
        says: 'a text that promises more than is packed',
        files: sells('Two inserts in every box.'),
        gives: {
          at: 'one/sales/a.md:6:1',
          covers: 'Two',
          message: 'this text promises more than is packed: `Hobby` has 10 of Extra in 10 boxes',
          found: 'Two inserts in every box',
          expected: '1 a box, or “on average” of what is packed',
        },
      },
      {
        says: 'a text that promises what comes by chance',
        files: sells('There is an insert in every box.', ''),
        gives: {
          at: 'one/sales/a.md:6:10',
          covers: 'an insert in every box',
          message:
            'this text promises for each box what comes by chance: `Hobby` has 10 of Extra in 10 boxes, and nothing says that each holds so many',
          found: 'an insert in every box',
          expected: '“on average”, or a guarantee in the plan',
        },
      },
      {
        says: 'a text of what is in no pack, that is subject to change: a warning',
        files: sells('Relics 1:2 packs. All of it is subject to change.'),
        gives: {
          at: 'one/sales/a.md:6:10',
          covers: '2',
          message: 'this text says odds of what `Hobby` does not hold',
          found: 'Relics 1:2 packs',
          expected: 'something that is packed in it',
          severity: 'warning',
        },
      },
    ],
  },
};

/** Odds that texts say and that are not what is packed; what tells something held is a leak. */
function* wrongOdds(subject: Subject): Generator<Remark> {
  for (const { odds } of countedTexts(subject)) {
    for (const claim of odds) {
      const remark = oddsRemark(claim, standingOf(claim));
      if (remark && toldOf(claim, subject) === null) yield remark;
    }
  }
}
