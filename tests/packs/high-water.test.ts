import { describe, expect, test } from 'vitest';

import { fraction, whole, workOut } from '../../pipeline/packs/index.js';
import { FIGURES, highWater, type Figures } from './high-water.js';

const report = workOut(highWater());
const [hobby, retail] = report.products;

describe('the print run of High Water', () => {
  test('adds up, without a problem', () => {
    expect(report.problems).toEqual([]);
    expect(report.totals).toEqual({
      cases: 290,
      boxes: 3840,
      packs: 72_000,
      places: 432_000,
      taken: 96_000,
      base: 336_000,
      cards: 428_400,
    });
  });

  test('hobby and retail: packs, places, and what is taken', () => {
    expect(hobby).toMatchObject({ packs: 57_600, places: 345_600, taken: 77_000, left: 268_600 });
    expect(retail).toMatchObject({ packs: 14_400, places: 86_400, taken: 19_000, left: 67_400 });
  });

  test('what each line comes to', () => {
    const said = (product: typeof hobby) =>
      product?.lines.map(({ kind, copies, places, oneIn }) => [kind, copies, places, oneIn]);
    expect(said(hobby)).toEqual([
      ['charts', 14_400, 14_400, 4],
      ['benches', 9600, 9600, 6],
      ['signals', 7200, 7200, 8],
      ['letters', 600, 600, 96],
      ['signatures', 2400, 2400, 24],
      ['relics', 1200, 4800, 48],
      ['sketches', 200, 200, 288],
      ['tarred', 29_316, 29_316, 2],
      ['varnished', 7056, 7056, 9],
      ['brass-nailed', 1008, 1008, 58],
      ['keel', 84, 84, 686],
      ['plates', 336, 336, 172],
      [null, 268_600, 268_600, 1],
    ]);
    expect(said(retail)).toEqual([
      ['charts', 1800, 1800, 8],
      ['benches', 1200, 1200, 12],
      ['signals', 1600, 1600, 9],
      ['lamplit', 14_400, 14_400, 1],
      [null, 67_400, 67_400, 1],
    ]);
  });

  test('exactly 4,000 of each base card, of number 17 3,750 and 250 of 17 b', () => {
    const made = report.kinds
      .filter(({ base }) => base)
      .flatMap(({ cards }) => cards.map((group) => [group.cards.length, group.made]));
    expect(made).toEqual([
      [47, whole(4000)],
      [1, whole(3750)],
      [1, whole(250)],
      [35, whole(4000)],
      [1, whole(4000)],
    ]);
  });

  test('what is made of each other card', () => {
    const made = report.kinds
      .filter(({ base }) => !base)
      .flatMap(({ kind, cards }) => cards.map((group) => [kind, Number(group.made.over)]));
    expect(made).toEqual([
      ['charts', 2025],
      ['benches', 900],
      ['signals', 550],
      ['letters', 100],
      ['signatures', 200],
      ['relics', 240],
      ['sketches', 10],
      ['tarred', 349],
      ['varnished', 84],
      ['brass-nailed', 12],
      ['keel', 1],
      ['plates', 4],
      ['lamplit', 300],
    ]);
  });

  test('true odds are exact: of a line, of a card in a product, and over all', () => {
    expect(hobby?.lines[8]?.packsForOne).toEqual(fraction(57_600n, 7056n));
    expect(hobby?.lines[0]?.cards[0]).toMatchObject({
      copies: whole(1800),
      packsForOne: whole(32),
    });
    const charts = report.kinds.find(({ kind }) => kind === 'charts');
    expect(charts?.packsForOne).toEqual(fraction(72_000n, 16_200n));
    expect(charts?.cards[0]?.packsForOne).toEqual(fraction(72_000n, 2025n));
    // Base cards are shared by the products: of each, on average, 4,000 by what is left in them.
    const seventeenB = hobby?.lines.at(-1)?.cards[2];
    expect(seventeenB?.cards).toEqual(['cards/17b']);
    expect(seventeenB?.copies).toEqual(fraction(250n * 268_600n, 336_000n));
  });
});

const CHANGES = Object.entries(FIGURES).flatMap(([figure, value]) => [
  [figure, value, value + 1] as const,
  [figure, value, value - 1] as const,
]);

describe('any figure that is changed by one is found', () => {
  test.each(CHANGES)('%s from %i to %i', (figure, _, changed) => {
    const figures: Figures = { ...FIGURES, [figure]: changed };
    const { problems } = workOut(highWater(figures));
    expect(problems.filter(({ severity }) => severity === 'error')).not.toEqual([]);
    for (const { message } of problems) expect(message).toMatch(/^\P{Ll}.*\.$/u);
  });
});
