import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';

import {
  broughtBy,
  expectedPacks,
  packsForChances,
  varianceOfPacks,
} from '../../pipeline/packs/index.js';
import { openPacks } from './open-packs.js';

/** nH(n) by its definition. */
function singles(cards: number): number {
  return Array.from({ length: cards }, (_, at) => cards / (at + 1)).reduce((a, b) => a + b, 0);
}

describe('the packs that are expected', () => {
  // Stadje, Adv. Appl. Prob. 22 (1990), and the figures that Harper (Cardiff) gave the press in 2018.
  test('682 cards in packs of five: 967 packs, 4,832 cards, the last 19 taking 483', () => {
    const packs = expectedPacks({ cards: 682, inPack: 5 });
    expect(packs).toBeCloseTo(966.4009, 4);
    expect(packs * 5).toBeCloseTo(4832.0, 2);
    expect(expectedPacks({ cards: 682, inPack: 5 }, 19)).toBeCloseTo(482.89, 2);
  });

  // Sardy and Velenik, Bull. Swiss Stat. Soc. (2010), computed anew.
  test.each([
    [640, 898.63],
    [660, 930.84],
  ])('%i cards in packs of five: %f packs', (cards, packs) => {
    expect(expectedPacks({ cards, inPack: 5 })).toBeCloseTo(packs, 2);
  });

  test('four cards in twos: 19 fifths', () => {
    expect(expectedPacks({ cards: 4, inPack: 2 })).toBeCloseTo(19 / 5, 12);
  });

  // The closed form of the coupon collector's problem.
  test.each([
    [6, 14.7],
    [10, 29.2897],
    [50, 224.9603],
    [52, 235.9783],
    [100, 518.7378],
    [365, 2364.646],
  ])('%i cards one by one: nH(n) is %f', (cards, draws) => {
    expect(expectedPacks({ cards, inPack: 1 })).toBeCloseTo(draws, 4);
    expect(singles(cards)).toBeCloseTo(draws, 4);
  });

  test('84 base cards: 82.60 packs of five, 421.17 cards one by one', () => {
    expect(expectedPacks({ cards: 84, inPack: 5 })).toBeCloseTo(82.6, 2);
    expect(expectedPacks({ cards: 84, inPack: 1 })).toBeCloseTo(421.17, 2);
  });

  property.prop({ cards: fc.integer({ min: 1, max: 60 }), n: fc.integer({ min: 1, max: 400 }) })(
    'an insert in every n-th pack takes n times the packs',
    ({ cards, n }) => {
      const whole = expectedPacks({ cards, inPack: 1 });
      expect(expectedPacks({ cards, inPack: 1, chance: 1 / n }) / whole / n).toBeCloseTo(1, 9);
    },
  );

  property.prop({
    cards: fc.integer({ min: 1, max: 40 }),
    inPack: fc.integer({ min: 1, max: 40 }),
  })('no fewer than the cards need, and one pack if it holds them all', ({ cards, inPack }) => {
    fc.pre(inPack <= cards);
    const packs = expectedPacks({ cards, inPack });
    expect(packs).toBeGreaterThanOrEqual(cards / inPack - 1e-9);
    if (inPack === cards) expect(packs).toBeCloseTo(1, 12);
  });
});

describe('what a pack brings', () => {
  // The lottery of six of 49: the hypergeometric distribution, counted.
  test('six of 49', () => {
    const ways = [6_096_454, 5_775_588, 1_851_150, 246_820, 13_545, 258, 1];
    const brought = broughtBy(49, 6, 6);
    expect(brought).toHaveLength(7);
    for (const [found, chance] of brought.entries()) {
      expect(chance / ((ways[found] ?? 0) / 13_983_816)).toBeCloseTo(1, 12);
    }
  });

  test('half of four thousand cards at once: nothing overflows', () => {
    const brought = broughtBy(4000, 2000, 2000);
    expect(brought.reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 12);
    // As many are found as are not; the variance is 250, and so the middle of the bell 1/√(500 π).
    expect(brought[1001]).toBeCloseTo(brought[999] ?? 0, 12);
    expect(brought[1000]).toBeCloseTo(1 / Math.sqrt(Math.PI * 500), 4);
  });
});

