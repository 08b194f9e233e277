import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import type { Files } from '../../pipeline/checks/index.js';
import { compareNumbers } from '../../pipeline/model/index.js';
import { cardText, changed } from './change.js';
import { lookAt, said } from './look.js';

const prefixes = fc.constantFrom('', 'LC-', 'X', '7-', 'Ö ');
const range = fc.record({
  prefix: prefixes,
  from: fc.integer({ min: 0, max: 2000 }),
  length: fc.integer({ min: 2, max: 40 }),
});
type Range = { prefix: string; from: number; length: number };

/** The second subset with these numbers in its plan, and a card for each of those given. */
function numbered({ prefix, from, length }: Range, numbers: readonly string[]): Files {
  const plan = `numbers: { prefix: "${prefix}", from: ${String(from)}, to: ${String(from + length - 1)} }`;
  return {
    ...changed('one/plan.yaml', [
      ['numbers: { from: 1, to: 2 }', 'numbers: { prefix: Z-, from: 1, to: 2 }'],
      ['numbers: { prefix: X-, from: 1, to: 1 }', plan],
      [
        'totals: { base: 2, inserts: 1, all: { title: Everything, of: [base, inserts], is: 3 } }',
        '',
      ],
    ]),
    ...changed('one/cards/base/a1.md', [['"1"', 'Z-1']]),
    ...changed('one/cards/base/a2.md', [['"2"', 'Z-2']]),
    'one/cards/extra/b1.md': null,
    ...Object.fromEntries(
      numbers.map((number, at) => [
        `one/cards/extra/c${String(at)}.md`,
        cardText(`number: "${number}"\nname: Card\nspoiler: open`),
      ]),
    ),
  };
}

function all({ prefix, from, length }: Range): string[] {
  return Array.from({ length }, (_, at) => `${prefix}${String(from + at)}`);
}

describe('number-gap', () => {
  test('a whole range has no gap, in whatever order its cards stand', () => {
    fc.assert(
      fc.property(
        range.chain((given) =>
          fc.tuple(
            fc.constant(given),
            fc.shuffledSubarray(all(given), { minLength: given.length }),
          ),
        ),
        ([given, numbers]) => {
          expect(said(lookAt(numbered(given, numbers)).findings)).toStrictEqual([]);
        },
      ),
      { numRuns: 25 },
    );
  });

  test('a number taken away is found, and nothing else', () => {
    fc.assert(
      fc.property(range, fc.nat(), (given, which) => {
        const numbers = all(given);
        const [gone] = numbers.splice(which % numbers.length, 1);
        const { findings } = lookAt(numbered(given, numbers));
        expect(findings).toMatchObject([
          { rule: 'number-gap', message: `no card of \`extra\` has the number ${gone ?? ''}` },
        ]);
      }),
      { numRuns: 40 },
    );
  });

  test.each([
    [[2, 4], '2 and 4'],
    [[2, 3], '2 and 3'],
    [[2, 3, 4], '2 to 4'],
    [[1, 3, 4, 5, 9, 10, 12], '1, 3 to 5, 9, 10 and 12'],
  ])('%j is told as %s', (gone, words) => {
    const given = { prefix: '', from: 1, length: 12 };
    const numbers = all(given).filter((number) => !gone.includes(Number(number)));
    expect(lookAt(numbered(given, numbers)).findings).toMatchObject([
      { message: `no card of \`extra\` has the numbers ${words}` },
    ]);
  });

  test('codes are numbers too', () => {
    const files = {
      ...changed('one/plan.yaml', [
        ['{ prefix: X-, from: 1, to: 1 }', '{ codes: [X-1, SG-9, SG-12] }'],
      ]),
    };
    expect(lookAt(files).findings).toMatchObject([
      { rule: 'number-gap', message: 'no card of `extra` has the numbers SG-9 and SG-12' },
    ]);
  });
});

