import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import {
  compareNumbers,
  compareScenes,
  countWords,
  isCoded,
  plannedNumbers,
  runningNumber,
  sceneOf,
  sceneWithin,
} from '../../pipeline/model/index.js';

// Node's Intl.Collator('en', { numeric: true }) and PyICU 72 give this order, both run.
const ORDER = [
  '001',
  '1',
  '1a',
  '2',
  '2b',
  '10',
  '10b',
  'A1',
  'A2',
  'A10',
  'CL-1',
  'INS-9',
  'INS-11',
  'RC-2',
  'RC-10',
];

describe('the order of printed numbers', () => {
  test('is that of numeric collation, from whichever order they come', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(ORDER, { minLength: 2 }), (numbers) => {
        const expected = ORDER.filter((number) => numbers.includes(number));
        expect(numbers.toSorted(compareNumbers)).toStrictEqual(expected);
      }),
      { numRuns: 200 },
    );
  });

  const part = fc.constantFrom(
    '0',
    '00',
    '1',
    '01',
    '2',
    '10',
    '9',
    '-',
    ' ',
    'a',
    'A',
    'ä',
    'a\u0308',
    'LC',
    '\u0000',
    '\u200b',
    '一',
    '²',
  );
  const number = fc.oneof(
    fc.array(part, { maxLength: 5 }).map((parts) => parts.join('')),
    fc.string({ unit: 'binary', maxLength: 4 }),
  );

  test('is total: two numbers are equal only if they are the same, and no three go round', () => {
    fc.assert(
      fc.property(number, number, number, (a, b, c) => {
        expect(compareNumbers(a, b) === 0).toBe(a === b);
        expect(Math.sign(compareNumbers(a, b)) + Math.sign(compareNumbers(b, a))).toBe(0);
        const [x = '', y = '', z = ''] = [a, b, c].toSorted(compareNumbers);
        expect(compareNumbers(x, y)).toBeLessThanOrEqual(0);
        expect(compareNumbers(y, z)).toBeLessThanOrEqual(0);
        expect(compareNumbers(x, z)).toBeLessThanOrEqual(0);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('the running part of a number', () => {
  test.each([
    ['12', '', 12],
    ['LC-12', 'LC-', 12],
    ['LC-0', 'LC-', 0],
    ['LC-12', 'LC', null],
    ['LC-12', 'MB-', null],
    ['LC-012', 'LC-', null],
    ['lc-12', 'LC-', null],
    ['17b', '', null],
    ['+1', '', null],
    ['1.0', '', null],
    ['１２', '', null],
    ['', '', null],
    ['LC-', 'LC-', null],
    ['999999999', '', 999_999_999],
    ['1000000000', '', null],
  ])('of %j under %j is %j', (printed, prefix, expected) => {
    expect(runningNumber(printed, prefix)).toBe(expected);
  });

  test('is what the plan counted by, for every number of a plan', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('', 'LC-', '7', 'P'),
        fc.nat(5000),
        fc.nat(40),
        (prefix, from, more) => {
          const numbers = plannedNumbers({ prefix, from, to: from + more }) ?? [];
          expect(numbers).toHaveLength(more + 1);
          expect(numbers.map((each) => runningNumber(each, prefix))).toStrictEqual(
            Array.from({ length: more + 1 }, (_, index) => from + index),
          );
          expect(numbers.toSorted(compareNumbers)).toStrictEqual(numbers);
        },
      ),
      { numRuns: 100 },
    );
  });
});

describe('the numbers of a plan', () => {
  test.each<[Parameters<typeof plannedNumbers>[0], readonly string[] | null, boolean]>([
    ['none', null, false],
    [{ codes: ['SG-9', 'SG-1'] }, ['SG-9', 'SG-1'], true],
    [{ from: 84, to: 84 }, ['84'], false],
    [{ from: 1, to: 3, prefix: 'LD-' }, ['LD-1', 'LD-2', 'LD-3'], false],
    [{ from: 0, to: 1 }, ['0', '1'], false],
    [{ from: 3, to: 1 }, [], false],
  ])('%j', (numbers, expected, coded) => {
    expect(plannedNumbers(numbers)).toStrictEqual(expected);
    expect(isCoded(numbers)).toBe(coded);
  });

  test('are at most 100,000, whatever the plan says', () => {
    expect(plannedNumbers({ from: 0, to: 1_000_000_000 })).toHaveLength(100_000);
  });
});

describe('scenes', () => {
  const part = fc.integer({ min: 1, max: 9999 });
  const scene = fc.tuple(part, part).map(([episode, each]) => ({ episode, scene: each }));

  test('are read from episode and scene', () => {
    expect(sceneOf('2/14')).toStrictEqual({ episode: 2, scene: 14 });
    fc.assert(
      fc.property(scene, (each) => {
        expect(sceneOf(`${String(each.episode)}/${String(each.scene)}`)).toStrictEqual(each);
      }),
    );
  });

  test('go by episode, then by scene', () => {
    const told = ['1/1', '1/2', '1/10', '2/1', '10/1'].map(sceneOf);
    expect(told.toReversed().toSorted(compareScenes)).toStrictEqual(told);
  });

  test('lie in a run with both its ends', () => {
    fc.assert(
      fc.property(scene, scene, scene, (a, b, c) => {
        const [from = a, within = b, to = c] = [a, b, c].toSorted(compareScenes);
        expect(sceneWithin(within, from, to)).toBe(true);
        expect(sceneWithin(from, from, to) && sceneWithin(to, from, to)).toBe(true);
        expect(sceneWithin({ ...to, scene: to.scene + 1 }, from, to)).toBe(false);
        expect(sceneWithin({ episode: from.episode - 1, scene: 9999 }, from, to)).toBe(false);
      }),
    );
  });
});

describe('words', () => {
  test.each([
    ['', 0],
    [' \n\t ', 0],
    ['one', 1],
    ['Without a bell, without a chart.', 6],
    ['a – b … c', 3],
    ['well-worn captain’s chair', 3],
    ['Lock\u00a0nine', 2],
    ['Lock\u2003nine\n\nten', 3],
    ['17 b', 2],
    ['É — ð', 2],
    ['漢字', 1],
    ['🚢', 0],
  ])('%j has %d', (text, count) => {
    expect(countWords(text)).toBe(count);
  });
});
