import { ASKED } from './approval-missing.js';
import type { Files, Rule } from './rule.js';
import { edited } from './sample.js';
import { unapproved } from './unapproved.js';

/** SHA-256 of the chart's copy as the sample has it. */
const DIGEST = 'e379533342fe916fc6d62fb904e115d39c959a4581a1af40a8fd2ad949208e51';

const ENTRY = {
  previous: 'none',
  at: '2027-01-12T12:00:00+00:00[Europe/London]',
  kind: 'by-hand',
  person: 'amara',
  by: 'jonah',
  confirmedBy: 'henrike',
  received: '2027-01-12',
  evidence: '0'.repeat(64),
  decisions: [
    {
      card: 'one/extra/b1',
      part: 'copy',
      digest: DIGEST,
      decision: 'approved',
      seen: { openings: [], inHands: '2027-06-05T09:00:00+01:00[Europe/London]', shows: [] },
    },
  ],
};

const APPROVED: Files = {
  ...ASKED,
  ...edited('people.yaml', [
    'people:',
    'people:\n  - { id: amara, name: Amara Linde, role: licensor, clearance: last }',
  ]),
  'review/ledger.jsonl': `${JSON.stringify(ENTRY)}\n`,
};

const EXPECTED = 'what was approved, or a new submission of what stands here now';

/** A card or a sales text that was changed after it was approved, or that opens earlier now. */
export const approvalStale: Rule = {
  id: 'approval-stale',
  about: 'approval',
  severity: 'error',
  why: 'A late typo fix is a text that nobody approved.',
  look: (subject) =>
    unapproved(subject, ({ is }) => is === 'changed since' || is === 'opens earlier', EXPECTED),
  examples: {
    passes: [{ says: 'the text that was approved', files: APPROVED }],
    fails: [
      {
        says: 'a typo mended after the approval',
        files: {
          ...APPROVED,
          ...edited('one/cards/extra/b1.md', ['Ink, and', 'Ink and']),
        },
        gives: {
          at: 'one/cards/extra/b1.md:3:7',
          covers: 'The Chart',
          message: 'copy: Amara Linde approved version e37953, and it was changed since',
          expected: EXPECTED,
        },
      },
      {
        says: 'a street date that was moved forward after the approval',
        files: {
          ...APPROVED,
          ...edited('one/plan.yaml', ['2027-06-05', '2027-06-04']),
        },
        gives: {
          at: 'one/cards/extra/b1.md:3:7',
          covers: 'The Chart',
          message: 'copy: Amara Linde approved it to open later (in hands)',
          expected: EXPECTED,
        },
      },
    ],
  },
};
