import { readContent, memoryFolder } from '../../pipeline/read/index.js';
import type { Content } from '../../pipeline/model/index.js';
import { changed } from './change.js';
import { sampleWith, type Files } from '../../pipeline/checks/index.js';

const card = (number: string, name: string, more = '', words = 'Water, and a bell.'): string =>
  `---\nnumber: "${number}"\nname: ${name}\nspoiler: open\n${more}---\n${words}\n`;

/** Cards of a subset, numbered on. */
function cards(subset: string, prefix: string, from: number, to: number): Files {
  const numbers = Array.from({ length: to - from + 1 }, (_, at) => from + at);
  return Object.fromEntries(
    numbers.map((number) => [
      `one/cards/${subset}/c${String(number).padStart(3, '0')}.md`,
      card(`${prefix}${String(number)}`, `${subset} ${String(number)}`),
    ]),
  );
}

const ARTISTS = Array.from(
  { length: 21 },
  (_, at) =>
    `  - { name: Artist ${String(at + 1)}, state: ${at === 11 ? 'withdrawn' : 'signed'} }\n`,
);

/** The sample without its cards and its story. */
export const BARE: Files = {
  'one/cards/base/a1.md': null,
  'one/cards/base/a2.md': null,
  'one/cards/extra/b1.md': null,
  ...changed('property.yaml', [
    ['beats:\n  - { at: 1/1, says: The water rises, level: open }\n', ''],
  ]),
};

/** How a plan begins, up to its subsets. */
export const PLAN_HEAD = `id: one
title: "The Ferrywrights: High Water"
short: High Water
spoiler: open
stage: locked
street: "2027-06-05T09:00:00+01:00[Europe/London]"
subsets:
`;

/**
 * The sample as a whole set, in the proportions of a real one: base 84 (48 of crew, 35 of story, a
 * checklist), inserts 42 (8, 12, 16, 6), 12 autographs, 5 relics, a roster of 21 of whom 20 are in.
 */
export const FULL: Files = {
  ...BARE,
  'one/plan.yaml': `${PLAN_HEAD}  - { id: crew, title: Crew and Craft, group: base, numbers: { from: 1, to: 48 } }
  - { id: story, title: High Water, group: base, numbers: { from: 49, to: 83 } }
  - { id: checklist, title: Checklist, group: base, numbers: { from: 84, to: 84 } }
  - { id: charts, title: Lake Charts, group: inserts, numbers: { prefix: LC-, from: 1, to: 8 } }
  - { id: benches, title: Maker’s Benches, group: inserts, numbers: { prefix: MB-, from: 1, to: 12 } }
  - { id: signals, title: Night Signals, group: inserts, numbers: { prefix: NS-, from: 1, to: 16 } }
  - { id: letters, title: Letters from the Drowned Street, group: inserts, numbers: { prefix: LD-, from: 1, to: 6 } }
  - { id: signatures, title: Signatures, group: autographs, numbers: { prefix: SG-, from: 1, to: 12 } }
  - { id: relics, title: Timber Relics, group: relics, numbers: { prefix: TR-, from: 1, to: 5 } }
  - { id: toppers, title: Full Panoramas, group: toppers, numbers: { prefix: FP-, from: 1, to: 4 } }
  - { id: promos, title: Promos, group: promos, numbers: { prefix: P-, from: 1, to: 2 } }
  - { id: sketches, title: Sketch Cards, group: sketches, numbers: none, bio: none, roster: rosters/a.yaml }
totals: { base: 84, inserts: 42, autographs: 12, relics: 5, set: { title: Complete set, of: [base, inserts], is: 126 } }
products:
  - { id: hobby, title: Hobby, pack: 6, box: 24 }
  - { id: retail, title: Retail, pack: 6, box: 10 }
parallels:
  - { id: tarred, title: Tarred, of: [crew, story, checklist] }
  - { id: varnished, title: Varnished, of: [crew, story, checklist], run: 84 }
  - { id: brass-nailed, title: Brass-Nailed, of: [crew, story, checklist], run: 12 }
  - { id: keel, title: Keel, of: [crew, story, checklist], run: 1 }
  - { id: plates, title: Printing Plates, of: [crew, story, checklist], run: 4 }
`,
  'one/rosters/a.yaml': `artists:\n${ARTISTS.join('')}`,
  ...cards('crew', '', 1, 48),
  ...cards('story', '', 49, 83),
  ...cards('checklist', '', 84, 84),
  ...cards('charts', 'LC-', 1, 8),
  ...cards('benches', 'MB-', 1, 12),
  ...cards('signals', 'NS-', 1, 16),
  ...cards('letters', 'LD-', 1, 6),
  ...cards('signatures', 'SG-', 1, 12),
  ...cards('relics', 'TR-', 1, 5),
  ...cards('toppers', 'FP-', 1, 4),
  ...cards('promos', 'P-', 1, 2),
};

/** A sales text of the full set. */
export function sells(words: string, front = ''): Files {
  return {
    ...FULL,
    'one/sales/a.md': `---\nkind: web\ngoes: unset\nspoiler: open\n${front}---\n${words}\n`,
  };
}

/** The bio of the third of the Night Signals. */
export function tells(words: string): Files {
  return { ...FULL, 'one/cards/signals/c003.md': card('NS-3', 'The third', '', words) };
}

/** The full set with files laid over it, read. */
export function fullContent(files: Files): Content {
  return readContent(memoryFolder(sampleWith(files)));
}
