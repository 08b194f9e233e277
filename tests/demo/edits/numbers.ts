import type { DemoEdit } from './edit.js';

const CREW = 'high-water/cards/crew';

export const NUMBERS_EDITS: readonly DemoEdit[] = [
  {
    rule: 'number-gap',
    says: 'a card that is not there',
    files: { [`${CREW}/c020.md`]: null },
    finding: {
      severity: 'error',
      message: 'no card of `crew` has the number 20',
      expected: 'a card for each number; a card that was pulled stays, with `issued: "no"`',
      set: 'high-water',
      card: null,
      at: {
        file: 'high-water/plan.yaml',
        words: 'crew, title: Crew and Craft, group: base, numbers: { |from|: 1, to: 48 }',
      },
    },
  },
  {
    rule: 'number-duplicate',
    says: 'two cards under one number',
    files: { [`${CREW}/c004.md`]: [['number: "4"', 'number: "3"']] },
    finding: {
      severity: 'error',
      message: 'card crew/c003 has the number 3 too',
      found: '3',
      expected: 'a number of its own, or `variation` if it is the same card told apart',
      set: 'high-water',
      card: 'crew/c004',
      file: 'high-water/cards/crew/c004.md',
      line: 2,
      column: 9,
      endLine: 2,
      endColumn: 12,
      related: [
        {
          message: 'the first card of that number',
          file: 'high-water/cards/crew/c003.md',
          line: 2,
          column: 9,
        },
      ],
    },
  },
  {
    rule: 'number-range',
    says: 'a number outside the plan',
    files: { [`${CREW}/c020.md`]: [['number: "20"', 'number: "85"']] },
    finding: {
      severity: 'error',
      message: 'the plan gives no number 85 to `crew`',
      found: '85',
      expected: '1 to 48; no card has 20 yet',
      set: 'high-water',
      card: 'crew/c020',
      file: 'high-water/cards/crew/c020.md',
      line: 2,
      column: 9,
      endLine: 2,
      endColumn: 13,
    },
  },
  {
    rule: 'number-form',
    says: 'a number with a leading zero',
    files: { [`${CREW}/c007.md`]: [['number: "7"', 'number: "07"']] },
    finding: {
      severity: 'error',
      message: 'the number 07 is not written as those of `crew` are',
      found: '07',
      expected: '7',
      fix: '7',
      certain: true,
      set: 'high-water',
      card: 'crew/c007',
      file: 'high-water/cards/crew/c007.md',
      line: 2,
      column: 9,
      endLine: 2,
      endColumn: 13,
    },
  },
  {
    rule: 'number-order',
    says: 'subsets out of the order of their numbers',
    files: {
      'high-water/plan.yaml': [
        [
          'id: checklist, title: Checklist, group: base, numbers: { from: 84, to: 84 }',
          'id: checklist, title: Checklist, group: base, numbers: { from: 0, to: 0 }',
        ],
      ],
      'high-water/cards/checklist/k084.md': [
        ['number: "84"', 'number: "0"'],
        ['Checklist: 84', 'Checklist: 0'],
      ],
    },
    finding: {
      severity: 'error',
      message: '`checklist` begins at 0, but `story`, which stands above it, begins at 49',
      found: '0',
      expected: 'a subset above that of the higher numbers, or numbers above 83',
      set: 'high-water',
      card: null,
      at: {
        file: 'high-water/plan.yaml',
        words: 'title: Checklist, group: base, numbers: { from: |0|, to: 0 }',
      },
    },
  },
  {
    rule: 'number-tells',
    says: 'a code that spells the signer who has not signed',
    files: {
      'high-water/plan.yaml': [['SG-11, SG-12]', 'SG-11, SG-BQ]']],
      'high-water/cards/signatures/au03.md': [['SG-12', 'SG-BQ']],
    },
    finding: {
      severity: 'error',
      message: 'this number is made of a name that opens later than it shows',
      found: 'BQ: Barnaby Quent is held by second-signers, which has no date',
      expected: 'numbers that stand for nobody who is held',
      set: 'high-water',
      card: 'signatures/au03',
      file: 'high-water/cards/signatures/au03.md',
      line: 2,
      column: 9,
      endLine: 2,
      endColumn: 16,
      related: [{ message: 'the name', file: 'names.yaml', words: '- { name: |Barnaby Quent|,' }],
    },
  },
];