describe('number-form', () => {
  const given = { prefix: 'LC-', from: 1, length: 3 };
  test.each([
    ['LC-02', 'LC-2'],
    ['lc-2', 'LC-2'],
    ['2', 'LC-2'],
    ['LC 2', 'LC-2'],
    [' LC-2', 'LC-2'],
    ['LC-2 ', 'LC-2'],
    ['LC–2', 'LC-2'],
    ['LC-2a', null],
    ['LC-99999999999', null],
    ['LC-', null],
  ])('%j is meant as %j', (written, fix) => {
    const { findings } = lookAt(numbered(given, ['LC-1', written, 'LC-3']));
    expect(findings).toHaveLength(1);
    expect(findings[0]?.rule).toBe('number-form');
    expect(findings[0]?.fix ?? null).toBe(fix);
  });

  test.each([
    ['sg-1', 'SG-1'],
    ['SG-01', 'SG-1'],
    ['SG- 1', 'SG-1'],
  ])('a code %j is meant as %j', (written, fix) => {
    const files = {
      ...changed('one/plan.yaml', [['{ prefix: X-, from: 1, to: 1 }', '{ codes: [SG-1] }']]),
      ...changed('one/cards/extra/b1.md', [['X-1', `"${written}"`]]),
    };
    expect(lookAt(files).findings).toMatchObject([{ rule: 'number-form', found: written, fix }]);
  });
});

test('ranges that overlap are told of as that, and not as out of order', () => {
  const files = {
    ...changed('one/plan.yaml', [
      ['from: 1, to: 2', 'from: 3, to: 4'],
      ['prefix: X-, from: 1, to: 1', 'from: 2, to: 3'],
    ]),
    ...changed('one/cards/base/a1.md', [['"1"', '"3"']]),
    ...changed('one/cards/base/a2.md', [['"2"', '"4"']]),
    ...changed('one/cards/extra/b1.md', [['X-1', '"2"']]),
  };
  expect(lookAt(files).findings).toMatchObject([
    { rule: 'number-range', message: '`extra` is given the number 3, which `base` has' },
  ]);
});

describe('variations', () => {
  const variation = (number: string, letter: string): string =>
    cardText(
      `number: "${number}"\nname: V\nspoiler: open\nvariation: { of: base/a1, letter: ${letter}, tell: lit }`,
    );

  test('are no card of the count and fill no gap', () => {
    expect(lookAt({ 'one/cards/base/v1.md': variation('1', 'b') }).findings).toStrictEqual([]);
    expect(
      said(
        lookAt({ 'one/cards/base/v1.md': variation('1', 'b'), 'one/cards/base/a2.md': null })
          .findings,
      ),
    ).toStrictEqual(['number-gap one/plan.yaml:7:54 no card of `base` has the number 2']);
  });

  test('have letters of their own', () => {
    const two = {
      'one/cards/base/v1.md': variation('1', 'b'),
      'one/cards/base/v2.md': variation('1', 'c'),
    };
    expect(lookAt(two).findings).toStrictEqual([]);
    expect(lookAt({ ...two, 'one/cards/base/v2.md': variation('1', 'b') }).findings).toMatchObject([
      { rule: 'number-duplicate', card: 'base/v2' },
    ]);
  });

  test('say nothing of a parent whose own number is wrong', () => {
    const files = {
      'one/cards/base/v1.md': variation('1', 'b'),
      ...changed('one/cards/base/a1.md', [['"1"', '"77"']]),
    };
    expect(lookAt(files).findings.map(({ rule }) => rule)).toStrictEqual(['number-range']);
    const twin = { ...files, ...changed('one/cards/base/a1.md', [['"1"', '"2"']]) };
    expect(lookAt(twin).findings.map(({ rule }) => rule)).toStrictEqual(['number-duplicate']);
  });
});

describe('compareNumbers', () => {
  const numbers = fc.oneof(
    fc.tuple(prefixes, fc.nat({ max: 300 })).map(([prefix, n]) => `${prefix}${String(n)}`),
    fc.string({ maxLength: 6 }),
  );

  test('orders by the running number, not by digits', () => {
    fc.assert(
      fc.property(prefixes, fc.nat(), fc.nat(), (prefix, a, b) => {
        const order = compareNumbers(`${prefix}${String(a)}`, `${prefix}${String(b)}`);
        expect(Math.sign(order)).toBe(Math.sign(a - b));
      }),
    );
  });

  test('is a total order', () => {
    fc.assert(
      fc.property(numbers, numbers, numbers, (a, b, c) => {
        expect(compareNumbers(a, b) === 0).toBe(a === b);
        expect(Math.sign(compareNumbers(a, b))).toBe(-Math.sign(compareNumbers(b, a)) || 0);
        if (compareNumbers(a, b) <= 0 && compareNumbers(b, c) <= 0) {
          expect(compareNumbers(a, c)).toBeLessThanOrEqual(0);
        }
      }),
    );
  });
});
