import type { DemoEdit } from './edit.js';

const CREW = 'high-water/cards/crew';

export const LEVELS_EDITS: readonly DemoEdit[] = [
  {
    rule: 'level-unknown',
    says: 'a level that is misspelt',
    files: { [`${CREW}/c006.md`]: [['spoiler: open', 'spoiler: opne']] },
    finding: {
      severity: 'error',
      message: 'there is no level `opne`',
      found: 'opne',
      expected: '`open`',
      fix: 'open',
      set: 'high-water',
      card: 'crew/c006',
      file: 'high-water/cards/crew/c006.md',
      line: 4,
      column: 10,
      endLine: 4,
      endColumn: 14,
    },
  },
  {
    rule: 'level-order',
    says: 'a later level that lifts first',
    files: { 'property.yaml': [['2027-06-04T20:00:00+01:00', '2027-05-01T20:00:00+01:00']] },
    finding: {
      severity: 'error',
      message: '`finale` lifts before `spring`, which stands above it',
      found: '2027-05-01T20:00:00+01:00[Europe/London]',
      expected: '2027-05-14T20:00:00+01:00[Europe/London] or later',
      set: null,
      card: null,
      file: 'property.yaml',
      line: 13,
      column: 48,
      endLine: 13,
      endColumn: 90,
    },
  },
  {
    rule: 'lift-missing',
    says: 'a first level with a lift',
    files: {
      'property.yaml': [
        ['id: open,', 'id: open, lift: "2026-09-01T09:00:00+01:00[Europe/London]",'],
      ],
    },
    finding: {
      severity: 'error',
      message: 'the first level, `open`, has a lift',
      expected: 'no `lift`: the first level is open from the start',
      set: null,
      card: null,
      file: 'property.yaml',
      line: 9,
      column: 17,
      endLine: 9,
      endColumn: 21,
    },
  },
];
