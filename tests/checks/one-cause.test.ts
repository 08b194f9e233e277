import { describe, expect, test } from 'vitest';

import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import { changed } from './change.js';
import { lookAt, said } from './look.js';

/** The sample with a bigger base set: six story cards of which the first three tell a beat each. */
const BIGGER: Files = {
  ...changed('one/plan.yaml', [
    ['to: 2', 'to: 6'],
    ['totals: { base: 2', 'totals: { base: 6'],
    ['is: 3', 'is: 7'],
  ]),
  ...changed('property.yaml', [
    [
      'level: open }\n',
      'level: open }\n  - { at: 1/4, says: A lamp burns, level: open }\n  - { at: 1/5, says: A bell is heard, level: open }\n',
    ],
  ]),
  ...Object.fromEntries(
    [3, 4, 5, 6].map((number) => [
      `one/cards/base/a${String(number)}.md`,
      `---\nnumber: "${String(number)}"\nname: Card ${String(number)}\nspoiler: open\nstory: 1/${String(number + 2)}\n---\nWater, and a bell.\n`,
    ]),
  ),
};

type Change = readonly [from: string, to: string];

function card(id: string, ...changes: readonly Change[]): Files {
  return changed(`one/cards/base/${id}.md`, changes, BIGGER);
}

function plan(...changes: readonly Change[]): Files {
  return changed('one/plan.yaml', changes, BIGGER);
}

function property(...changes: readonly Change[]): Files {
  return changed('property.yaml', changes, BIGGER);
}

