import { describe, expect, test } from 'vitest';

import {
  packAtRandom,
  workOut,
  type PackedProduct,
  type ProductReport,
} from '../../pipeline/packs/index.js';
import { anyPlan } from './any-plan.js';
import { randomFrom } from './open-packs.js';
import { HOBBY, KINDS, smallPlan } from './small.js';

const PRODUCTS = 1000;

function firstProduct(plan: Parameters<typeof workOut>[0]): ProductReport {
  const [product] = workOut(plan).products;
  if (product === undefined) throw new Error('no product');
  return product;
}

describe('a product that is packed by chance', () => {
  test('every place is filled, every line is packed, boxes have what they are promised', () => {
    const random = randomFrom(4);
    for (let made = 0; made < 100; made += 1) {
      const product = firstProduct(anyPlan(random));
      const { packs, alike } = packAtRandom(product, random);
      expect(alike).toBe(0);
      for (const pack of packs) {
        const places = pack.map(({ line }) => product.lines[line]?.placesEach ?? 0);
        expect(places.reduce((sum, each) => sum + each, 0)).toBe(product.cardsAPack);
        const cards = pack
          .filter(({ card }) => card >= 0)
          .map(({ line, card }) => `${String(line)} ${String(card)}`);
        expect(new Set(cards).size).toBe(cards.length);
      }
      expect(product.lines.map((_, line) => packedOf(packs, line))).toEqual(
        product.lines.map(({ copies }) => copies),
      );
      for (let box = 0; box < product.boxes; box += 1) {
        const own = packs.slice(box * product.packsABox, (box + 1) * product.packsABox);
        expect(packedOf(own, 0)).toBe(1);
      }
    }
  });

  /*
   * Of K copies that come anywhere, the first half of the packs has a hypergeometric number: for one
   * place among T its variance is K/4 (T - K)/(T - 1), and for thick cards no more than K/4.
   */
  test('1,000 products: the odds in half of the packs are the exact ones, within four standard errors', () => {
    const random = randomFrom(20270416);
    let odds = 0;
    let beyond = 0;
    const squares: number[] = [];
    for (let made = 0; made < PRODUCTS; made += 1) {
      const product = firstProduct(anyPlan(random));
      const half = packAtRandom(product, random).packs.slice(0, product.packs / 2);
      const free = placesForChance(product);
      for (const [at, line] of product.lines.entries()) {
        const seen = packedOf(half, at);
        const apart = Math.abs(seen / half.length - line.copies / product.packs);
        const among = line.placesEach > 1 || line.even !== null ? Infinity : free;
        const left = among === Infinity ? 1 : (among - line.copies) / (among - 1);
        const error = Math.sqrt((line.copies / 4) * left) / half.length;
        odds += 1;
        if (apart > 4 * error + 1e-12) beyond += 1;
        const judged = among !== Infinity && line.what !== 'base' && line.copies > 4;
        if (judged && cardsOf(line) >= 8) squares.push((apart / error) ** 2);
      }
    }
    expect(odds).toBe(10 * PRODUCTS);
    expect(beyond).toBeLessThanOrEqual(5);
    // Neither more nor less even than chance: the mean of the squared errors is 1. Lines of few cards
    // are left out, since no two alike in a pack spreads them, and
    // base cards, which fill what thick cards leave.
    const mean = squares.reduce((sum, each) => sum + each, 0) / squares.length;
    expect(squares.length).toBeGreaterThan(1000);
    expect(Math.abs(mean - 1)).toBeLessThan(0.1);
  });

  test('the same seed gives the same packs, another gives others', () => {
    const product = firstProduct(smallPlan());
    expect(packAtRandom(product, randomFrom(7))).toEqual(packAtRandom(product, randomFrom(7)));
    expect(packAtRandom(product, randomFrom(7))).not.toEqual(packAtRandom(product, randomFrom(8)));
  });

  test('two alike where it cannot be helped, and they are counted', () => {
    const base = { ...KINDS.base, cards: KINDS.base.cards.slice(0, 4) };
    const plan = { products: [HOBBY], kinds: [base], entries: [] };
    expect(packAtRandom(firstProduct(plan), randomFrom(7)).alike).toBe(HOBBY.packsABox * 12);
  });

  test('what does not fit is not packed', () => {
    const relics = {
      product: 'hobby',
      kind: 'relics',
      amount: { by: 'copies', copies: 121 },
    } as const;
    const product = firstProduct(smallPlan({ plan: { entries: [relics] } }));
    expect(() => packAtRandom(product, randomFrom(7))).toThrow(
      'no pack has room for one more of Timber Relics',
    );
    const over = firstProduct(
      smallPlan({ plan: { entries: [{ ...relics, amount: { by: 'copies', copies: 151 } }] } }),
    );
    expect(() => packAtRandom(over, randomFrom(7))).toThrow(
      'lines take more places than there are',
    );
  });
});

function packedOf(packs: PackedProduct['packs'], line: number): number {
  return packs.reduce((sum, pack) => sum + pack.filter((card) => card.line === line).length, 0);
}

function cardsOf({ cards }: ProductReport['lines'][number]): number {
  return cards.reduce((sum, group) => sum + group.cards.length, 0);
}

/** Places that thick cards and lines for each box or case leave. */
function placesForChance({ places, lines }: ProductReport): number {
  return lines
    .filter(({ placesEach, even }) => placesEach > 1 || even !== null)
    .reduce((sum, line) => sum - line.places, places);
}
