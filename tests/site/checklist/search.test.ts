import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { findIndex } from '../../../site/_lib/find-index.js';
import { setWith } from '../../../site/scripts/find-number.js';
import { follows, runningPart } from '../../../site/scripts/runs.js';
import {
  foldedNumber,
  foldedWords,
  matches,
  readQuery,
  searchKey,
} from '../../../site/scripts/search-words.js';
import { data } from '../fixture.js';

const key = (number: string, name = 'The fourth gate', standing = 'revealed') =>
  searchKey({
    number,
    name,
    texts: ['Lake Charts', 'signed by Mirela Voss; 250 copies'],
    standing,
  });

function finds(typed: string, ...row: Parameters<typeof key>): boolean {
  const query = readQuery(typed);
  return query === null || matches(key(...row), query);
}

describe('a number', () => {
  it.each(['lc4', 'LC 4', 'LC-004', 'l c 4', 'lc–4', 'Lc#4', 'ＬＣ４', 'lc-o4'])(
    'is folded from %j to lc4',
    (typed) => expect(foldedNumber(typed)).toBe('lc4'),
  );

  it('keeps zeros that count', () => {
    expect(['10', '100', 'LC-10', '0', 'A-20-03'].map(foldedNumber)).toEqual([
      '10',
      '100',
      'lc10',
      '0',
      'a203',
    ]);
  });

  const sign = fc.constantFrom('', ' ', '-', '#', '–', ' - ');
  const letters = fc.string({ unit: fc.constantFrom('l', 'C', 'o', 'O', 'é', 'ß'), maxLength: 4 });

  test.prop([
    letters,
    fc.nat({ max: 2050 }),
    sign,
    sign,
    fc.integer({ min: 0, max: 3 }),
    fc.boolean(),
  ])(
    'is the same however it is parted and written, with zeros in front and O for 0',
    (prefix, value, parting, before, zeros, withO) => {
      const digits = '0'.repeat(zeros) + String(value);
      const written = withO ? digits.replaceAll('0', 'O') : digits;
      const typed = `${before}${Array.from(prefix).join(before)}${parting}${written}`;
      const printed = `${prefix}-${String(value)}`;
      expect(foldedNumber(typed)).toBe(foldedNumber(printed));
      expect(foldedNumber(foldedNumber(printed))).toBe(foldedNumber(printed));
      expect(finds(typed, printed)).toBe(true);
    },
  );

  it.each([
    ['LC-12', 'LC-', 12],
    ['17', '', 17],
    ['A05', 'A0', 5],
    ['NS-1-2', 'NS-1-', 2],
    ['0', '', 0],
    ['17b', null, null],
    ['A', null, null],
  ])('%s has the running part that it has', (number, prefix, value) => {
    expect(runningPart(number)).toEqual(prefix === null ? null : { prefix, value });
  });

  it('follows another of the same kind', () => {
    expect(follows('LC-9', 'LC-10')).toBe(true);
    expect([
      follows('LC-9', 'SG-10'),
      follows('9', '11'),
      follows('9', '8'),
      follows('A', 'B'),
    ]).toEqual([false, false, false, false]);
  });
});

describe('looking for a card', () => {
  it.each([
    ['', true],
    [' - ', true],
    ['4', true],
    ['#4', true],
    ['#LC4', true],
    ['#l', false],
    ['l', true],
    ['lc40', false],
    ['gate', true],
    ['FOURTH-gate', true],
    ['thefourthga', true],
    ['ourth', false],
    ['lake gate 4', true],
    ['voss', true],
    ['250', false],
    ['revealed', true],
    ['to be revealed', false],
  ])('by %j finds LC-4 or not', (typed, found) => {
    expect(finds(typed, 'LC-4')).toBe(found);
  });

  it('by what stands before its letter or its last digits', () => {
    expect([finds('#17', '17b'), finds('17', '17b'), finds('#2', 'NS-1-2')]).toEqual([
      true,
      true,
      true,
    ]);
    expect([finds('#7', '17b'), finds('#1', 'NS-1-2'), finds('4', '14')]).toEqual([
      false,
      false,
      false,
    ]);
  });

  it('finds what is to be revealed by these words from the first on', () => {
    for (const typed of ['to', 'to be', 'to be rev', 'To be revealed']) {
      expect(finds(typed, '19', '', 'to be revealed'), typed).toBe(true);
    }
    expect(finds('revealed', '19', '', 'to be revealed')).toBe(false);
  });

  it('by a figure of its name, and by no other figure', () => {
    expect(finds('1881', '5', 'The rise of 1881')).toBe(true);
  });

  it('takes words apart at their signs, and leaves out accents', () => {
    expect(foldedWords('Widow’s Kettle: Brass-Nailed É')).toEqual([
      'widows',
      'kettle',
      'brass',
      'nailed',
      'e',
    ]);
  });
});

describe('the index of the home page', () => {
  const text = findIndex(data).text;
  const index = JSON.parse(text.replace(/<[^>]*>/g, '')) as [string, string][];

  it('has the numbers of each set, neighbours as runs, and no names', () => {
    expect(index).toEqual([
      ['high-water', '1-20 49-55 lc1-4 sg1 sg9 tr3-4 17b'],
      ['depth-charts', '1-3'],
    ]);
  });

  it('ends no element early, whatever numbers there are', () => {
    const [set] = data.sets;
    if (!set) throw new Error('the fixture has a set');
    const id = '</script><script>&';
    const made = findIndex({ ...data, sets: [{ ...set, id }] }).text;
    expect(made.match(/<[/]?script/g)).toEqual(['<script', '</script']);
    expect((JSON.parse(made.replace(/<[^>]*>/g, '')) as [string, string][])[0]?.[0]).toBe(id);
  });

  it.each([
    ['lc4', 'high-water'],
    ['LC 004', 'high-water'],
    ['17b', 'high-water'],
    ['2', 'high-water'],
    ['#9', 'high-water'],
    ['sg-9', 'high-water'],
    ['sg-2', null],
    ['60', null],
    ['lc5', null],
    ['Odalys', null],
    ['', null],
  ])('leads from %j to the newest set that has it', (typed, set) => {
    expect(setWith(index, typed)).toBe(set);
  });

  it('prefers the number itself to one that ends like it', () => {
    const two = [
      ['new', 'lc1-8 x12 17'],
      ['old', '1-12'],
    ] as const;
    expect([setWith(two, '4'), setWith(two, 'lc4'), setWith(two, '12')]).toEqual([
      'old',
      'new',
      'old',
    ]);
    expect([setWith(two.slice(0, 1), '4'), setWith(two.slice(0, 1), '2')]).toEqual(['new', 'new']);
    expect([setWith([['new', 'x12']], '12'), setWith([['new', 'x12']], '2')]).toEqual([
      'new',
      null,
    ]);
  });
});
