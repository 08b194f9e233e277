import { describe, expect, test } from 'vitest';

import {
  completing,
  drawsForChances,
  expectedDraws,
  expectedPacks,
  packAtRandom,
  packsForChances,
  workOut,
  type Likelihood,
  type PackedProduct,
  type ProductReport,
} from '../../pipeline/packs/index.js';
import { highWater } from './high-water.js';
import { randomFrom } from './open-packs.js';

const SEED = 20270416;
const COLLECTORS = 10_000;

/** Four standard errors of the mean, and of a share of so many. */
function errorsOf(needed: readonly number[]) {
  const mean = meanOf(needed);
  const variance = meanOf(needed.map((each) => (each - mean) ** 2));
  return { ofMean: 4 * Math.sqrt(variance / needed.length), ofShare: 2 / Math.sqrt(needed.length) };
}

function meanOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, each) => sum + each, 0) / numbers.length;
}

function shareWithin(needed: readonly number[], packs: number): number {
  return needed.filter((each) => each <= packs).length / needed.length;
}

describe('High Water, packed by chance with its thick cards and all its lines', () => {
  const { products } = workOut(highWater());
  const packed = products.map((product) => ({
    product,
    packs: packAtRandom(product, randomFrom(SEED)).packs,
  }));
  const lines = packed.flatMap(({ product, packs }) =>
    completing(product).flatMap((completion) => {
      if (completion.model !== 'packs' || completion.points === null) return [];
      const needed = collected(product, packs, completion.kind, completion.cards);
      return needed.length < 60 ? [] : [{ product: product.id, completion, needed }];
    }),
  );

  test('ten sets are completed often enough to judge', () => {
    expect(lines.map(({ product, completion }) => [product, completion.kind])).toEqual([
      ...['charts', 'benches', 'signals', 'signatures', 'relics', 'tarred', null].map((kind) => [
        'hobby',
        kind,
      ]),
      ...['charts', 'lamplit', null].map((kind) => ['retail', kind]),
    ]);
  });

  test.each(lines.map((line) => [line.product, line.completion.title, line] as const))(
    '%s, %s: as many packs as are expected',
    (_product, _title, { completion, needed }) => {
      if (completion.model !== 'packs') throw new Error('by packs');
      const { half = 0, ninety = 0, ninetyNine = 0 } = completion.points ?? {};
      const { ofMean, ofShare } = errorsOf(needed);
      expect(Math.abs(meanOf(needed) - completion.expected)).toBeLessThan(ofMean);
      expect(shareWithin(needed, half)).toBeGreaterThan(0.5 - ofShare);
      expect(shareWithin(needed, half - 1)).toBeLessThan(0.5 + ofShare);
      expect(shareWithin(needed, ninety)).toBeGreaterThan(0.9 - ofShare);
      expect(shareWithin(needed, ninety - 1)).toBeLessThan(0.9 + ofShare);
      expect(shareWithin(needed, ninetyNine)).toBeGreaterThan(0.99 - ofShare);
    },
  );
});

/** The packs that collectors open one after the other, each until the set is complete. */
function collected(
  product: ProductReport,
  packs: PackedProduct['packs'],
  kind: string | null,
  cards: number,
): readonly number[] {
  const line = product.lines.findIndex((each) => each.kind === kind);
  const ids = product.lines[line]?.cards.flatMap((group) => group.cards) ?? [];
  // A variation fills the place of its parent.
  const places = ids.map((id) => (id === 'cards/17b' ? 'cards/17' : id));
  const needed: number[] = [];
  let had = new Set<string>();
  let opened = 0;
  for (const pack of packs) {
    opened += 1;
    for (const each of pack) if (each.line === line) had.add(places[each.card] ?? '');
    if (had.size < cards) continue;
    needed.push(opened);
    opened = 0;
    had = new Set();
  }
  return needed;
}

describe('packs that bring four cards, or five', () => {
  const openings = [
    { inPack: 4, chance: 0.34 },
    { inPack: 5, chance: 0.66 },
  ];
  const random = randomFrom(SEED);
  const needed = Array.from({ length: COLLECTORS }, () => {
    const had = new Set<number>();
    let packs = 0;
    for (; had.size < 24; packs += 1) {
      const pack = new Set<number>();
      const size = random() < 0.34 ? 4 : 5;
      while (pack.size < size) pack.add(Math.floor(random() * 24));
      for (const card of pack) had.add(card);
    }
    return packs;
  });

  test('as many as are expected, and as often', () => {
    const collecting = { cards: 24, openings };
    const { ofMean, ofShare } = errorsOf(needed);
    expect(Math.abs(meanOf(needed) - expectedPacks(collecting))).toBeLessThan(ofMean);
    for (const [at, packs] of packsForChances(collecting, [0.5, 0.9, 0.99]).entries()) {
      const chance = [0.5, 0.9, 0.99][at] ?? 0;
      expect(shareWithin(needed, packs)).toBeGreaterThan(chance - ofShare);
      expect(shareWithin(needed, packs - 1)).toBeLessThan(chance + ofShare);
    }
  });
});

describe('cards that are drawn one by one', () => {
  // Ten of which one is five times as rare, and eight with one very rare.
  const shortPrint: readonly Likelihood[] = [
    { cards: 1, chance: 1 / 46 },
    { cards: 9, chance: 5 / 46 },
  ];
  const verySeldom: readonly Likelihood[] = [
    { cards: 7, chance: 0.99 / 7 },
    { cards: 1, chance: 0.01 },
  ];

  test.each([
    ['a short print', shortPrint],
    ['one in a hundred', verySeldom],
  ])('with %s: the expected draws, and the points', (_, likelihoods) => {
    const needed = drawn(likelihoods, 1);
    const { ofMean, ofShare } = errorsOf(needed);
    expect(Math.abs(meanOf(needed) - expectedDraws(likelihoods))).toBeLessThan(ofMean);
    for (const [at, draws] of drawsForChances(likelihoods, [0.5, 0.9, 0.99]).entries()) {
      const chance = [0.5, 0.9, 0.99][at] ?? 0;
      // Within two draws or a hundredth.
      const off = Math.max(2, draws / 100);
      expect(shareWithin(needed, draws + off)).toBeGreaterThan(chance - ofShare);
      expect(shareWithin(needed, draws - off)).toBeLessThan(chance + ofShare);
    }
  });

  test.each([2, 4])('%i collectors who trade everything that they have twice', (traders) => {
    const alike = [{ cards: 12, chance: 1 / 12 }];
    for (const likelihoods of [alike, shortPrint]) {
      const needed = drawn(likelihoods, traders);
      const { ofMean } = errorsOf(needed);
      const expected = expectedDraws(likelihoods, traders);
      expect(Math.abs(meanOf(needed) - expected)).toBeLessThan(ofMean);
    }
  });
});

/** How many draws it takes until so many copies of each card came, again and again. */
function drawn(likelihoods: readonly Likelihood[], copies: number): readonly number[] {
  const random = randomFrom(SEED);
  const chances = likelihoods.flatMap(({ cards, chance }) =>
    Array.from({ length: cards }, () => chance),
  );
  return Array.from({ length: COLLECTORS }, () => {
    const had = chances.map(() => 0);
    let missing = copies * chances.length;
    let draws = 0;
    for (; missing > 0; draws += 1) {
      let rest = random();
      const card = chances.findIndex((chance) => (rest -= chance) < 0);
      const at = card < 0 ? chances.length - 1 : card;
      const own = (had[at] ?? 0) + 1;
      had[at] = own;
      if (own <= copies) missing -= 1;
    }
    return draws;
  });
}
