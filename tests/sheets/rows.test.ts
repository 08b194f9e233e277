import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import {
  COLUMNS,
  HEADINGS,
  TOLD,
  bioCell,
  columnOf,
  isMark,
  readBio,
  readCell,
  rowOfCard,
  typed,
  guarded,
  writeCell,
  type CellForm,
} from '../../pipeline/out/sheets/index.js';
import { odd, oddCard } from './odd-cards.js';
import { cardOfRow, carried } from './read-back.js';

test('a card is its row again', () => {
  fc.assert(
    fc.property(oddCard, (card) => {
      expect(cardOfRow(rowOfCard(card))).toStrictEqual(carried(card));
    }),
    { numRuns: 1000 },
  );
});

describe('a cell', () => {
  test.each<[CellForm, string, unknown]>([
    ['list', 'shops; fair', ['shops', 'fair']],
    ['list', ' shops ;fair; ', ['shops', 'fair']],
    ['list', 'one\\; two; th\\\\ree', ['one; two', 'th\\ree']],
    ['list', 'one\\ntwo', ['one\ntwo']],
    ['list', '\\ one', [' one']],
    ['list', '(none)', []],
    ['list', '\\(none)', ['(none)']],
    ['list', 'ends\\', ['ends\\']],
    ['map', 'facts.Berth: premiere; image: shops', { 'facts.Berth': 'premiere', image: 'shops' }],
    ['map', 'a\\: b: c: d', { 'a: b': 'c: d' }],
    ['map', '(none)', {}],
    [
      'records',
      'role: A; name: B\nrole: C; name: D',
      [
        { role: 'A', name: 'B' },
        { role: 'C', name: 'D' },
      ],
    ],
    [
      'records',
      'role: A; name: B\r\n\r\nrole: C; name: D\r\n',
      [
        { role: 'A', name: 'B' },
        { role: 'C', name: 'D' },
      ],
    ],
    ['records', '(none)', []],
    ['whole', ' 250 ', 250],
    ['text', ' as; it: is\\ ', ' as; it: is\\ '],
  ])('of form %s: %j', (form, text, value) => {
    expect(readCell(text, form)).toStrictEqual({ ok: true, value });
  });

  test.each<[CellForm, string, string]>([
    ['whole', '2.5', '“2.5” is no whole number'],
    ['whole', '-3', '“-3” is no whole number'],
    ['map', 'facts.Berth', '“facts.Berth” is not written as “key: value”'],
    ['map', 'a: b; : c', '“: c” is not written as “key: value”'],
    ['map', 'a:', '“a:” is not written as “key: value”'],
    ['map', 'a: b; a: c', '“a” stands there twice'],
    ['records', 'role: A\nB', '“B” is not written as “key: value”'],
  ])('of form %s cannot be read: %j', (form, text, why) => {
    expect(readCell(text, form)).toStrictEqual({ ok: false, why });
  });

  test('of one line of words is what a person would write', () => {
    expect(writeCell(['Odalys Thrane', 'Old Pell'])).toBe('Odalys Thrane; Old Pell');
    expect(writeCell([{ name: 'Ines Albarran', as: 'Odalys Thrane', state: 'signed' }])).toBe(
      'name: Ines Albarran; as: Odalys Thrane; state: signed',
    );
  });

  test('has no reading that is not a key of its own', () => {
    expect(readCell('__proto__: a', 'map')).toStrictEqual({
      ok: true,
      value: Object.fromEntries([['__proto__', 'a']]),
    });
    expect(Object.getPrototypeOf({})).toBe(Object.prototype);
  });
});

describe('a bio', () => {
  test.each([
    [true, '', 'none'],
    [false, '', ''],
    [false, 'A bell.\n\nIt rings.', 'A bell.\n\nIt rings.'],
    [false, 'none', '\\none'],
    [false, '\\none\nof it', '\\\\none\nof it'],
    [true, 'none', 'none\n\\none'],
    [false, 'none of it', 'none of it'],
  ])('%j, %j is written as %j', (none, body, cell) => {
    expect(bioCell(none, body)).toBe(cell);
    expect(readBio(cell)).toStrictEqual({ none, body });
  });

  test('is none however it is typed', () => {
    expect(readBio(' none \r\n')).toStrictEqual({ none: true, body: '' });
  });
});

test('an apostrophe comes off what it was put before, and off nothing else', () => {
  fc.assert(
    fc.property(odd, (text) => {
      expect(typed(guarded(text))).toBe(text);
      // OWASP, CSV Injection: the characters by which a cell becomes a formula.
      expect(guarded(text)).not.toMatch(/^[=+\-@\t\r\n]/);
    }),
  );
  expect(['=1', "'=1", "''-x", "'tis", "'"].map(guarded)).toStrictEqual([
    "'=1",
    "''=1",
    "'''-x",
    "'tis",
    "'",
  ]);
});

test('no two columns have one heading, not even but for capitals', () => {
  const all = [...HEADINGS, ...Object.values(TOLD)].map((heading) => heading.toLowerCase());
  expect(new Set(all).size).toBe(all.length);
  expect(all.length).toBeGreaterThan(40);
  expect(COLUMNS.map(({ heading }) => columnOf(heading))).toStrictEqual([...COLUMNS]);
  expect(Object.values(TOLD).map((heading) => columnOf(heading))).toStrictEqual(
    Object.values(TOLD).map(() => null),
  );
  expect([...HEADINGS, ...Object.values(TOLD)].filter(isMark)).toStrictEqual([]);
  expect(columnOf('Fact: Berth')).toStrictEqual({
    heading: 'Fact: Berth',
    path: ['facts', 'Berth'],
    form: 'text',
  });
});
