import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { placed, type Standing } from './held.js';
import { looking, plainContent } from './property.js';

describe('every content that is generated', () => {
  test('has what the law is tried on', () => {
    fc.assert(
      fc.property(plainContent, ({ property, sets }) => {
        expect(sets).toHaveLength(2);
        expect(sets.flatMap(({ cards }) => cards).length).toBeGreaterThanOrEqual(20);
        expect(property.levels).toHaveLength(4);
        expect(property.levels.filter(({ held }) => held === 'absent')).toHaveLength(1);
        const embargoes = property.embargoes ?? [];
        expect(embargoes.some(({ lift }) => lift === 'unset')).toBe(true);
        expect(embargoes.some(({ lift }) => lift !== 'unset')).toBe(true);
        expect(embargoes.some(({ held }) => held === 'absent')).toBe(true);
        expect(embargoes.some(({ announce }) => announce === false)).toBe(true);
        expect(sets.flatMap(({ plan }) => plan.parallels ?? []).length).toBeGreaterThan(0);
        expect(sets.flatMap(({ plan }) => plan.products ?? []).length).toBeGreaterThan(0);
        expect(sets.flatMap(({ sales }) => sales).length).toBeGreaterThan(0);
      }),
      { numRuns: 150 },
    );
  });

  test('is looked at while cards of every standing are in it, more often than not', () => {
    const cases = fc.sample(looking('public'), { numRuns: 100, seed: 20270604 });
    const standings: readonly Standing[] = ['open', 'placeholder', 'absent'];
    for (const wanted of standings) {
      const having = cases.filter(({ plain, eye }) =>
        placed(plain, eye).some(({ standing }) => standing === wanted),
      );
      expect(having.length, wanted).toBeGreaterThan(50);
    }
  });
});
