import { packedRemarks } from './packed/remarks.js';
import { packedWith } from './packed/sample.js';
import { redemptionDays, redemptionsUnsaid } from './packed/redemptions.js';
import type { Rule } from './rule.js';

const SENT = `numbers: { prefix: X-, from: 1, to: 1 }, found: redemption, ships: "2027-06-08T09:00:00+01:00[Europe/London]", bio`;
const TERMS =
  'redemptions:\n  - { found: extra, sends: [extra/b1], ships: 2027-06-08, redeemBy: 2028-06-30 }\n';

/** A card in packs that is sent in for others, without its terms or with others than the plan’s. */
export const redemptionTerms: Rule = {
  id: 'redemption-terms',
  about: 'packs',
  severity: 'error',
  why: 'A redemption is a promise: what is sent, from when, and until when it is taken.',
  look: (subject) => [
    ...packedRemarks(subject, 'redemption-terms'),
    ...redemptionDays(subject),
    ...redemptionsUnsaid(subject),
  ],
  examples: {
    passes: [
      {
        says: 'what is sent, from when and until when',
        files: packedWith(
          ['numbers: { prefix: X-, from: 1, to: 1 }, bio', SENT],
          ['products:', `${TERMS}products:`],
        ),
      },
    ],
    fails: [
      {
        says: 'a subset that is found by redemption, and no terms',
        files: packedWith(['numbers: { prefix: X-, from: 1, to: 1 }, bio', SENT]),
        gives: {
          at: 'one/plan.yaml:19:15',
          covers: 'extra',
          message:
            '`Hobby`: `extra` is found by redemption, and nothing says what is sent, and when',
          found: 'extra',
          expected: '`redemptions: [{ found: extra, sends, ships, redeemBy }]`',
        },
      },
      {
        says: 'a redemption that never says until when it is taken',
        files: packedWith(
          ['numbers: { prefix: X-, from: 1, to: 1 }, bio', SENT],
          ['products:', `${TERMS.replace(', redeemBy: 2028-06-30', '')}products:`],
        ),
        gives: {
          at: 'one/plan.yaml:12:14',
          covers: 'extra',
          message: '`Extra`: a redemption must say until when it is taken, or that it never ends',
          found: 'extra',
          expected: '`redeemBy`: a day, or never',
        },
      },
      {
        says: 'another day than that on which its cards are sent',
        files: packedWith(
          ['numbers: { prefix: X-, from: 1, to: 1 }, bio', SENT],
          ['products:', `${TERMS.replace('2027-06-08', '2027-06-09')}products:`],
        ),
        gives: {
          at: 'one/plan.yaml:12:47',
          covers: '2027-06-09',
          message: 'extra/b1 is sent on another day than this redemption says',
          found: '2027-06-09',
          expected: '2027-06-08',
          related: ['one/plan.yaml:8:115 the day on which it is sent'],
        },
      },
    ],
  },
};
