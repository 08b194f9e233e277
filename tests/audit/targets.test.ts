import { describe, expect, it } from 'vitest';

import { auditSite } from '../../pipeline/audit/index.js';
import { heldWords } from '../../pipeline/audit/held.js';
import { standingOf } from '../../pipeline/audit/standing.js';
import { CONTAINERS } from './containers.js';
import { HIDINGS } from './planted.js';
import { SMALL, SMALL_DAY } from './small-property.js';

/** Everything of the small property that is held, by hand: what it is, and its words. */
const HELD: readonly (readonly [from: string, words: string])[] = [
  ['the name Odalys Thrane', 'Warden of Weeds'],
  ['the name Ysolde Marrack', 'Ysolde Marrack'],
  ['the name Ysolde Marrack', 'Steward Marrow'],
  ['the name Ysolde Marrack', 'Widow Marrack'],
  ['the name Ysolde Marrack', "she was never anybody's wife and script 5 says so twice"],
  ['the name Ysolde Marrack', 'ee-ZOL-duh'],
  ['the name the Dipper', 'the Dipper'],
  ['the name Osk', 'Osk'],
  ['the secret kin', 'The pilot and the warden are kin'],
  ['the label of later', 'Chapters of autumn'],
  ['the label of last', 'Chapters of winter'],
  ['the label of more', 'Further pens'],
  ['the title of the document doc-9', 'Script of the tenth flood'],
  ['the says of the beat 9/9', 'The harbour bell is melted down'],
  ['the title of the subset first/deep', 'Rooms below'],
  ['the facts of the subset first/deep', 'Fathoms'],
  ['the name of an artist of the subset first/drawn', 'Corvin Delph'],
  [
    'the remark of an artist of the subset first/drawn',
    'he asked for a month that the printer could not give us',
  ],
  ['the name of an artist of the subset first/kept', 'Pip Castellane'],
  ['the title of the parallel gilded', 'Gilded oars'],
  ['the tell of the parallel gilded', 'gold on the rowlocks'],
  ['the was of a correction of first/wide/w001', 'Seven lanterns'],
  ['the now of a correction of first/wide/w001', 'Eight lanterns'],
  ['the note of a correction of first/wide/w001', 'Counted again by hand'],
  ['the title of the sales text first/sheet', 'Sheet of autumn'],
  [
    'the words of the sales text first/sheet',
    'Come and see what the harbour master keeps below the third lock of the town.',
  ],
  ['name of first/codes/q077', 'Pen of the pilot'],
  ['number of first/codes/q077', 'QX-77'],
  ['name of first/deep/d001', 'Below the sill'],
  ['publicName of first/deep/d001', 'A closed door'],
  [
    'bio of first/deep/d001',
    'The room below the sill is dry, and somebody has kept it so for forty years and more.',
  ],
  ['name of first/wide/w001', 'Tern of Nine Locks'],
  ['image.alt of first/wide/w001', 'A seal pressed into red wax'],
  ['facts.Berth of first/wide/w001', 'Berth'],
  ['facts.Berth of first/wide/w001', 'Chamber of seals'],
  ['texts.caption of first/wide/w001', 'The wax is still warm'],
  ['signers of first/wide/w001', 'Rhosyn Pike'],
  ['signers of first/wide/w001', "The Magistrate's clerk"],
  ['credits of first/wide/w001', 'Sealing'],
  ['credits of first/wide/w001', 'Tove Lindqvist'],
  ['variation of first/wide/w001', 'The wax is green'],
  [
    'why of first/wide/w001',
    'held back until the second printing since the wax was of the wrong colour',
  ],
  ['sources of first/wide/w001', 'the third reel of the second day when the lamp goes out'],
  [
    'remark of first/wide/w001',
    'ask Mireille whether the seal of the model is the one that burned last spring',
  ],
  ['accepted of first/wide/w001', 'both cards are about the very same seal and must say so'],
  [
    'bio of first/wide/w001',
    'The magistrate seals every lock of the town in a single night, and keeps the keys.\n\nNobody asks why.',
  ],
  ['bio of first/wide/w001', 'Nobody asks why.'],
  ['image.alt of first/wide/w002', 'A lamp held over black water'],
  ['facts.Guild of first/wide/w002', 'Guild'],
  ['facts.Guild of first/wide/w002', 'Order of the drowned'],
  ['signers of first/wide/w002', 'Barnaby Quent'],
  ['credits of first/wide/w002', 'Lamps'],
  ['credits of first/wide/w002', 'Yewande Sorrel'],
  ['a held span of first/wide/w002', 'and puts out a tenth that nobody has ever seen lit'],
  ['signers of first/wide/w003', 'Caspar Ellwood'],
  ['the title of the set second', 'Unspoken Water'],
  ['the short of the set second', 'Unspoken'],
  ['the title of the subset second/hush', 'Hush money'],
];

/** The name of a held fact that an open card has too: what is open in its own right is dropped. */
const ALSO_OPEN = 'Berth';

const innocent = 'An open boat is rowed over the lake at noon by Odalys Thrane, and nobody asks.';
const standing = standingOf(SMALL, { at: SMALL_DAY });
const ways = [...HIDINGS, ...CONTAINERS];

/** Every text in every way, each in a file of its own; and what was found in each. */
function found(texts: readonly string[]): Map<string, Set<string>> {
  const files = texts.flatMap((text, index) =>
    ways.map(({ way, hide }): [string, Uint8Array] => {
      const hidden = hide(`We have seen ${text} here, and so have you.`);
      const bytes = typeof hidden === 'string' ? Buffer.from(hidden) : hidden;
      return [`${String(index)}/${way}`, bytes];
    }),
  );
  const sets = new Map(files.map(([file]) => [file, new Set<string>()]));
  for (const { file, from } of auditSite(new Map(files), SMALL, SMALL_DAY)) {
    sets.get(file)?.add(from);
  }
  return sets;
}

describe('everything that is held', () => {
  it('is looked for, and nothing else is', () => {
    expect(SMALL.faults).toEqual([]);
    expect(standing && heldWords(SMALL, standing).map(({ from, words }) => [from, words])).toEqual(
      HELD,
    );
  });

  it('is found in every way to hide it', () => {
    const wanted = HELD.filter(([, words]) => words !== ALSO_OPEN);
    const sets = found(wanted.map(([, words]) => words));
    const missed = wanted.flatMap(([from, words], index) =>
      ways.flatMap(({ way }) => {
        const there = sets.get(`${String(index)}/${way}`);
        return there?.has(from) === true ? [] : [`${way}: ${words}`];
      }),
    );
    expect(sets.size).toBe(wanted.length * ways.length);
    expect(missed).toEqual([]);
  });

  it('and what is innocent is not, in any way', () => {
    const texts = [innocent, ALSO_OPEN, 'the Ysolde Marrack Street', 'oskar and flosk'];
    const noisy = [...found(texts)].flatMap(([file, from]) =>
      [...from].map((each) => `${file}: ${each}`),
    );
    expect(noisy).toEqual([]);
  });

  it.each([
    ['the Dipper', true],
    ['#TheDipper', true],
    ['THE DIPPER', true],
    ['the dipper', false],
    ['the-dipper', false],
  ])('a name that is a common word counts by its capitals: %s', (text, isFound) => {
    const files = new Map([['a.txt', Buffer.from(`We have ${text} here.`)]]);
    expect(auditSite(files, SMALL, SMALL_DAY).length > 0).toBe(isFound);
  });
});
