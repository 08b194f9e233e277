import { test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import {
  type Collection,
  isCollected,
  type ListCard,
  scopesOf,
} from '../../../site/scripts/collection.js';
import { readLists } from '../../../site/scripts/read-list.js';
import { NO_TICKS, type Ticks, withChanges } from '../../../site/scripts/ticks.js';
import { writeDoubles, writeWant } from '../../../site/scripts/write-list.js';
import { collectionWithTicks } from './collections.js';

function cards(subset: string, numbers: readonly string[], gone: readonly string[] = []) {
  return numbers.map((printed): ListCard => {
    const [, number = printed, letter = ''] = /^(\d+)([a-z])$/.exec(printed) ?? [];
    return { key: `${subset}/${printed}`, number, letter, can: !gone.includes(printed) };
  });
}

const upTo = (most: number, prefix = '') =>
  Array.from({ length: most }, (_, at) => `${prefix}${String(at + 1)}`);

const highWater: Collection = {
  head: 'High Water',
  parallels: [
    { id: 'tarred', title: 'Tarred' },
    { id: 'varnished', title: 'Varnished' },
  ],
  subsets: [
    {
      title: 'Crew and Craft',
      base: true,
      of: new Set(['tarred', 'varnished']),
      cards: cards('crew', [...upTo(17), '17b', ...upTo(24).slice(17)]),
    },
    {
      title: 'High Water',
      base: true,
      of: new Set(['tarred']),
      cards: cards('story', upTo(41).slice(24), ['41']),
    },
    { title: 'Lake Charts', base: false, of: new Set(), cards: cards('charts', upTo(8, 'LC-')) },
  ],
};

/** Ticks of all that is not named, and of that which is named as often as said. */
function having(counts: Readonly<Record<string, number>>, printing = ''): Ticks {
  const changes = highWater.subsets
    .filter(({ of }) => printing === '' || of.has(printing))
    .flatMap((subset) => subset.cards)
    .filter(({ can }) => can)
    .map(({ key }) => ({ printing, key, from: 0, to: counts[key.split('/')[1] ?? ''] ?? 1 }));
  return withChanges(NO_TICKS, changes);
}

const both = (...all: readonly Ticks[]): Ticks => new Map(all.flatMap((ticks) => [...ticks]));

const none = (...numbers: readonly string[]) =>
  Object.fromEntries(numbers.map((number) => [number, 0]));

/** What somebody has after a list was read onto nothing. */
function read(text: string, set = highWater, ticks = NO_TICKS) {
  const reading = readLists(text, [set], ticks);
  if ('refused' in reading) throw new Error(reading.refused);
  return { ticks: withChanges(ticks, reading.changes), problems: reading.problems };
}

describe('a want list', () => {
  it('has runs, the base set as one, then the other subsets and the parallels collected', () => {
    const ticks = both(
      having(none('3', '17', '18', '19', '20', '21', '22', '40', 'LC-2', 'LC-5')),
      having(none('3', '9'), 'varnished'),
    );
    expect(writeWant(highWater, ticks)).toBe(
      'High Water, want: 3, 17-22, 40; LC-2, LC-5; Varnished: 3, 9',
    );
  });

  it('runs on across the subsets of the base set, with what stands before the number at both ends', () => {
    const ticks = having(none('23', '24', '25', '26', 'LC-2', 'LC-3', 'LC-4', 'LC-7', 'LC-8'));
    expect(writeWant(highWater, ticks)).toBe('High Water, want: 23-26; LC-2-LC-4, LC-7, LC-8');
  });

  it('names a variation by itself, after the run that it stands in', () => {
    expect(writeWant(highWater, having(none('17b')))).toBe('High Water, want: 17b');
    expect(writeWant(highWater, having(none('16', '17', '17b', '18')))).toBe(
      'High Water, want: 16-18, 17b',
    );
  });

  it('says when nothing is missing', () => {
    expect(writeWant(highWater, both(having({}), having({}, 'varnished')))).toBe(
      'High Water, want: Varnished: nothing',
    );
    expect(writeWant(highWater, having({}))).toBe('High Water, want: nothing');
  });

  it('of doubles says how many are spare', () => {
    const ticks = both(having({ 3: 3, 'LC-4': 4 }), having({ 9: 2 }, 'varnished'));
    expect(writeDoubles(highWater, ticks)).toBe(
      'High Water, doubles: 3 x2; LC-4 x3; Varnished: 9 x1',
    );
    expect(writeDoubles(highWater, having({}))).toBe('High Water, doubles: nothing');
  });

  it('names a subset whose numbers another has too', () => {
    const set: Collection = {
      ...highWater,
      subsets: [
        ...highWater.subsets,
        {
          title: 'Promos: early',
          base: false,
          of: new Set(['tarred']),
          cards: cards('p', upTo(3)),
        },
      ],
    };
    const ticks = both(having(none('3')), having(none('4'), 'tarred'));
    expect(writeWant(set, ticks)).toBe(
      'High Water, want: 3; Promos early: 1-3; Tarred: 4; Tarred / Promos early: 1-3',
    );
  });

  it('writes no run that reads as a number', () => {
    const set = {
      ...highWater,
      subsets: [{ ...highWater.subsets[0], cards: cards('s', ['1', '2', '3', '1-3']) }],
    };
    const written = writeWant(set as Collection, NO_TICKS);
    expect(written).toBe('High Water, want: 1, 2, 3, 1-3');
  });

  test.prop([collectionWithTicks])(
    'reads back as it was written, with its doubles',
    ({ set, ticks }) => {
      const scopes = scopesOf(set);
      const named = new Set(
        scopes.flatMap(({ printing, printed }) =>
          isCollected(set, ticks, printing)
            ? [...printed.values()].map(({ key }) => `${printing} ${key}`)
            : [],
        ),
      );
      const nameable: Ticks = new Map(
        [...ticks].map(([printing, counts]) => [
          printing,
          new Map([...counts].filter(([key]) => named.has(`${printing} ${key}`))),
        ]),
      );
      const text = `${writeWant(set, ticks)}\n${writeDoubles(set, ticks)}`;
      const { ticks: again, problems } = read(text, set);
      expect(problems).toEqual([]);
      expect(flat(again)).toEqual(flat(nameable));
    },
  );

  test.prop([collectionWithTicks])('leaves alone what no list can name', ({ set, ticks }) => {
    const { ticks: again } = read(writeWant(set, ticks), set, ticks);
    expect(flat(again)).toEqual(flat(ticks));
  });
});

const flat = (ticks: Ticks) =>
  [...ticks]
    .flatMap(([printing, counts]) =>
      [...counts].map(([key, count]) => `${printing} ${key}: ${String(count)}`),
    )
    .sort();

describe('a list that is read', () => {
  it('ticks what it does not want, keeps doubles, and unticks what it wants', () => {
    const before = withChanges(NO_TICKS, [
      { printing: '', key: 'crew/3', from: 0, to: 1 },
      { printing: '', key: 'crew/4', from: 0, to: 3 },
      { printing: 'tarred', key: 'crew/4', from: 0, to: 1 },
    ]);
    const { ticks } = read('High Water, want: 3, 17-22, 40; LC-2, LC-5', highWater, before);
    const after = having({
      ...none('3', '17', '18', '19', '20', '21', '22', '40', 'LC-2', 'LC-5'),
      4: 3,
    });
    expect(flat(ticks)).toEqual([...flat(after), 'tarred crew/4: 1'].sort());
  });

  it.each([
    ['high water , WANT: #3; lc 2 – lc4, lc-008', ['3', 'LC-2', 'LC-3', 'LC-4', 'LC-8']],
    ['High Water, want: LC2-5,\n 3,\n4 ; ', ['3', '4', 'LC-2', 'LC-3', 'LC-4', 'LC-5']],
    ['High Water, want: 17-19', ['17', '18', '19']],
    ['High Water, want:', []],
  ])('%j may be typed loosely', (text, numbers) => {
    const { ticks, problems } = read(text);
    expect(problems).toEqual([]);
    expect(flat(ticks)).toEqual(flat(having(none(...numbers))));
  });

  it('says what it cannot read, and where', () => {
    const { problems } = read('High Water, want: 3, LX-9; Gilded: 3, 4; 41, 5-3');
    expect(problems).toEqual([
      { at: 22, text: 'LX-9', why: 'no card here has this number' },
      { at: 28, text: 'Gilded: 3, 4', why: 'nothing here is called “Gilded”' },
      { at: 42, text: '41', why: 'nobody can have this yet' },
      { at: 46, text: '5-3', why: 'no card here has this number' },
    ]);
    expect(read('High Water, doubles: 3 x0, 4 x1, 5 x2000').problems).toEqual([
      { at: 22, text: '3 x0', why: 'it should say 1 to 998 spare' },
      { at: 34, text: '5 x2000', why: 'it should say 1 to 998 spare' },
    ]);
  });

  it('takes a number that could mean two cards for neither', () => {
    const set = {
      ...highWater,
      subsets: [{ ...highWater.subsets[0], cards: cards('s', ['O', '0', 'B-1']) }],
    } as Collection;
    expect(read('High Water, want: o, b1', set).problems).toEqual([
      { at: 19, text: 'o', why: 'no card here has this number' },
    ]);
    expect(read('High Water, want: O', set).problems).toEqual([]);
  });

  it.each([
    ['', 'There is nothing to read yet.'],
    [
      '3, 4',
      'This is no list of High Water: it should open with “High Water, want:” or “High Water, doubles:”.',
    ],
    ['Depth Charts, want: 3', 'This is a list of Depth Charts. This page is of High Water.'],
    [
      'High Water, want: 3\nDepth Charts, want: 4',
      'This is a list of Depth Charts. This page is of High Water.',
    ],
  ])('%j is refused', (text, refused) => {
    expect(readLists(text, [highWater], NO_TICKS)).toEqual({ refused });
  });
});
