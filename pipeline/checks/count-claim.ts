import { badLinkRemark, sumRemark, wrongClaim } from './claims/remarks.js';
import { countedTexts } from './claims/claims.js';
import type { Files, Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';

function bio(words: string): Files {
  return edited('one/cards/extra/b1.md', ['Ink, and a thumbprint of the lake.', words]);
}

function sales(words: string): Files {
  return {
    'one/sales/a.md': `---\nkind: web\ngoes: unset\nspoiler: open\n---\n${words}\n\n© 2027 Lantern & Oar\n`,
  };
}

/** A number that is said of the cards and is not the real count. */
export const countClaim: Rule = {
  id: 'count-claim',
  about: 'counts',
  severity: 'error',
  why: 'What a text promises of the cards is counted by those who collect them.',
  look: wrongCounts,
  examples: {
    passes: [
      { says: 'a count link that is right', files: bio('Ink, and [two](count:base) base cards.') },
      { says: 'a number of the story', files: bio('Ink, and nine thumbprints of the lake.') },
      { says: 'story that is said to be such', files: bio('A set of [nine](count:none) cards.') },
      {
        says: 'a hedge that is true',
        files: sales('More than one card: at least two base cards.'),
      },
    ],
    fails: [
      {
        says: 'a count link that is wrong',
        files: bio('Ink, and all [nine](count:base) stones.'),
        gives: {
          at: 'one/cards/extra/b1.md:6:15',
          covers: 'nine',
          message: 'the bio claims another count than there is',
          found: 'nine: the subset `base`',
          expected: '2, the subset `base`',
          fix: 'two',
          certain: true,
        },
      },
      {
        says: 'a claim in a sales text',
        files: sales('There are 12 base cards.'),
        gives: {
          at: 'one/sales/a.md:6:11',
          covers: '12',
          message: 'this text claims another count than there is',
          found: '12 base cards',
          expected: '2, the subset `base`',
          fix: '2',
        },
      },
      {
        says: 'parts that do not make their total',
        files: sales('There are 3 cards: one base card and one insert.'),
        gives: {
          at: 'one/sales/a.md:6:11',
          covers: '3',
          message: 'the parts that this sentence lists do not make its total',
          found: 'one + one = 2, and it says 3',
          expected: 'parts that make the total, or a total that they make',
        },
      },
      {
        says: 'a count of something that there is not',
        files: bio('Ink, and [two](count:bass) stones.'),
        gives: {
          at: 'one/cards/extra/b1.md:6:22',
          covers: 'bass',
          message: 'there is no subset, group or total `bass`',
          found: 'bass',
          expected: '`base`',
          fix: 'base',
        },
      },
      {
        says: 'a count link without a number',
        files: bio('Ink, and [all](count:base) stones.'),
        gives: {
          at: 'one/cards/extra/b1.md:6:11',
          covers: 'all',
          message: 'this count of `base` says no number',
          found: 'all',
          expected: 'one number, or no link',
        },
      },
      {
        says: 'a claim that is subject to change: a warning',
        files: sales('There are 12 base cards. All of it is subject to change.'),
        gives: {
          at: 'one/sales/a.md:6:11',
          covers: '12',
          message: 'this text claims another count than there is',
          found: '12 base cards',
          expected: '2, the subset `base`',
          fix: '2',
          severity: 'warning',
        },
      },
    ],
  },
};

function* wrongCounts(subject: Subject): Generator<Remark> {
  for (const counted of countedTexts(subject)) {
    for (const bad of counted.badLinks) yield badLinkRemark(bad, counted);
    const sent = counted.text.sales?.front.sent !== undefined;
    for (const claim of counted.claims) {
      if (claim.verdict === 'wrong' && !sent) yield wrongClaim(claim);
    }
    for (const sum of counted.sums) yield sumRemark(sum, counted);
  }
}
