import type { DemoEdit } from './edit.js';

const CREW = 'high-water/cards/crew';

export const APPROVAL_EDITS: readonly DemoEdit[] = [
  {
    rule: 'approval-missing',
    says: 'a role that nobody asked when the cards were submitted',
    files: {
      'property.yaml': [
        [
          'where: { depicts: [Yewande Sorrel] } }',
          'where: { depicts: [Yewande Sorrel] } }\n  - { parts: [web], roles: [publisher], where: { subset: [checklist] } }',
        ],
      ],
    },
    finding: {
      severity: 'error',
      message: 'web: no publisher has decided',
      expected: 'the approval of every role that property.yaml names: `holdback packet` submits it',
      set: 'high-water',
      card: 'checklist/k084',
      file: 'high-water/cards/checklist/k084.md',
      line: 3,
      column: 7,
      endLine: 3,
      endColumn: 16,
    },
  },
  {
    rule: 'approval-stale',
    says: 'a late typo fix',
    files: { [`${CREW}/c006.md`]: [['sorted by how they feel', 'sorted by the way they feel']] },
    finding: {
      severity: 'error',
      message: 'copy: Amara Linde approved version 2e694c, and it was changed since',
      expected: 'what was approved, or a new submission of what stands here now',
      set: 'high-water',
      card: 'crew/c006',
      file: 'high-water/cards/crew/c006.md',
      line: 3,
      column: 7,
      endLine: 3,
      endColumn: 18,
    },
  },
];
