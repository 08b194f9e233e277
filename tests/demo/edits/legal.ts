import type { DemoEdit } from './edit.js';

const COUNTER_TEXT = `---
title: For the counter
kind: shop
goes: "2027-04-16T09:00:00+01:00[Europe/London]"
spoiler: open
---
The lake is coming up.
`;

export const LEGAL_EDITS: readonly DemoEdit[] = [
  {
    rule: 'legal-missing',
    says: 'a text for the shops without the legal line',
    files: { 'high-water/sales/counter.md': { text: COUNTER_TEXT } },
    finding: {
      severity: 'error',
      message: 'this text goes out without the legal line',
      found: 'no legal line in it',
      expected: '© 2027 Lantern & Oar',
      set: 'high-water',
      card: null,
      at: { file: 'high-water/sales/counter.md', words: 'kind: |shop|' },
    },
  },
  {
    rule: 'legal-form',
    says: 'a legal line with a word for a sign',
    files: {
      'high-water/sales/sell-sheet.md': [['© 2027 Lantern & Oar', '© 2027 Lantern and Oar']],
    },
    finding: {
      severity: 'error',
      message: 'this is not the legal line letter by letter: `and` for `&`',
      found: '© 2027 Lantern and Oar',
      expected: '© 2027 Lantern & Oar',
      fix: '© 2027 Lantern & Oar',
      certain: true,
      set: 'high-water',
      card: null,
      at: { file: 'high-water/sales/sell-sheet.md', words: '|© 2027 Lantern and Oar|' },
    },
  },
  {
    rule: 'statement-missing',
    says: 'a relic that no paper vouches for',
    files: {
      'high-water/cards/relics/re01.md': [[', record: "timber book, TR-1" }', ' }']],
    },
    finding: {
      severity: 'error',
      message: 'nothing says who vouches for this relic',
      found: 'A sliver of the first keel, from The model of the Patient Heron',
      expected: '`record`: the paper that says so',
      set: 'high-water',
      card: 'relics/re01',
      file: 'high-water/cards/relics/re01.md',
      line: 7,
      column: 1,
      endLine: 7,
      endColumn: 6,
    },
  },
];
