import type { DemoEdit } from './edit.js';

const PLAN = 'high-water/plan.yaml';

export const PACKS_EDITS: readonly DemoEdit[] = [
  {
    rule: 'pack-places',
    says: 'relics that are thicker than a pack',
    files: { [PLAN]: [['copies: 240, places: 4', 'copies: 240, places: 7']] },
    finding: {
      severity: 'error',
      message: '`Hobby`: one card of Timber Relics takes 7 places, but a pack has 6',
      found: '7',
      expected: 'at most 6 places',
      set: 'high-water',
      card: null,
      at: { file: PLAN, words: 'copies: 240, places: |7|' },
    },
  },
  {
    rule: 'pack-divides',
    says: 'one Tarred card more than divides',
    files: { [PLAN]: [['copies: 29316', 'copies: 29317']] },
    finding: {
      severity: 'error',
      message:
        '29,317 copies of Tarred do not divide among 84 cards: 349 of each leave 1 over, and 83 more would divide',
      found: '29317',
      expected: '1 fewer or 83 more',
      set: 'high-water',
      card: null,
      at: { file: PLAN, words: 'copies: |29317|' },
    },
  },
  {
    rule: 'pack-guarantee',
    says: 'a second autograph that is promised in each box',
    files: { [PLAN]: [['of: [signatures], atLeast: 1', 'of: [signatures], atLeast: 2']] },
    finding: {
      severity: 'error',
      message:
        '`Hobby` promises at least 2 of Signatures a box, 4,800 in all, but 2,400 are packed',
      found: '2',
      expected: 'at least 4,800 packed',
      set: 'high-water',
      card: null,
      at: { file: PLAN, words: 'of: [signatures], atLeast: |2|' },
    },
  },
  {
    rule: 'odds-stated',
    says: 'odds that are better than the truth',
    files: { [PLAN]: [['odds: 720', 'odds: 685']] },
    finding: {
      severity: 'error',
      message:
        '`Hobby`: 1:685 packs for Keel is better than the truth, which is 84 copies in 57,600 packs: at best 1:686 may be said',
      found: '685',
      expected: '686',
      fix: '686',
      set: 'high-water',
      card: null,
      at: { file: PLAN, words: 'odds: |685|' },
    },
  },
  {
    rule: 'odds-tell',
    says: 'a numbered parallel of the charts and of a card that leaves no trace',
    files: {
      [PLAN]: [
        [
          '      - { of: tarred, copies: 29316, odds: 2 }\n',
          '      - { of: tarred, copies: 29064, odds: 2 }\n      - { of: inked, all: run, odds: 229 }\n',
        ],
        [
          '  - { id: lamplit,',
          '  - { id: inked, title: Inked, of: [charts, loose], run: 28, tell: a line of blue ink along the foot }\n  - { id: lamplit,',
        ],
      ],
    },
    finding: {
      severity: 'error',
      message:
        '`Hobby`: 1:229 packs for Inked tell that something is held: 8 cards are listed, and a run of 28 at these odds is of 9',
      found: '1:229, while The Ninth Gate is held by finale until 4 June 2027, 20:00',
      expected: '`spoiler: finale` on `inked` too, or 1:500 packs',
      set: 'high-water',
      card: null,
      at: { file: PLAN, words: 'of: inked, all: run, odds: |229|' },
      related: [
        { message: 'what is held', file: PLAN, words: '- { id: |loose|, title: The Ninth Gate' },
      ],
    },
  },
  {
    rule: 'redemption-terms',
    says: 'Letters that go out a day before they are sent',
    files: { [PLAN]: [['ships: "2027-06-05",', 'ships: "2027-06-04",']] },
    finding: {
      severity: 'error',
      message: 'letters/le01 is sent on another day than this redemption says',
      found: '2027-06-04',
      expected: '2027-06-05',
      set: 'high-water',
      card: null,
      at: { file: PLAN, words: 'ships: |"2027-06-04"|' },
      related: [
        {
          message: 'the day on which it is sent',
          file: PLAN,
          words:
            'found: redemption, spoiler: spring, ships: |"2027-06-05T09:00:00+01:00[Europe/London]"|',
        },
      ],
    },
  },
];