const CASES: readonly (readonly [what: string, files: Files, rule: string])[] = [
  ['a card that is gone', { 'one/cards/base/a3.md': null }, 'number-gap'],
  ['the last card gone', { 'one/cards/base/a6.md': null }, 'number-gap'],
  ['two cards gone', { 'one/cards/base/a2.md': null, 'one/cards/base/a3.md': null }, 'number-gap'],
  ['a subset without cards', { 'one/cards/extra/b1.md': null }, 'subset-count'],
  ['a card that cannot be read', card('a3', ['name: Card 3\n', '']), 'schema'],
  ['a card whose fence is open', { 'one/cards/base/a3.md': '---\nnumber: "3"\n' }, 'front-matter'],
  ['a card with a misspelt key', card('a3', ['spoiler:', 'spoler:']), 'unknown-key'],
  ['a card with HTML', card('a3', ['Water', '<br>Water']), 'copy-markup'],
  ['a number above the range', card('a3', ['"3"', '"33"']), 'number-range'],
  ['a number with a zero in front', card('a3', ['"3"', '"03"']), 'number-form'],
  ['a number that another has', card('a3', ['"3"', '"4"']), 'number-duplicate'],
  [
    'a card too many, under a number there is',
    { 'one/cards/base/a7.md': sampleWith(BIGGER).get('one/cards/base/a6.md') ?? '' },
    'number-duplicate',
  ],
  [
    'a card too many, under a number of its own',
    {
      'one/cards/base/a7.md': (sampleWith(BIGGER).get('one/cards/base/a6.md') ?? '').replace(
        '"6"',
        '"7"',
      ),
    },
    'number-range',
  ],
  ['a card without number', card('a3', ['"3"', 'none']), 'number-form'],
  [
    'a card in the folder of another subset',
    {
      'one/cards/base/a3.md': null,
      'one/cards/extra/a3.md': (sampleWith(BIGGER).get('one/cards/base/a3.md') ?? '').replace(
        'story: 1/5\n',
        '',
      ),
    },
    'number-form',
  ],
  [
    'the number of a card of another subset',
    changed('one/cards/extra/b1.md', [['X-1', '"3"']], BIGGER),
    'number-form',
  ],
  ['a range too short by one', plan(['to: 6', 'to: 5']), 'number-range'],
  ['a range too short by three', plan(['to: 6', 'to: 3']), 'number-range'],
  ['a range too long by one', plan(['to: 6', 'to: 7']), 'number-gap'],
  ['a range that is none', plan(['from: 1, to: 6', 'from: 6, to: 1']), 'number-range'],
  ['a range of a million', plan(['to: 6', 'to: 1000000']), 'number-range'],
  [
    'another prefix',
    plan(['numbers: { from: 1, to: 6', 'numbers: { prefix: B-, from: 1, to: 6']),
    'number-form',
  ],
  ['no numbers in the plan', plan(['numbers: { from: 1, to: 6 }', 'numbers: none']), 'number-form'],
  ['a total that is not so', plan(['totals: { base: 6', 'totals: { base: 5']), 'total'],
  ['a total of something unknown', plan(['inserts: 1', 'inset: 1']), 'total-undefined'],
  [
    'totals in a ring',
    plan(['of: [base, inserts], is: 7 }', 'of: [base, more], is: 7 }, more: { of: [all], is: 1 }']),
    'total-undefined',
  ],
  ['a group with `of`', plan(['inserts: 1', 'inserts: { of: [extra], is: 1 }']), 'total-undefined'],
  ['a subset renamed', plan(['id: extra', 'id: extras']), 'misplaced-card'],
  [
    'a card in a folder of no subset',
    {
      'one/cards/base/a3.md': null,
      'one/cards/basis/a3.md': sampleWith(BIGGER).get('one/cards/base/a3.md') ?? '',
    },
    'misplaced-card',
  ],
  ['a scene outside the coverage', card('a3', ['1/5', '9/5']), 'story-coverage'],
  ['a scene mistyped inside it', card('a3', ['1/5', '1/9']), 'story-order'],
  ['a card without a scene', card('a3', ['story: 1/5\n', '']), 'story-coverage'],
  ['a coverage too short', plan(['to: 1/9', 'to: 1/5']), 'story-coverage'],
  ['a coverage that is none', plan(['from: 1/1, to: 1/9', 'from: 1/9, to: 1/1']), 'story-coverage'],
  ['a card moved to the end', card('a1', ['1/1', '1/8']), 'story-order'],
  ['a level that is none', card('a3', ['spoiler: open', 'spoiler: lats']), 'level-unknown'],
  [
    'an embargo that is none',
    card('a3', ['spoiler: open', 'spoiler: open\nembargo: [guess]']),
    'level-unknown',
  ],
  ['an embargo as a level', card('a3', ['spoiler: open', 'spoiler: guest']), 'level-unknown'],
  [
    'a level as an embargo',
    card('a3', ['spoiler: open', 'spoiler: open\nembargo: [last]']),
    'level-unknown',
  ],
  [
    'a field under a level that is none',
    card('a3', ['spoiler: open', 'spoiler: open\nholds: { name: lats }']),
    'level-unknown',
  ],
  [
    'a span under a level that is none',
    card('a3', ['Water', '[Water](held:lats)']),
    'level-unknown',
  ],
  [
    'a subset under a level that is none',
    plan(['group: base', 'group: base, spoiler: lats']),
    'level-unknown',
  ],
  [
    'a level without lift',
    {
      ...card('a6', ['spoiler: open', 'spoiler: last']),
      ...property(['lift: "2027-06-04T20:00:00+01:00[Europe/London]", ', '']),
    },
    'lift-missing',
  ],
  [
    'a lift that falls',
    {
      ...card('a6', ['spoiler: open', 'spoiler: last']),
      ...property(['"2027-04-16', '"2028-04-16']),
    },
    'level-order',
  ],
  [
    'a path that leads out',
    card('a3', ['spoiler: open', 'spoiler: open\nimage: { file: ../x.svg }']),
    'path-outside',
  ],
  [
    'a roster that leads out',
    plan([
      'group: inserts',
      'group: inserts, roster: ../x.yaml, carries: sketch, statement: Drawn by hand.',
    ]),
    'path-outside',
  ],
  [
    'a street a year early',
    { ...plan(['"2027-06-05', '"2026-06-05']), ...card('a6', ['spoiler: open', 'spoiler: last']) },
    'early-print',
  ],
];

describe('one broken thing gives one finding', () => {
  test('the bigger sample has none', () => {
    expect(said(lookAt(BIGGER).findings)).toStrictEqual([]);
  });

  test.each(CASES)('%s', (_, files, rule) => {
    const { findings } = lookAt({ ...BIGGER, ...files });
    expect(said(findings)).toStrictEqual([expect.stringMatching(`^${rule} `)]);
  });
});

test('two bad file names in one folder are two things', () => {
  const card = sampleWith({}).get('one/cards/extra/b1.md') ?? '';
  const files = { 'one/cards/extra/B2.md': card, 'one/cards/extra/b_3.md': card };
  expect(said(lookAt(files).findings)).toStrictEqual([
    'misplaced-card one/cards/extra/B2.md:1:1 this is no place for a card',
    'misplaced-card one/cards/extra/b_3.md:1:1 this is no place for a card',
  ]);
});
