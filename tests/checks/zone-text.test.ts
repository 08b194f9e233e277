import { describe, expect, test } from 'vitest';

import {
  legalText,
  owedFor,
  undividedNames,
  zoneTexts,
  type ZoneWords,
} from '../../pipeline/model/index.js';

const EMPTY: ZoneWords = {
  number: null,
  name: '',
  bio: [],
  facts: [],
  texts: {},
  credits: [],
  legal: null,
  statement: null,
  shared: {},
};
const plain = (text: string) => ({ text, italic: false, bold: false });

/** The text of each zone, bold between stars. */
function shown(words: Partial<ZoneWords>): Record<string, string[]> {
  return Object.fromEntries(
    [...zoneTexts({ ...EMPTY, ...words })].map(([zone, paragraphs]) => [
      zone,
      paragraphs.map((runs) => runs.map(({ text, bold }) => (bold ? `*${text}*` : text)).join('')),
    ]),
  );
}

describe('zoneTexts', () => {
  test('what has no text has no zone', () => {
    expect(shown({})).toStrictEqual({});
  });

  test('every kind of text has its zone', () => {
    expect(
      shown({
        number: 'LC-3',
        name: 'The Quay',
        bio: [[plain('Water.')], [plain('More.')]],
        facts: [
          { name: 'Berth', value: 'Lock nine' },
          { name: 'Depth', value: '4' },
        ],
        texts: { caption: 'At night' },
        credits: [
          { role: 'Ink', name: 'Sister Ash' },
          { role: 'Wood', name: 'Tamsin Oakum' },
        ],
        legal: '© 2027',
        statement: 'By hand.',
        shared: { creed: 'Look twice.' },
      }),
    ).toStrictEqual({
      number: ['LC-3'],
      name: ['The Quay'],
      bio: ['Water.', 'More.'],
      facts: ['*Berth*\u00a0 Lock nine\n*Depth*\u00a0 4'],
      caption: ['At night'],
      credits: ['Ink: Sister Ash\nWood: Tamsin Oakum'],
      legal: ['© 2027'],
      creed: ['Look twice.'],
      statement: ['By hand.'],
    });
  });

  test('the statement of a subset stands before any other text of that zone', () => {
    const texts = { shared: { statement: 'a' }, texts: { statement: 'b' } };
    expect(shown({ ...texts, statement: 'c' })).toStrictEqual({ statement: ['c'] });
    expect(shown(texts)).toStrictEqual({ statement: ['b'] });
  });

  test('a hard break is a run of its own', () => {
    const facts = [
      { name: 'A', value: 'b' },
      { name: 'C', value: 'd' },
    ];
    const runs = zoneTexts({ ...EMPTY, facts }).get('facts')?.[0] ?? [];
    expect(runs.map(({ text }) => text)).toStrictEqual(['A', '\u00a0 b', '\n', 'C', '\u00a0 d']);
  });

  test('line ends of a plain text break lines, an empty line parts paragraphs', () => {
    expect(shown({ texts: { verse: 'One\r\ntwo\n\n  three\n' } })).toStrictEqual({
      verse: ['One\ntwo', 'three'],
    });
  });

  test('a card stands before its layout, and a field before a text', () => {
    expect(
      shown({ shared: { caption: 'a', name: 'b' }, texts: { caption: 'c', name: 'd' }, name: 'e' }),
    ).toStrictEqual({
      caption: ['c'],
      name: ['e'],
    });
  });
});

describe('legalText', () => {
  const owed = [
    { name: 'Ines Albarran', line: 'By leave of I. A.' },
    { name: 'Orrin Vetchley', line: 'By leave of O. V.' },
  ];

  test.each([
    [[], '© 2027'],
    [['Ines Albarran'], '© 2027 By leave of I. A.'],
    [['Orrin Vetchley', 'Ines Albarran', 'Nobody'], '© 2027 By leave of I. A. By leave of O. V.'],
  ])('owed to %j', (shownPeople, text) => {
    expect(legalText('© 2027', owedFor(owed, shownPeople))).toBe(text);
  });

  test('none without a legal line', () => {
    expect(legalText(null, owedFor(owed, ['Ines Albarran']))).toBeNull();
  });
});

test('names are kept whole in all their forms', () => {
  expect(
    undividedNames({
      names: [
        {
          name: 'Old Pell',
          kind: 'character',
          level: 'open',
          aliases: ['Pell', { form: 'Pellam Strood' }],
        },
      ],
    }),
  ).toStrictEqual(['Old Pell', 'Pell', 'Pellam Strood']);
  expect(undividedNames(null)).toStrictEqual([]);
});