describe('how far the packs vary', () => {
  // By inclusion and exclusion, and the sum of (1 - p)/p² of the geometric waits.
  test('a die: 38.99', () => {
    expect(varianceOfPacks({ cards: 6, inPack: 1 })).toBeCloseTo(38.99, 10);
  });

  test('in twos, as in 20,000 sets that are collected by chance', () => {
    const collecting = { cards: 12, inPack: 2 };
    const needed = openPacks(collecting, { collectors: 20_000, seed: 20270416 });
    const mean = expectedPacks(collecting);
    const spread = needed.reduce((sum, each) => sum + (each - mean) ** 2, 0) / needed.length;
    expect(varianceOfPacks(collecting) / spread).toBeCloseTo(1, 1);
  });
});

describe('packs that differ in how many they hold', () => {
  const openings = [
    { inPack: 4, chance: 0.25 },
    { inPack: 5, chance: 0.75 },
  ];

  test('between packs of four and packs of five', () => {
    const [four, mixed, five] = [
      expectedPacks({ cards: 84, inPack: 4 }),
      expectedPacks({ cards: 84, openings }),
      expectedPacks({ cards: 84, inPack: 5 }),
    ];
    expect(mixed).toBeGreaterThan(five);
    expect(mixed).toBeLessThan(four);
    expect(packsForChances({ cards: 84, openings }, [0.5])[0]).toBeLessThan(four);
  });

  test('alike in all is the same as one', () => {
    const halves = [
      { inPack: 2, chance: 0.5 },
      { inPack: 2, chance: 0.5 },
    ];
    expect(expectedPacks({ cards: 4, openings: halves })).toBeCloseTo(19 / 5, 12);
  });
});

describe('the packs for a chance', () => {
  // By inclusion and exclusion: P(T <= 12) = .437816 and P(T <= 13) = .513858 for a die.
  test.each([
    [6, 13],
    [10, 27],
    [50, 214],
    [365, 2287],
  ])('half of the collectors of %i cards, one by one, need %i', (cards, draws) => {
    expect(packsForChances({ cards, inPack: 1 }, [0.5])).toEqual([draws]);
  });

  test('a die: just where the published chances lie', () => {
    const chances = [0.437815, 0.437817, 0.513857, 0.513859];
    expect(packsForChances({ cards: 6, inPack: 1 }, chances)).toEqual([12, 13, 13, 14]);
  });

  // Stadje (1990): P(T <= 2, 3, 4) = .167 .528 .755, which is 1/6, .5278, .7546.
  test('four cards in twos: the published chances', () => {
    const chances = [0.1666, 0.1667, 0.5277, 0.5279, 0.7545, 0.7547];
    expect(packsForChances({ cards: 4, inPack: 2 }, chances)).toEqual([2, 3, 3, 4, 4, 5]);
  });

  test('as often as in 20,000 sets that are collected by chance', () => {
    const collecting = { cards: 16, inPack: 2, chance: 1 / 3 };
    const [median = 0, most = 0] = packsForChances(collecting, [0.5, 0.9]);
    const needed = openPacks(collecting, { collectors: 20_000, seed: 20270416 });
    const share = (packs: number): number =>
      needed.filter((each) => each <= packs).length / needed.length;
    // Four standard errors of a share of 20,000.
    const error = 4 * Math.sqrt(0.25 / needed.length);
    expect(share(median)).toBeGreaterThan(0.5 - error);
    expect(share(median - 1)).toBeLessThan(0.5 + error);
    expect(share(most)).toBeGreaterThan(0.9 - error);
    expect(share(most - 1)).toBeLessThan(0.9 + error);
    const mean = needed.reduce((sum, each) => sum + each, 0) / needed.length;
    const spread = Math.sqrt(
      needed.reduce((sum, each) => sum + (each - mean) ** 2, 0) / needed.length,
    );
    const expected = expectedPacks(collecting);
    expect(Math.abs(mean - expected)).toBeLessThan((4 * spread) / Math.sqrt(needed.length));
  });
});

describe('what is no set', () => {
  test.each([
    { cards: 0, inPack: 1 },
    { cards: 5, inPack: 0 },
    { cards: 5, inPack: 6 },
    { cards: 5, inPack: 1, chance: 0 },
    { cards: 5, inPack: 1, chance: 1.1 },
  ])('%o', (collecting) => {
    expect(() => expectedPacks(collecting)).toThrow(RangeError);
    expect(() => packsForChances(collecting, [0.5])).toThrow(RangeError);
  });

  test('chances that fall', () => {
    expect(() => packsForChances({ cards: 5, inPack: 1 }, [0.9, 0.5])).toThrow(RangeError);
    expect(() => packsForChances({ cards: 5, inPack: 1 }, [1])).toThrow(RangeError);
  });
});
