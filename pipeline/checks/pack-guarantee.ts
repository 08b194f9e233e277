import { packedRemarks } from './packed/remarks.js';
import { packedWith } from './packed/sample.js';
import type { Rule } from './rule.js';

const BOXES = '{ of: extra, perBox: 1, odds: 2 }';
const PROMISE = `${BOXES}\n    guarantees:\n      - { of: [extra], atLeast: `;

/** A promise for every box or case that what is packed does not keep. */
export const packGuarantee: Rule = {
  id: 'pack-guarantee',
  about: 'packs',
  severity: 'error',
  why: 'Who opens a box that lacks what every box holds was sold something that is not in it.',
  look: (subject) => packedRemarks(subject, 'pack-guarantee'),
  examples: {
    passes: [
      {
        says: 'one in each box, and one promised',
        files: packedWith(['{ of: extra, odds: 2 }', `${PROMISE}1, per: box }`]),
      },
    ],
    fails: [
      {
        says: 'one in each box, and two promised',
        files: packedWith(['{ of: extra, odds: 2 }', `${PROMISE}2, per: box }`]),
        gives: {
          at: 'one/plan.yaml:21:33',
          covers: '2',
          message: '`Hobby` promises at least 2 of Extra a box, 20 in all, but 10 are packed',
          found: '2',
          expected: 'at least 20 packed',
        },
      },
      {
        says: 'a promise that chance may break',
        files: packedWith([
          '{ of: extra, odds: 2 }',
          `${PROMISE.replace('perBox: 1, ', '')}1, per: box }`,
        ]),
        gives: {
          at: 'one/plan.yaml:21:33',
          covers: '1',
          message:
            '`Hobby` promises at least 1 of Extra a box, but they come by chance, so that some boxes would hold fewer; enter them by the box, or have them placed',
          found: '1',
          expected: 'an even number for each box or case',
          severity: 'warning',
        },
      },
    ],
  },
};
