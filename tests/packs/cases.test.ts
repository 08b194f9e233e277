import { describe, expect, test } from 'vitest';

import { caseCounts, fraction, whole, workOut } from '../../pipeline/packs/index.js';
import { FIGURES, highWater } from './high-water.js';
import { ENTRIES, HOBBY, KINDS, RETAIL, smallPlan } from './small.js';

const unset = smallPlan({ plan: { products: [{ ...HOBBY, cases: 'unset' }] } });

describe('what each number of cases would give', () => {
  test('a case more is 40 packs, ten charts and four signatures more', () => {
    expect(caseCounts(unset, 'hobby', { from: 1, to: 4 })).toEqual([
      { cases: 1, divides: false, left: 128, base: 128, eachBase: fraction(64n, 5n) },
      { cases: 2, divides: false, left: 314, base: 314, eachBase: fraction(157n, 5n) },
      { cases: 3, divides: true, left: 500, base: 500, eachBase: whole(50) },
      { cases: 4, divides: false, left: 686, base: 686, eachBase: fraction(343n, 5n) },
    ]);
  });

  test('those that divide are those of which the whole report has nothing to say', () => {
    const range = { from: 1, to: 120 };
    const by = caseCounts(unset, 'hobby', range);
    const divide = by.filter(({ divides }) => divides).map(({ cases }) => cases);
    const fine = by.map(({ cases }) => cases).filter((cases) => isFine(cases));
    expect(divide).toEqual(fine);
    expect(divide).toEqual([3, 18, 33, 48, 63, 78, 93, 108]);
  });

  test('one that is too few for what is put in it', () => {
    const plan = {
      ...unset,
      entries: [{ ...ENTRIES.relics, amount: { by: 'copies', copies: 100 } as const }],
    };
    const [first] = caseCounts(plan, 'hobby', { from: 1, to: 1 });
    expect(first).toMatchObject({ left: -200, divides: false });
  });

  test('beside another product that is made in a known number', () => {
    const counts = caseCounts(highWater(), 'hobby', { from: 150, to: 250 });
    expect(counts.find(({ cases }) => cases === FIGURES.hobbyCases)).toEqual({
      cases: 200,
      divides: true,
      left: 268_600,
      base: 336_000,
      eachBase: whole(4000),
    });
  });

  test('base cards are not known while another product is unset', () => {
    const plan = {
      ...unset,
      products: [...unset.products, { ...RETAIL, cases: 'unset' } as const],
    };
    expect(caseCounts(plan, 'hobby', { from: 3, to: 3 })).toEqual([
      { cases: 3, divides: true, left: 500, base: null, eachBase: null },
    ]);
  });

  test('nothing of figures that are no counts', () => {
    const kinds = [KINDS.base, { ...KINDS.charts, places: -1 }];
    expect(caseCounts({ ...unset, kinds }, 'hobby', { from: 1, to: 2 })).toEqual([]);
  });

  test.each([
    { from: 0, to: 5 },
    { from: 5, to: 4 },
    { from: 1.5, to: 4 },
    { from: 1, to: 200_000 },
  ])('no range: %o', (range) => {
    expect(() => caseCounts(unset, 'hobby', range)).toThrow(RangeError);
  });
});

function isFine(cases: number): boolean {
  const { problems } = workOut(smallPlan({ plan: { products: [{ ...HOBBY, cases }] } }));
  return problems.every(({ severity }) => severity !== 'error');
}
