import { describe, expect, test } from 'vitest';

import {
  drawsForChances,
  expectedDraws,
  expectedPacks,
  packsForChances,
} from '../../pipeline/packs/index.js';

const equal = (cards: number) => [{ cards, chance: 1 / cards }];

describe('cards that are drawn one by one', () => {
  // Von Schelling, American Mathematical Monthly 61 (1954): by inclusion and exclusion.
  test('of chances 1/2, 1/4, 1/4: 19 thirds', () => {
    const likelihoods = [
      { cards: 1, chance: 1 / 2 },
      { cards: 2, chance: 1 / 4 },
    ];
    expect(expectedDraws(likelihoods)).toBeCloseTo(19 / 3, 9);
  });

  test.each([1, 2, 6, 52, 365])('%i alike: as the recursion has it', (cards) => {
    expect(expectedDraws(equal(cards))).toBeCloseTo(expectedPacks({ cards, inPack: 1 }), 6);
  });

  test('one much rarer card sets the pace', () => {
    const likelihoods = [
      { cards: 99, chance: 0.999 / 99 },
      { cards: 1, chance: 0.001 },
    ];
    // The others take 518 or so, and after them the rare one is missing with a chance of e^-0.518:
    // 518 + 1000 e^-0.518 is 1114, and a little more since 518 varies.
    const others = expectedPacks({ cards: 99, inPack: 1, chance: 0.999 });
    const least = others + 1000 * Math.exp(-others / 1000);
    const draws = expectedDraws(likelihoods);
    expect(draws).toBeGreaterThan(least);
    expect(draws).toBeLessThan(least * 1.01);
  });
});

describe('collectors who trade', () => {
  // The integral of Newman and Shepp (1960) for 682 cards: what each saves, computed anew.
  test.each([
    [2, 33.5],
    [5, 57.7],
    [10, 67.7],
  ])('%i of them save %f %% each', (people, percent) => {
    const alone = expectedDraws(equal(682));
    const each = expectedDraws(equal(682), people) / people;
    expect((1 - each / alone) * 100).toBeCloseTo(percent, 1);
  });

  // An oracle of its own: the sum over what is still missing.
  test('two of each of two, as found by listing all sequences', () => {
    expect(expectedDraws(equal(2), 2)).toBeCloseTo(listed(), 9);
  });
});

/** The expected flips until two heads and two tails, by summing over what is still missing. */
function listed(): number {
  const expected = (heads: number, tails: number): number => {
    if (heads === 0 && tails === 0) return 0;
    if (heads === 0) return 2 * tails;
    if (tails === 0) return 2 * heads;
    return 1 + (expected(heads - 1, tails) + expected(heads, tails - 1)) / 2;
  };
  return expected(2, 2);
}

describe('draws for a chance', () => {
  test.each([10, 50, 365])(
    '%i alike: within two draws or a hundredth of the recursion',
    (cards) => {
      const chances = [0.5, 0.9, 0.99];
      const exact = packsForChances({ cards, inPack: 1 }, chances);
      for (const [at, draws] of drawsForChances(equal(cards), chances).entries()) {
        expect(Math.abs(draws - (exact[at] ?? 0))).toBeLessThan(Math.max(2, draws / 100));
      }
    },
  );

  test('no chance', () => {
    expect(() => drawsForChances(equal(3), [1])).toThrow(RangeError);
    expect(() => drawsForChances([], [0.5])).toThrow(RangeError);
  });
});

describe('what is no draw', () => {
  test.each([
    ['chances that do not add up', [{ cards: 2, chance: 0.4 }], 1],
    [
      'a chance of 0',
      [
        { cards: 1, chance: 1 },
        { cards: 1, chance: 0 },
      ],
      1,
    ],
    ['no card', [{ cards: 0, chance: 1 }], 1],
    ['no copy', [{ cards: 1, chance: 1 }], 0],
    ['nothing at all', [], 1],
  ])('%s', (_, likelihoods, copies) => {
    expect(() => expectedDraws(likelihoods, copies)).toThrow(RangeError);
  });
});
