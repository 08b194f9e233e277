import { describe, expect, test } from 'vitest';

import { bySubtraction, fraction, whole } from '../../pipeline/packs/index.js';

describe('odds that are got by subtraction', () => {
  const alone = { kinds: ['charts'], oneIn: 4, step: 'whole' } as const;

  test('of any insert less the open ones', () => {
    const any = { kinds: ['charts', 'letters'], oneIn: 2, step: 'whole' } as const;
    // At least 1/2 less 1/3, and less than 1 less 1/4.
    expect(bySubtraction(['letters'], [alone, any])).toEqual([
      {
        kind: 'letters',
        least: { over: 1n, under: 6n },
        most: { over: 3n, under: 4n },
        told: true,
      },
    ]);
  });

  test('not where rounding hides it', () => {
    const any = { kinds: ['charts', 'letters'], oneIn: 4, step: 'whole' } as const;
    expect(bySubtraction(['letters'], [alone, any])).toMatchObject([
      { told: false, least: whole(0), most: { over: 1n, under: 12n } },
    ]);
  });

  test('not where base cards are in the sum, whose number is never said', () => {
    const pack = { kinds: ['base', 'charts', 'letters'], oneIn: 2, step: 'whole' } as const;
    expect(bySubtraction(['letters'], [alone, pack])).toMatchObject([{ told: false }]);
  });

  test('through another sum', () => {
    const any = { kinds: ['charts', 'benches', 'letters'], oneIn: 2, step: 'whole' } as const;
    const charts = { kinds: ['charts'], oneIn: 9, step: 'whole' } as const;
    const both = { kinds: ['charts', 'benches'], oneIn: 5, step: 'whole' } as const;
    expect(bySubtraction(['letters'], [any, charts])).toMatchObject([{ told: false }]);
    // Benches are below 1/4 less 1/9, and charts below 1/8.
    expect(bySubtraction(['letters'], [any, charts, both])).toMatchObject([
      { told: true, least: fraction(17n, 72n) },
    ]);
  });

  test('nothing is known of what stands in no sum', () => {
    expect(bySubtraction(['letters'], [alone])).toEqual([
      { kind: 'letters', least: whole(0), most: null, told: false },
    ]);
  });
});
