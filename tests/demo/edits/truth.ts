import type { DemoEdit } from './edit.js';

export const TRUTH_EDITS: readonly DemoEdit[] = [
  {
    rule: 'cut-stale',
    says: 'a card of a scene that the last cut touched, read against the one before',
    files: {
      'high-water/cards/story/s054.md': [['checkedAgainst: cut-7', 'checkedAgainst: cut-6']],
    },
    finding: {
      severity: 'error',
      message: 'the copy was not read against cut-7, which touches it',
      found: 'read against cut-6; cut-7, received on 14 September 2026, touches scene 2/14',
      expected:
        'read against cut-7: `holdback checked high-water/story/s054 --cut cut-7 --by PERSON` says so',
      set: 'high-water',
      card: 'story/s054',
      file: 'high-water/cards/story/s054.md',
      line: 13,
      column: 17,
      endLine: 13,
      endColumn: 22,
      related: [
        {
          message: 'cut-7',
          file: 'property.yaml',
          words: '- { id: |cut-7|,',
        },
        {
          message: 'scene 2/14',
          file: 'high-water/cards/story/s054.md',
          line: 9,
          column: 8,
        },
      ],
    },
  },
  {
    rule: 'fact-unsourced',
    says: 'a source that is for the bio and not for the fact',
    files: {
      'high-water/cards/crew/c004.md': [['for: Berth', 'for: bio']],
    },
    finding: {
      severity: 'error',
      message: 'the fact `Berth` has no source',
      found: 'Berth',
      expected: '`{ doc: …, ref: …, for: Berth }` in `sources`',
      set: 'high-water',
      card: 'crew/c004',
      file: 'high-water/cards/crew/c004.md',
      line: 7,
      column: 10,
      endLine: 7,
      endColumn: 15,
    },
  },
  {
    rule: 'source-withdrawn',
    says: 'a script that was withdrawn, and the one letter that still leans on it',
    files: {
      'property.yaml': [
        [
          'title: Shooting script 7, level: spring',
          'title: Shooting script 7, level: spring, withdrawn: "2026-11-02"',
        ],
      ],
      'high-water/cards/letters/le03.md': [['script-7, ref: "scene 6/9"', 'bible, ref: "p. 43"']],
      'high-water/cards/letters/le04.md': [['script-7, ref: "scene 6/18"', 'bible, ref: "p. 44"']],
    },
    finding: {
      severity: 'error',
      message: '`script-7` was withdrawn on 2 November 2026, and the bio has no other source',
      found: 'Shooting script 7, scene 6/5',
      expected: 'a source that stands, or other words',
      set: 'high-water',
      card: 'letters/le01',
      file: 'high-water/cards/letters/le01.md',
      line: 11,
      column: 12,
      endLine: 11,
      endColumn: 20,
      related: [
        {
          message: 'withdrawn',
          file: 'property.yaml',
          words: 'level: spring, withdrawn: |"2026-11-02"|',
        },
      ],
    },
  },
  {
    rule: 'quote-unsourced',
    says: 'words that somebody says, in quotation marks',
    files: {
      'high-water/cards/crew/c004.md': [
        [
          'They burn straighter, he says, if they know what is going on.',
          '‘They burn straighter,’ he says, ‘if they know what is going on.’',
        ],
      ],
    },
    finding: {
      severity: 'error',
      message: 'these words are quoted in the bio and have no source',
      found: '‘They burn straighter,’',
      expected: '`{ doc: …, ref: …, for: quote }` in `sources`',
      set: 'high-water',
      card: 'crew/c004',
      file: 'high-water/cards/crew/c004.md',
      line: 13,
      column: 184,
      endLine: 13,
      endColumn: 207,
      related: [
        {
          message: 'quoted too',
          file: 'high-water/cards/crew/c004.md',
          line: 13,
          column: 217,
        },
      ],
    },
  },
];
