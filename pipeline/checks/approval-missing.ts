import type { Rule } from './rule.js';
import { edited } from './sample.js';
import { unapproved } from './unapproved.js';

/** Only the chart needs an approval, and of its copy alone. */
export const ASKED = edited('property.yaml', [
  'approvals: none',
  `approvals:
  - { parts: [copy, image, layout, web, sales], roles: none }
  - { parts: [copy], roles: [licensor], where: { subset: [extra] } }`,
]);

/** A card or a sales text that not everybody approved who must. */
export const approvalMissing: Rule = {
  id: 'approval-missing',
  about: 'approval',
  severity: 'error',
  lenientIn: ['planning', 'writing'],
  why: 'Silence is never approval, and a licence can hang on it.',
  look: (subject) =>
    unapproved(
      subject,
      ({ is }) => is === 'nobody decided' || is === 'decided otherwise',
      'the approval of every role that property.yaml names: `holdback packet` submits it',
    ),
  examples: {
    passes: [
      { says: 'a property that asks for no approvals', files: {} },
      {
        says: 'parts that nobody has to approve, said openly',
        files: edited('property.yaml', [
          'approvals: none',
          'approvals:\n  - { parts: [copy, image, layout, web, sales], roles: none }',
        ]),
      },
    ],
    fails: [
      {
        says: 'a card whose copy the licensor has not seen',
        files: ASKED,
        gives: {
          at: 'one/cards/extra/b1.md:3:7',
          covers: 'The Chart',
          message: 'copy: no licensor has decided',
          expected:
            'the approval of every role that property.yaml names: `holdback packet` submits it',
        },
      },
      {
        says: 'the same while the set is being written',
        files: { ...ASKED, ...edited('one/plan.yaml', ['stage: locked', 'stage: writing']) },
        gives: {
          at: 'one/cards/extra/b1.md:3:7',
          covers: 'The Chart',
          message: 'copy: no licensor has decided',
          expected:
            'the approval of every role that property.yaml names: `holdback packet` submits it',
          severity: 'warning',
        },
      },
    ],
  },
};
