import { PRINTED_LIST } from '../printed-list.js';
import type { DemoEdit } from './edit.js';

const COUNTER_TEXT = `---
title: For the counter
kind: shop
goes: "2027-04-16T09:00:00+01:00[Europe/London]"
spoiler: open
---
Look for the [43](count:inserts) inserts.

© 2027 Lantern & Oar
`;

export const COUNTS_EDITS: readonly DemoEdit[] = [
  {
    rule: 'subset-count',
    says: 'a subset without any card',
    files: {
      'high-water/cards/toppers/fp01.md': null,
      'high-water/cards/toppers/fp02.md': null,
      'high-water/cards/toppers/fp03.md': null,
      'high-water/cards/toppers/fp04.md': null,
    },
    finding: {
      severity: 'error',
      message: '`toppers` has no cards at all',
      found: 'toppers: 0 cards',
      expected: '4 cards: FP-1 to FP-4',
      set: 'high-water',
      card: null,
      at: { file: 'high-water/plan.yaml', words: '- { id: |toppers|, title' },
    },
  },
  {
    rule: 'total',
    says: 'a total that does not add up',
    files: { 'high-water/plan.yaml': [['base: 84,', 'base: 85,']] },
    finding: {
      severity: 'error',
      message: 'the total `base` is not what its cards add up to',
      found: 'base: 85',
      expected: 'base: 84',
      fix: '84',
      set: 'high-water',
      card: null,
      at: { file: 'high-water/plan.yaml', words: 'totals: { base: |85|,' },
    },
  },
  {
    rule: 'total-undefined',
    says: 'a total of nothing',
    files: { 'high-water/plan.yaml': [['relics: 5,', 'relics: 5, extras-of-all-kinds: 3,']] },
    finding: {
      severity: 'error',
      message: 'the total `extras-of-all-kinds` does not say what it counts',
      found: 'extras-of-all-kinds',
      expected: 'the id of a subset or a group, or `of` with a list of them',
      set: 'high-water',
      card: null,
      at: { file: 'high-water/plan.yaml', words: 'relics: 5, |extras-of-all-kinds|: 3' },
    },
  },
  {
    rule: 'count-claim',
    says: 'an insert more in a text for the shops than in the packs',
    files: { 'high-water/sales/counter.md': { text: COUNTER_TEXT } },
    finding: {
      severity: 'error',
      message: 'this text claims another count than there is',
      found: '43: the group `inserts`',
      expected: '42, the group `inserts`',
      fix: '42',
      certain: true,
      set: 'high-water',
      card: null,
      at: { file: 'high-water/sales/counter.md', words: '[|43|](count:inserts)' },
    },
  },
  {
    rule: 'printed-list',
    says: 'a chart that the printed checklist leaves out',
    files: { 'high-water/cards/checklist/k084.md': [['LC-7, LC-8', 'LC-7']] },
    finding: {
      severity: 'error',
      message: 'the printed list is not that of the plan',
      found: 'Lake Charts: LC-1, LC-2, LC-3, LC-4, LC-5, LC-6, LC-7',
      expected: 'Lake Charts: LC-1, LC-2, LC-3, LC-4, LC-5, LC-6, LC-7, LC-8',
      fix: ['|-', ...PRINTED_LIST.map((line) => `    ${line}`), ''].join('\n'),
      certain: true,
      set: 'high-water',
      card: 'checklist/k084',
      file: 'high-water/cards/checklist/k084.md',
      line: 8,
      column: 9,
      endLine: 21,
      endColumn: 1,
    },
  },
  {
    rule: 'promise-changed',
    says: 'a ninth chart on a sell sheet that has gone',
    files: {
      'high-water/sales/sell-sheet.md': [['[eight](count:charts)', '[nine](count:charts)']],
    },
    finding: {
      severity: 'error',
      message: 'since 1 December 2026 this is a promise, and it no longer holds',
      found: 'nine: the subset `charts`',
      expected: '8, the subset `charts`',
      set: 'high-water',
      card: null,
      at: { file: 'high-water/sales/sell-sheet.md', words: '[|nine|](count:charts)' },
    },
  },
];
