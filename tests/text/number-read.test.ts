import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { countInWords, countLike, numbersIn, readCount } from '../../pipeline/text/index.js';

/** Any count below ten thousand in words: `countInWords` says thousands in figures. */
function inWords(count: number): string {
  if (count < 1000) return countInWords(count);
  const rest = count % 1000;
  const thousands = `${countInWords(Math.floor(count / 1000))} thousand`;
  if (rest === 0) return thousands;
  return `${thousands} ${rest < 100 ? 'and ' : ''}${countInWords(rest)}`;
}

const HYPHENS = ['-', '‐', '‑', ' ', '\u00ad-'];
const SPACES = [' ', '\u00a0', '\n', '-'];

test('every count from 0 to 9,999 reads as what it says', () => {
  for (let count = 0; count < 10_000; count++) {
    expect([count, readCount(inWords(count)), readCount(countInWords(count))]).toStrictEqual([
      count,
      count,
      count,
    ]);
  }
});

const MANNERS: readonly ((words: string) => string)[] = [
  (words) => words,
  (words) => words.toUpperCase(),
  (words) => words.charAt(0).toUpperCase() + words.slice(1),
  (words) => words.replace(/(?<=^|[ -])[a-z]/g, (letter) => letter.toUpperCase()),
];

test('hyphens, spaces, capitals and a missing "and" change nothing', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 9999 }),
      fc.constantFrom(...HYPHENS),
      fc.constantFrom(...SPACES),
      fc.constantFrom(...MANNERS),
      fc.boolean(),
      (count, hyphen, space, manner, american) => {
        const words = american ? inWords(count).replaceAll(' and ', ' ') : inWords(count);
        const typed = manner(words).replaceAll(' ', space).replace(/-/g, hyphen);
        expect(readCount(typed)).toBe(count);
      },
    ),
  );
});

test('a number in a sentence is found where it stands, whole', () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 9999 }), fc.boolean(), (count, figures) => {
      const typed = figures ? String(count) : inWords(count);
      const text = `She counted ${typed} lamps.`;
      expect(numbersIn(text).map(({ value, from, to }) => [value, from, to])).toStrictEqual([
        [count, 12, 12 + typed.length],
      ]);
    }),
  );
});

describe('forms of a number', () => {
  // British and American usage, from memory.
  test.each([
    ['a hundred', 100],
    ['a hundred and six', 106],
    ['one hundred six', 106],
    ['twelve hundred', 1200],
    ['1,200', 1200],
    ['1 200', 1200],
    ['1\u202f200', 1200],
    ['12 thousand', 12_000],
    ['a dozen', 12],
    ['two dozen', 24],
    ['half a dozen', 6],
    ['half-dozen', 6],
    ['Half a Dozen', 6],
    ['three score', 60],
    ['both', 2],
    ['a pair', 2],
    ['a single', 1],
    ['the-sixteenth'.slice(4), 16],
    ['forty-second', 42],
    ['one hundred and sixth', 106],
    ['17th', 17],
    ['21st', 21],
    ['no', 0],
    ['zero', 0],
    ['two thousand, four hundred', 2400],
  ])('%s is %i', (typed, value) => {
    expect(readCount(typed)).toBe(value);
  });

  test.each(['', 'some', 'LC-8', '£5', '12%', '3.5', 'one two', 'hundreds', 'half', 'eight lamps'])(
    '%j is no count',
    (typed) => {
      expect(readCount(typed)).toBeNull();
    },
  );

  test.each([
    ['a third of the set', [['fraction', 1 / 3]]],
    ['two-thirds of it', [['fraction', 2 / 3]]],
    ['half the cards', [['fraction', 1 / 2]]],
    [
      'LC-1 to LC-8',
      [
        ['code', 1],
        ['code', 8],
      ],
    ],
    [
      'ten, twenty',
      [
        ['count', 10],
        ['count', 20],
      ],
    ],
    ['in 1920s coats', [['measure', 1920]]],
    ['the third step', [['ordinal', 3]]],
    [
      'forty lamps, four ladders',
      [
        ['count', 40],
        ['count', 4],
      ],
    ],
    ['someone, anyone, none, stone, weight, often, tenth', [['ordinal', 10]]],
  ])('%s', (text, numbers) => {
    expect(numbersIn(text).map(({ kind, value }) => [kind, value])).toStrictEqual(numbers);
  });
});

test.each([
  ['sixteen', 14, 'fourteen'],
  ['Sixteen', 106, 'One hundred and six'],
  ['SIXTEEN', 42, 'FORTY-TWO'],
  ['16', 14, '14'],
  ['1,200', 1300, '1,300'],
  ['1 200', 12_000, '12 000'],
  ['a dozen', 13, 'thirteen'],
  ['Two dozen', 25, 'Twenty-five'],
])('%s as %i is %s', (typed, count, written) => {
  expect(countLike(typed, count)).toBe(written);
});
