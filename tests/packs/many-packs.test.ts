import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';

import { packsForChances } from '../../pipeline/packs/index.js';
import { manyPacksForChances } from '../../pipeline/packs/many-packs.js';
import { broughtByOpenings, type Opening } from '../../pipeline/packs/openings.js';

const CHANCES = [0.05, 0.5, 0.9, 0.99];

function many(cards: number, openings: readonly Opening[]): readonly number[] {
  const brings = Array.from({ length: cards + 1 }, (_, short) =>
    broughtByOpenings(cards, openings, short),
  );
  return manyPacksForChances(brings, CHANCES);
}

describe('packs that are too many to be gone through one by one', () => {
  property.prop({
    cards: fc.integer({ min: 1, max: 30 }),
    inPack: fc.integer({ min: 1, max: 4 }),
    oneIn: fc.integer({ min: 1, max: 20 }),
  })('come to the same as one by one', ({ cards, inPack, oneIn }) => {
    const openings = [{ inPack: Math.min(inPack, cards), chance: 1 / oneIn }];
    expect(many(cards, openings)).toEqual(packsForChances({ cards, openings }, CHANCES));
  });

  /** Inclusion and exclusion over the cards that are still missing: fit for two or three cards. */
  function completeBy(packs: number, cards: number, chance: number): number {
    const missing = (some: number): number =>
      Math.exp(packs * Math.log1p((-some * chance) / cards));
    return cards === 2
      ? 1 - 2 * missing(1) + missing(2)
      : 1 - 3 * missing(1) + 3 * missing(2) - missing(3);
  }

  test.each([
    [2, 100_000],
    [3, 1_000_000],
  ])('%i cards at 1:%i, by inclusion and exclusion', (cards, oneIn) => {
    const openings = [{ inPack: 1, chance: 1 / oneIn }];
    const found = packsForChances({ cards, openings }, CHANCES);
    for (const [at, packs] of found.entries()) {
      const asked = CHANCES[at] ?? 0;
      expect(completeBy(packs, cards, 1 / oneIn)).toBeGreaterThanOrEqual(asked - 1e-9);
      expect(completeBy(packs - 1, cards, 1 / oneIn)).toBeLessThan(asked + 1e-9);
    }
  });
});
