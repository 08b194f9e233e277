import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';

import {
  compareStated,
  fraction,
  ODDS_STEPS,
  oddsToPublish,
  roundedOdds,
  whole,
} from '../../pipeline/packs/index.js';

const counts = {
  copies: fc.integer({ min: 1, max: 1_000_000 }),
  packs: fc.integer({ min: 1, max: 100_000_000 }),
};

describe('odds that may be said', () => {
  // 7,056 copies in 57,600 packs are one in 8.16: 1:8 would be better than the truth.
  test('rounded up, and in rounder numbers', () => {
    expect(oddsToPublish(whole(7056), 57_600)).toEqual({
      whole: 9,
      fine: 9,
      round: 10,
      coarse: 10,
    });
    expect(oddsToPublish(whole(84), 57_600)).toEqual({
      whole: 686,
      fine: 720,
      round: 800,
      coarse: 1000,
    });
    expect(oddsToPublish(whole(14_400), 14_400)).toEqual({
      whole: 1,
      fine: 1,
      round: 1,
      coarse: 1,
    });
    expect(oddsToPublish(fraction(1n, 2n), 100)?.whole).toBe(200);
    expect(oddsToPublish(whole(0), 100)).toBeNull();
  });

  test.each([
    [13, 15, 15, 20],
    [97, 100, 100, 100],
    [961, 1000, 1000, 1000],
    [121, 150, 150, 200],
    [1001, 1200, 1200, 2000],
  ])('1:%i, finely 1:%i, roundly 1:%i, coarsely 1:%i', (oneIn, fine, round, coarse) => {
    expect(ODDS_STEPS.map((step) => roundedOdds(oneIn, step))).toEqual([
      oneIn,
      fine,
      round,
      coarse,
    ]);
  });

  property.prop(counts)(
    'never better than the truth, and each step no finer',
    ({ copies, packs }) => {
      const said = oddsToPublish(whole(copies), packs);
      const steps = ODDS_STEPS.map((step) => said?.[step] ?? 0);
      expect((steps[0] ?? 0) * copies).toBeGreaterThanOrEqual(packs);
      expect(((steps[0] ?? 0) - 1) * copies).toBeLessThan(packs);
      expect(steps).toEqual(steps.toSorted((a, b) => a - b));
      // A number that a step has is left as it is.
      for (const step of ODDS_STEPS)
        expect(roundedOdds(said?.[step] ?? 0, step)).toBe(said?.[step]);
    },
  );

  property.prop(counts)('what may be said is true, one better is not', ({ copies, packs }) => {
    const said = oddsToPublish(whole(copies), packs);
    for (const step of ODDS_STEPS) {
      expect(compareStated(said?.[step] ?? 0, whole(copies), packs).verdict).toBe('true');
    }
    if (said !== null && said.whole > 1) {
      expect(compareStated(said.whole - 1, whole(copies), packs).verdict).toBe('better');
    }
    const coarser = (said?.coarse ?? 0) + 1;
    expect(compareStated(coarser, whole(copies), packs).verdict).toBe('coarse');
  });

  test.each([0, -1, 1.5, NaN])('%f are no odds', (oneIn) => {
    expect(() => roundedOdds(oneIn, 'fine')).toThrow(RangeError);
  });
});
