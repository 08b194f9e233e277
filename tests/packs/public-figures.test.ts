import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';

import {
  bySubtraction,
  fraction,
  ODDS_STEPS,
  oddsToPublish,
  possibleCases,
  roundedOdds,
  whatOddsTell,
  whole,
  workOut,
  type PublicLine,
} from '../../pipeline/packs/index.js';
import { highWater } from './high-water.js';

const plan = highWater();
const [hobby] = workOut(plan).products;
const RANGE = { from: 1, to: 2000 };

describe('the cases that public figures leave possible', () => {
  test('High Water: the coarser the odds of its numbered cards, the more', () => {
    const tells = hobby === undefined ? [] : whatOddsTell(hobby, plan.kinds, RANGE);
    expect(tells.map(({ step, possible }) => [step, possible.from, possible.to])).toEqual([
      // 84 Keel at 1:686 are at most 57,624 packs, and above 57,540; a case has 288.
      ['whole', 200, 200],
      ['fine', 197, 210],
      ['round', 197, 210],
      // Brass-Nailed at 1:100 are above 50,400 packs, plates at 1:200 at most 67,200.
      ['coarse', 176, 233],
    ]);
    expect(tells[0]?.published).toEqual([
      { kind: 'varnished', oneIn: 9 },
      { kind: 'brass-nailed', oneIn: 58 },
      { kind: 'keel', oneIn: 686 },
      { kind: 'plates', oneIn: 172 },
    ]);
  });

  test('odds of what nobody can count tell nothing', () => {
    const lines: readonly PublicLine[] = [{ oneIn: 4, step: 'whole', copies: null }];
    expect(possibleCases({ packsABox: 24, boxesACase: 12 }, lines, RANGE)).toEqual({
      ...RANGE,
      count: 2000,
    });
  });

  test('figures that contradict each other leave none', () => {
    const lines: readonly PublicLine[] = [
      { oneIn: 4, step: 'whole', copies: 100 },
      { oneIn: 400, step: 'whole', copies: 100 },
    ];
    expect(possibleCases({ packsABox: 1, boxesACase: 1 }, lines, RANGE).count).toBe(0);
  });

  property.prop({
    packsABox: fc.integer({ min: 1, max: 40 }),
    boxesACase: fc.integer({ min: 1, max: 20 }),
    cases: fc.integer({ min: 1, max: 300 }),
    runs: fc.array(fc.integer({ min: 1, max: 2000 }), { minLength: 1, maxLength: 3 }),
    step: fc.constantFrom(...ODDS_STEPS),
  })('as many as by trying each', ({ packsABox, boxesACase, cases, runs, step }) => {
    const said = (copies: number, count: number): number => {
      const finest = oddsToPublish(whole(copies), count * packsABox * boxesACase)?.whole ?? 0;
      return roundedOdds(finest, step);
    };
    const lines = runs.map((copies) => ({ copies, step, oneIn: said(copies, cases) }));
    const tried = Array.from({ length: 400 }, (_, at) => at + 1).filter((count) =>
      lines.every(({ copies, oneIn }) => said(copies, count) === oneIn),
    );
    const found = possibleCases({ packsABox, boxesACase }, lines, { from: 1, to: 400 });
    expect(found).toEqual({ from: tried[0], to: tried.at(-1), count: tried.length });
    expect(tried).toContain(cases);
  });
});

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
