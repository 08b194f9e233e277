import type { DemoEdit } from './edit.js';

const CREW = 'high-water/cards/crew';

const STRAY_CARD = `---
number: "9"
name: A Stray
spoiler: open
bio: none
---
`;

const GATE_TEXT = `---
title: For the shops
kind: shop
goes: "2027-06-05T09:00:00+01:00[Europe/London]"
spoiler: finale
---
It is open.

© 2027 Lantern & Oar
`;

export const FILES_EDITS: readonly DemoEdit[] = [
  {
    rule: 'schema',
    says: 'a stage that is misspelt',
    files: { 'high-water/plan.yaml': [['stage: locked', 'stage: lockd']] },
    finding: {
      severity: 'error',
      message: '`stage` has a value that is not allowed',
      found: 'lockd',
      expected: '`planning`, `writing` or `locked`',
      fix: 'locked',
      set: 'high-water',
      card: null,
      at: { file: 'high-water/plan.yaml', words: 'stage: |lockd|' },
    },
  },
  {
    rule: 'unknown-key',
    says: 'a key that is misspelt',
    files: { [`${CREW}/c002.md`]: [['state: ready', 'stat: ready']] },
    finding: {
      severity: 'error',
      message: 'there is no key `stat`',
      found: 'stat',
      expected: '`state`',
      fix: 'state',
      set: 'high-water',
      card: 'crew/c002',
      file: 'high-water/cards/crew/c002.md',
      line: 5,
      column: 1,
      endLine: 5,
      endColumn: 5,
    },
  },
  {
    rule: 'front-matter',
    says: 'a fence that asks for an executable engine',
    files: { [`${CREW}/c003.md`]: [['---\nnumber', '---js\nnumber']] },
    finding: {
      severity: 'error',
      message: 'the file does not open with front matter',
      found: '---js',
      expected: 'a first line that is exactly ---',
      set: 'high-water',
      card: 'crew/c003',
      file: 'high-water/cards/crew/c003.md',
      line: 1,
      column: 1,
      endLine: 1,
      endColumn: 6,
    },
  },
  {
    rule: 'misplaced-card',
    says: 'a card in a folder that is no subset',
    files: { 'high-water/cards/crews/x001.md': { text: STRAY_CARD } },
    finding: {
      severity: 'error',
      message: 'this folder is no subset of the plan',
      found: 'high-water/cards/crews/x001.md',
      expected:
        'one of crew, story, checklist, charts, benches, signals, letters, loose, signatures, sketches, relics, toppers, promos',
      set: 'high-water',
      card: 'crews/x001',
      file: 'high-water/cards/crews/x001.md',
      line: 1,
      column: 1,
      endLine: 1,
      endColumn: 1,
    },
  },
  {
    rule: 'art-missing',
    says: 'art that nobody has drawn',
    files: { [`${CREW}/c004.md`]: [['art/c004.svg', 'art/c004b.svg']] },
    finding: {
      severity: 'error',
      message: 'there is no file art/c004b.svg in the folder of the set',
      found: 'art/c004b.svg',
      expected: '`art/c004.svg`',
      fix: 'art/c004.svg',
      set: 'high-water',
      card: 'crew/c004',
      file: 'high-water/cards/crew/c004.md',
      line: 6,
      column: 16,
      endLine: 6,
      endColumn: 29,
    },
  },
  {
    rule: 'path-outside',
    says: 'art from outside the set',
    files: { [`${CREW}/c004.md`]: [['art/c004.svg', '../names.yaml']] },
    finding: {
      severity: 'error',
      message: 'this path leads out of its folder, or would on another machine',
      found: '../names.yaml',
      expected: 'a path with / that stays inside, such as art/c017.svg',
      set: 'high-water',
      card: 'crew/c004',
      file: 'high-water/cards/crew/c004.md',
      line: 6,
      column: 16,
      endLine: 6,
      endColumn: 29,
    },
  },
  {
    rule: 'id-unknown',
    says: 'a writer whom nobody knows',
    files: { [`${CREW}/c001.md`]: [['writer: ', 'writer: x']] },
    finding: {
      severity: 'error',
      message: 'there is no person `xjonah`',
      found: 'xjonah',
      expected: '`jonah`',
      fix: 'jonah',
      set: 'high-water',
      card: 'crew/c001',
      file: 'high-water/cards/crew/c001.md',
      line: 8,
      column: 9,
      endLine: 8,
      endColumn: 15,
    },
  },
  {
    rule: 'accepted-unused',
    says: 'an acceptance of something that is not there',
    files: {
      [`${CREW}/c006.md`]: [
        [
          'state: ready',
          'state: ready\naccepted: [{ rule: copy-words, words: 61 words, why: agreed, by: jonah }]',
        ],
      ],
    },
    finding: {
      severity: 'error',
      message: 'this accepts a finding that is not there',
      found: '61 words',
      expected: 'no such entry',
      set: 'high-water',
      card: 'crew/c006',
      file: 'high-water/cards/crew/c006.md',
      line: 6,
      column: 20,
      endLine: 6,
      endColumn: 30,
    },
  },
  {
    rule: 'id-tells',
    says: 'a shop text whose file is named after the last gate',
    files: { 'high-water/sales/ninth-gate.md': { text: GATE_TEXT } },
    finding: {
      severity: 'error',
      message: 'the file name of this text tells what is held',
      found: 'ninth-gate: the Ninth Gate is held by finale until 4 June 2027, 20:00',
      expected: 'a name that tells nothing, such as x012',
      set: 'high-water',
      card: null,
      file: 'high-water/sales/ninth-gate.md',
      line: 1,
      column: 1,
      endLine: 1,
      endColumn: 1,
      related: [{ message: 'the name', file: 'names.yaml', words: '- { name: |the Ninth Gate|,' }],
    },
  },
];
