import { type Files } from '../../pipeline/checks/index.js';
import { BARE, PLAN_HEAD } from './claim-plan.js';

const card = (number: string, name: string, words: string): string =>
  `---\nnumber: ${number}\nname: ${name}\nspoiler: open\n---\n${words}\n`;

/** Cards of a subset, numbered on from 1. */
function cards(subset: string, prefix: string, count: number): Files {
  return Object.fromEntries(
    Array.from({ length: count }, (_, at) => [
      `one/cards/${subset}/c${String(at + 1)}.md`,
      card(`"${prefix}${String(at + 1)}"`, `${subset} ${String(at + 1)}`, 'Water, and a bell.'),
    ]),
  );
}

/**
 * Two products. Hobby: 6 cards a pack, 24 packs a box, 10 boxes a case, 20 cases, so 200 boxes and
 * 4,800 packs. Retail: 6, 10, 10 and 12, so 120 boxes and 1,200 packs.
 *
 * | packed | Hobby | Retail |
 * | --- | --- | --- |
 * | Lake Charts | 1:4, 1,200, 6 a box on average | 1:8, 150 |
 * | Night Signals | 1:8, 600 | none |
 * | Letters from the Street | 1:96, 50, held by `later` | none |
 * | Signatures | 1 a box, 200, said 1:24; guaranteed | none |
 * | Timber Relics | 100, truly 1:48, said 1:50 | none |
 * | Sketch Cards | 1 a case, 20, truly 1:240, said 1:240 | none |
 * | Tarred | 2,400, 1:2 | none |
 * | Brass-Nailed | 12 of each of 8, 96, truly 1:50, said 1:50 | none |
 * | Lamplit | none | 1:1, 1,200 |
 */
export const PACKED: Files = {
  ...BARE,
  'one/plan.yaml': `${PLAN_HEAD}  - { id: crew, title: Crew and Craft, group: base, numbers: { from: 1, to: 8 } }
  - { id: charts, title: Lake Charts, group: inserts, numbers: { prefix: LC-, from: 1, to: 5 } }
  - { id: signals, title: Night Signals, group: inserts, numbers: { prefix: NS-, from: 1, to: 4 } }
  - { id: letters, title: Letters from the Street, group: inserts, numbers: { prefix: LD-, from: 1, to: 2 }, found: redemption, spoiler: later }
  - { id: signatures, title: Signatures, group: autographs, numbers: { prefix: SG-, from: 1, to: 4 }, carries: autograph }
  - { id: relics, title: Timber Relics, group: relics, numbers: { prefix: TR-, from: 1, to: 5 }, carries: relic }
  - { id: sketches, title: Sketch Cards, group: sketches, numbers: none, bio: none, roster: rosters/a.yaml, carries: sketch }
  - { id: toppers, title: Full Panoramas, group: toppers, numbers: { prefix: FP-, from: 1, to: 2 }, found: box }
products:
  - id: hobby
    title: Hobby
    pack: 6
    box: 24
    case: 10
    cases: 20
    contents:
      - { of: charts, odds: 4 }
      - { of: signals, odds: 8 }
      - { of: letters, odds: 96 }
      - { of: signatures, perBox: 1, odds: 24 }
      - { of: relics, copies: 100, odds: 50 }
      - { of: sketches, perCase: 1, odds: 240 }
      - { of: tarred, copies: 2400, odds: 2 }
      - { of: brass-nailed, all: run, odds: 50 }
    guarantees:
      - { of: [signatures], atLeast: 1, per: box }
  - id: retail
    title: Retail
    pack: 6
    box: 10
    case: 10
    cases: 12
    contents:
      - { of: charts, odds: 8 }
      - { of: lamplit, odds: 1 }
parallels:
  - { id: tarred, title: Tarred, of: [crew] }
  - { id: brass-nailed, title: Brass-Nailed, of: [crew], run: 12 }
  - { id: lamplit, title: Lamplit, of: [crew] }
`,
  'one/rosters/a.yaml': 'artists:\n  - { name: Ines Marl, state: signed }\n',
  ...cards('crew', '', 8),
  ...cards('charts', 'LC-', 5),
  ...cards('signals', 'NS-', 4),
  ...cards('letters', 'LD-', 2),
  ...cards('signatures', 'SG-', 4),
  ...cards('relics', 'TR-', 5),
  ...cards('toppers', 'FP-', 2),
};

/** A sales text that is in shops with the set. */
export function sold(
  words: string,
  front = 'kind: web\ngoes: "2027-06-05T09:00:00+01:00[Europe/London]"\n',
): string {
  return `---\n${front}spoiler: open\n---\n${words}\n`;
}

/** The set with packs, a sales text, and the bio of a card. */
export function sells(words: string, bio = 'Water, and a bell.', front?: string): Files {
  return {
    ...PACKED,
    'one/cards/signals/c3.md': card('NS-3', 'The third', bio),
    'one/sales/a.md': sold(words, front),
  };
}
