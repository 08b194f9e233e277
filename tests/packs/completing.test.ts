import { describe, expect, test } from 'vitest';

import {
  completing,
  packAtRandom,
  workOut,
  type Completion,
  type ProductReport,
} from '../../pipeline/packs/index.js';
import { highWater } from './high-water.js';
import { randomFrom } from './open-packs.js';
import { cardsOf, HOBBY, KINDS, smallPlan } from './small.js';

const [hobby] = workOut(highWater()).products;
const completions = hobby === undefined ? [] : completing(hobby);
const of = (all: readonly Completion[], kind: string | null) =>
  all.find((each) => each.kind === kind);

/** A product of base cards alone. */
function baseAlone(cards: number, cardsAPack: number, cases: number): ProductReport | undefined {
  return workOut({
    products: [{ ...HOBBY, cardsAPack, cases }],
    kinds: [{ ...KINDS.base, cards: cardsOf('', cards) }],
    entries: [],
  }).products[0];
}

describe('by chance', () => {
  // Computed from the closed forms: external checks of the pack-out probabilities.
  test('84 base cards in packs of five: 82.60 packs', () => {
    const product = baseAlone(84, 5, 84);
    const [base] = product === undefined ? [] : completing(product);
    expect(base).toMatchObject({ kind: null, cards: 84, model: 'packs' });
    expect(base).toHaveProperty('expected', expect.closeTo(82.6, 2));
  });

  test('an insert set of eight in every fourth pack takes four times 8 H(8)', () => {
    const charts = of(completions, 'charts');
    const harmonic = [1, 2, 3, 4, 5, 6, 7, 8].reduce((sum, each) => sum + 8 / each, 0);
    expect(charts).toMatchObject({ cards: 8, model: 'packs' });
    expect(charts).toHaveProperty('expected', expect.closeTo(4 * harmonic, 9));
  });

  test('a one-of-one set takes more packs than there are: no points are given', () => {
    expect(of(completions, 'keel')).toMatchObject({ cards: 84, model: 'packs', points: null });
  });

  test('a variation fills the place of its parent: 84 base cards, alike in number', () => {
    const base = of(completions, null);
    expect(base).toMatchObject({ cards: 84, model: 'packs' });
    // 4.66 of them in a pack, on average.
    expect(base).toHaveProperty('expected', expect.closeTo(89, 0));
  });

  test('a short print is drawn one by one, and takes longer', () => {
    const charts = {
      ...KINDS.charts,
      cards: cardsOf('LC-', 6).map((card, at) => ({ ...card, weight: at === 0 ? 1 : 5 })),
    };
    const plan = smallPlan({
      kinds: { charts },
      plan: { products: [{ ...HOBBY, cases: 39 }] },
    });
    const [product] = workOut(plan).products;
    const found = product === undefined ? undefined : of(completing(product), 'charts');
    expect(found).toMatchObject({ cards: 6, model: 'draws' });
    const alike = 4 * [1, 2, 3, 4, 5, 6].reduce((sum, each) => sum + 6 / each, 0);
    expect(found).toHaveProperty('expected', expect.any(Number));
    expect(found?.model === 'draws' && found.expected > 1.5 * alike).toBe(true);
  });

  test('two who trade need fewer packs each', () => {
    const both = hobby === undefined ? [] : completing(hobby, 2);
    for (const each of both) {
      const alone = of(completions, each.kind);
      if (each.model !== 'trading' || alone === undefined || !('expected' in alone)) {
        throw new Error('by chance');
      }
      expect(each.points).toBeNull();
      if (each.cards > 4) expect(each.expected).toBeLessThan(alone.expected);
    }
    expect(both).toHaveLength(completions.length);
  });

  test('as in a product that is packed by chance', () => {
    const product = baseAlone(30, 5, 300);
    const [base] = product === undefined ? [] : completing(product);
    if (product === undefined || base?.model !== 'packs') throw new Error('by chance');
    const half = base.points?.half ?? 0;
    const { packs } = packAtRandom(product, randomFrom(20270416));
    const needed: number[] = [];
    let had = new Set<number>();
    let opened = 0;
    for (const pack of packs) {
      opened += 1;
      for (const { card } of pack) had.add(card);
      if (had.size < 30) continue;
      needed.push(opened);
      opened = 0;
      had = new Set();
    }
    const mean = needed.reduce((sum, each) => sum + each, 0) / needed.length;
    const spread = Math.sqrt(
      needed.reduce((sum, each) => sum + (each - mean) ** 2, 0) / needed.length,
    );
    expect(needed.length).toBeGreaterThan(400);
    expect(Math.abs(mean - base.expected)).toBeLessThan((4 * spread) / Math.sqrt(needed.length));
    const share = needed.filter((each) => each <= half).length / needed.length;
    expect(Math.abs(share - 0.5)).toBeLessThan(0.05 + 4 * Math.sqrt(0.25 / needed.length));
  });
});
