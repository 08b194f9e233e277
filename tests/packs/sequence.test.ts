import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';

import {
  boxOfSequence,
  completing,
  fraction,
  whole,
  workOut,
  type BoxOfSequence,
  type Kind,
} from '../../pipeline/packs/index.js';
import { cardsOf, HOBBY, KINDS, smallPlan } from './small.js';

/** What is said of the sets of a product whose cards come in their order. */
function boxes(kinds: Partial<Record<keyof typeof KINDS, Kind>> = {}, cases = 3) {
  const products = [{ ...HOBBY, cases, collation: 'sequenced' as const }];
  const [product] = workOut(smallPlan({ kinds, plan: { products } })).products;
  const all = product === undefined ? [] : completing(product);
  return (kind: string | null) => all.find((each) => each.kind === kind);
}

describe('cards in their order', () => {
  test('a box says what it guarantees, and how many doubles', () => {
    const of = boxes();
    // 500 base cards in twelve boxes are at least 41 in each: ten different ones, four times.
    expect(of(null)).toEqual({
      kind: null,
      title: 'Base cards',
      cards: 10,
      model: 'sequenced',
      box: { cards: 41, different: 10, doubles: 31, sets: 4, boxesForSet: 1 },
    });
    expect(of('charts')).toMatchObject({
      box: { cards: 2, different: 2, doubles: 0, sets: 0, boxesForSet: 3 },
    });
    expect(of('blanks')).toBeUndefined();
  });

  test('where some come more often, for any order: those may stand together', () => {
    const cards = cardsOf('LC-', 6).map((card, at) => ({ ...card, weight: at === 0 ? 1 : 5 }));
    const of = boxes({ charts: { ...KINDS.charts, cards } }, 39);
    // 390 copies in 156 boxes: two in each, of an order of 26, which eleven boxes hold.
    expect(of('charts')).toMatchObject({
      box: { cards: 2, different: 1, doubles: 1, sets: 0, boxesForSet: 11 },
    });
  });

  test('a set that all boxes together may not hold', () => {
    const run = { ...KINDS.varnished, cards: cardsOf('V-', 40), run: 1 };
    expect(boxes({ varnished: run })('varnished')).toMatchObject({ box: { boxesForSet: 12 } });
    const cards = cardsOf('V-', 30).map((card, at) => ({ ...card, weight: at === 0 ? 1 : 3 }));
    const weighted = boxes({ charts: { ...KINDS.charts, cards: cards.slice(0, 14) } });
    expect(weighted('charts')).toMatchObject({ box: { boxesForSet: null } });
  });

  test('fewer than one a box', () => {
    expect(boxOfSequence([{ cards: 5, copies: whole(7) }], fraction(1n, 3n))).toEqual({
      cards: 0,
      different: 0,
      doubles: 0,
      sets: 0,
      boxesForSet: 15,
    });
    expect(boxOfSequence([{ cards: 5, copies: whole(7) }], whole(0)).boxesForSet).toBeNull();
  });
});

interface Run {
  /** How often each card stands in the order. */
  readonly times: readonly number[];
  readonly seed: number;
  readonly packs: number;
  readonly boxes: number;
  readonly start: number;
  readonly rounds: number;
}

const anyRun = (mostTimes: number): fc.Arbitrary<Run> =>
  fc.record({
    // One at least stands in the order once, or it would begin anew before.
    times: fc
      .array(fc.integer({ min: 1, max: mostTimes }), { maxLength: 7 })
      .map((times) => [...times, 1]),
    seed: fc.integer({ min: 1, max: 1_000_000 }),
    packs: fc.integer({ min: 1, max: 12 }),
    boxes: fc.integer({ min: 1, max: 60 }),
    start: fc.nat(1000),
    rounds: fc.integer({ min: 1, max: 12 }),
  });

/** All boxes of a run: its cards one after the other, spread over the packs as evenly as may be. */
function boxesOf({ times, seed, packs, boxes: count, start, rounds }: Run): number[][] {
  const order = fc.sample(
    fc.shuffledSubarray(
      times.flatMap((often, card) => Array.from({ length: often }, () => card)),
      { minLength: times.reduce((sum, each) => sum + each, 0) },
    ),
    { numRuns: 1, seed },
  )[0];
  const found: number[][] = Array.from({ length: count }, () => []);
  const copies = (order?.length ?? 0) * rounds;
  for (let at = 0; at < copies; at += 1) {
    const pack = Math.floor((at * packs * count) / copies);
    const card = order?.[(start + at) % order.length] ?? -1;
    found[Math.floor(pack / packs)]?.push(card);
  }
  return found;
}

function saidOf({ times, boxes: count, rounds }: Run): BoxOfSequence {
  const copies = times.reduce((sum, each) => sum + each, 0) * rounds;
  return boxOfSequence(
    times.map((often) => ({ cards: 1, copies: whole(often * rounds) })),
    fraction(BigInt(copies), BigInt(count)),
  );
}

describe('as in boxes that are filled card by card', () => {
  property.prop({ run: anyRun(4) })('every box holds what is said of it', ({ run }) => {
    const said = saidOf(run);
    for (const box of boxesOf(run)) {
      const more = box.length - said.cards;
      expect([0, 1]).toContain(more);
      const different = new Set(box).size;
      expect(different).toBeGreaterThanOrEqual(said.different);
      expect(box.length - different).toBeLessThanOrEqual(said.doubles + more);
      for (const card of run.times.keys()) {
        expect(box.filter((each) => each === card).length).toBeGreaterThanOrEqual(said.sets);
      }
    }
  });

  property.prop({ run: anyRun(4) })('so many boxes in a row hold the whole set', ({ run }) => {
    const all = boxesOf(run);
    const { boxesForSet } = saidOf(run);
    if (boxesForSet === null || boxesForSet > all.length) return;
    for (let from = 0; from + boxesForSet <= all.length; from += 1) {
      const held = new Set(all.slice(from, from + boxesForSet).flat());
      expect(held.size).toBe(run.times.length);
    }
  });

  property.prop({ run: anyRun(1) })('and no more, where all come equally often', ({ run }) => {
    const all = boxesOf(run);
    const said = saidOf(run);
    const smallest = all.filter(({ length }) => length === said.cards);
    expect(smallest.length).toBeGreaterThan(0);
    for (const box of smallest) {
      expect(new Set(box).size).toBe(said.different);
      expect(box.length - new Set(box).size).toBe(said.doubles);
    }
  });

  // 16 copies of two cards, one three times in four: a box of three may hold the one alone.
  test('where one comes more often, there is an order in which a box holds no more', () => {
    const run = { times: [3, 1], seed: 1, packs: 1, boxes: 4, start: 0, rounds: 3 };
    expect(saidOf(run)).toMatchObject({ cards: 3, different: 1, doubles: 2 });
    const fewest = Array.from({ length: 20 }, (_, at) => boxesOf({ ...run, seed: at + 1 }))
      .flat()
      .map((box) => new Set(box).size);
    expect(Math.min(...fewest)).toBe(1);
  });
});
