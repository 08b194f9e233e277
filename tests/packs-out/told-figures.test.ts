import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';

import { view, type View, type ViewCard, type ViewSet } from '../../pipeline/gate/index.js';
import { instantOf } from '../../pipeline/model/index.js';
import { SHARES, toldFigures, type ToldFigures } from '../../pipeline/out/packs/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';
import { demoFiles } from '../demo/copy.js';

const CARD: ViewCard = {
  state: 'shown',
  identity: null,
  number: null,
  letter: null,
  name: 'A card',
  level: 0,
  nameLevel: 0,
  opens: null,
  revealed: null,
  bio: [],
  bioHeld: false,
  facts: [],
  texts: [],
  image: null,
  signers: [],
  signersLevel: 0,
  credits: [],
  creditsLevel: 0,
  tell: null,
  shortPrint: null,
  run: null,
  layout: null,
  notes: null,
  review: null,
};

function cards(count: number, more: Partial<ViewCard> = {}): readonly ViewCard[] {
  return Array.from({ length: count }, (_, at) => ({ ...CARD, number: String(at + 1), ...more }));
}

type Subset = ViewSet['subsets'][number];

function subset(own: readonly ViewCard[], more: Partial<Subset> = {}): Subset {
  return {
    id: 'charts',
    title: 'Lake Charts',
    group: 'inserts',
    found: 'pack',
    listed: own.length,
    words: null,
    artists: [],
    cards: own,
    ...more,
  };
}

/** A set of one subset that is found in every so many packs of one product. */
function setOf(own: Subset, packs: number, more: Partial<ViewSet> = {}): ViewSet {
  const odds = [{ subset: own.id, parallel: null, title: own.title, packs }];
  return {
    id: 'high-water',
    title: 'High Water',
    short: 'High Water',
    street: [],
    listed: own.listed,
    products: [{ id: 'hobby', title: 'Hobby', pack: 6, box: 24, odds }],
    subsets: [own],
    parallels: [],
    corrections: [],
    sales: [],
    merge: null,
    ...more,
  };
}

type Completions = ToldFigures['products'][number]['complete'];

function completionsOf(set: ViewSet): Completions {
  return toldFigures(set).products.flatMap(({ complete }) => complete);
}

/** Of how many cards each subset is, as the figures count them. */
function countsOf(set: ViewSet): readonly number[] {
  return completionsOf(set).map((own) => own.cards);
}

/** Lake Charts in every fourth pack, worked out with exact fractions by inclusion and exclusion. */
const CHARTS = {
  subset: 'charts',
  title: 'Lake Charts',
  cards: 8,
  expected: 87,
  half: 80,
  ninety: 137,
  ninetyNine: 211,
  curve: [39, 46, 51, 55, 60, 64, 68, 71, 76, 80, 84, 89, 94, 100, 106, 114, 124, 137, 160, 211],
};

/**
 * The chance that all cards came in so many packs: de Moivre's sum over the cards that are missing,
 * where a pack brings a card of the subset once in `every`.
 */
function chanceOfAll(count: number, every: number, packs: number): number {
  let sum = 0;
  let ways = 1;
  for (let missing = 0; missing <= count; missing += 1) {
    const none = (1 - missing / (count * every)) ** packs;
    sum += (missing % 2 === 0 ? ways : -ways) * none;
    ways = (ways * (count - missing)) / (missing + 1);
  }
  return sum;
}

describe('what it takes to have all cards of a subset', () => {
  it('is worked out of the odds that are told', () => {
    expect(completionsOf(setOf(subset(cards(8)), 4))).toEqual([CHARTS]);
  });

  it('is one card a pack where each pack holds one, and the mean of 2 cards is 3 packs', () => {
    const [told] = completionsOf(setOf(subset(cards(2)), 1));
    expect(told).toMatchObject({ cards: 2, expected: 3, half: 2, ninety: 5, ninetyNine: 8 });
  });

  test.prop([fc.integer({ min: 2, max: 14 }), fc.integer({ min: 1, max: 40 })])(
    'is the first pack after which so many have them, by inclusion and exclusion',
    (count, every) => {
      const [told] = completionsOf(setOf(subset(cards(count)), every));
      if (told === undefined) throw new Error('nothing is told');
      expect(told.curve.length).toBe(SHARES.length);
      for (const [at, packs] of told.curve.entries()) {
        const share = SHARES[at] ?? NaN;
        expect(chanceOfAll(count, every, packs)).toBeGreaterThan(share - 1e-9);
        expect(chanceOfAll(count, every, packs - 1)).toBeLessThan(share + 1e-9);
      }
      expect(told.curve).toEqual(told.curve.toSorted((a, b) => a - b));
      expect([told.half, told.ninety, told.ninetyNine]).toEqual([
        told.curve[SHARES.indexOf(0.5)],
        told.curve[SHARES.indexOf(0.9)],
        told.curve[SHARES.indexOf(0.99)],
      ]);
      const harmonic = cards(count).reduce((sum, _, at) => sum + 1 / (at + 1), 0);
      expect(told.expected).toBe(Math.ceil(Number((every * count * harmonic).toFixed(6))));
    },
  );

  it('counts what is listed: cards to come, but none that is not issued, and no variation', () => {
    const held: ViewCard = { ...CARD, state: 'placeholder', number: null };
    const own = subset([
      ...cards(5),
      { ...CARD, number: '3', letter: 'b' },
      { ...CARD, state: 'placeholder', number: '4' },
      { ...CARD, state: 'placeholder', number: '6' },
      { ...CARD, state: 'not issued', number: '7' },
      held,
      held,
    ]);
    expect(countsOf(setOf(own, 4))).toEqual([8]);
  });

  it.each<[string, readonly ViewCard[], Partial<Subset>]>([
    ['of a single card', cards(1), {}],
    ['of cards that are not issued', cards(8, { state: 'not issued' }), {}],
    ['of signed cards', cards(8, { signers: [{ name: 'A', as: null, redemption: false }] }), {}],
    ['of a group of autographs', cards(8), { group: 'autographs' }],
    ['of a group of relics', cards(8), { group: 'relics' }],
    ['of a group of sketch cards', cards(8), { group: 'sketches' }],
    ['of a roster of artists', cards(8), { artists: ['A', 'B'] }],
    ['of what a redemption brings', cards(8), { found: 'redemption' }],
    ['where a run is told', [...cards(7), { ...CARD, number: '8', run: 50 }], {}],
    ['where a card is short', [...cards(7), { ...CARD, number: '8', shortPrint: 'SP' }], {}],
  ])('is not told %s', (_what, own, more) => {
    expect(completionsOf(setOf(subset(own, more), 4))).toEqual([]);
    expect(toldFigures(setOf(subset(own, more), 4)).products[0]?.found).toEqual([
      { title: 'Lake Charts', packs: 4 },
    ]);
  });

  it('is not told where it takes more packs than anybody opens', () => {
    // Two cards take three halves of twice the packs for one.
    expect(countsOf(setOf(subset(cards(2)), 6666))).toEqual([2]);
    expect(countsOf(setOf(subset(cards(2)), 6667))).toEqual([]);
  });
});

describe('what is found and what is made', () => {
  const parallel = { tell: null, revealed: null };
  const parallels: ViewSet['parallels'] = [
    { ...parallel, id: 'keel', title: 'Keel', of: ['crew', 'charts'], run: 1 },
    { ...parallel, id: 'tarred', title: 'Tarred', of: ['crew'], run: null },
    { ...parallel, id: 'varnished', title: 'Varnished', of: ['crew'], run: 84 },
    { ...parallel, id: 'bare', title: 'Bare', of: ['sketches'], run: 3 },
  ];
  const crew = subset(
    [
      ...cards(4),
      { ...CARD, number: '2', letter: 'b', run: 250 },
      { ...CARD, state: 'not issued', number: '5', run: 7 },
    ],
    { id: 'crew', title: 'Crew', group: 'base' },
  );
  const charts = subset([...cards(2, { run: 40 }), { ...CARD, run: 9 }]);
  const sketches = subset([], { id: 'sketches', title: 'Sketches', artists: ['A'] });
  const line = (of: Partial<Record<'subset' | 'parallel', string>>, title: string, packs: number) =>
    ({ subset: null, parallel: null, ...of, title, packs }) as const;
  const set = setOf(charts, 4, {
    subsets: [crew, charts, sketches],
    parallels,
    products: [
      {
        id: 'hobby',
        title: 'Hobby',
        pack: 6,
        box: 24,
        odds: [
          line({ subset: 'charts' }, 'Lake Charts', 9),
          line({ parallel: 'crew' }, 'A parallel', 686),
          line({ parallel: 'tarred' }, 'Tarred', 2),
          line({ subset: 'gone' }, 'Not listed', 9),
        ],
      },
      { id: 'tin', title: 'Tin', pack: null, box: null, odds: [] },
    ],
  });

  it('is in order, whole: nothing of a parallel, or of what is not listed, is completed', () => {
    expect(toldFigures(set)).toEqual({
      made: [
        { title: 'Crew, 2b', cards: 1, copies: 250 },
        { title: 'Varnished', cards: 4, copies: 84 },
        { title: 'Lake Charts', cards: 2, copies: 40 },
        { title: 'Lake Charts', cards: 1, copies: 9 },
        { title: 'Keel', cards: 7, copies: 1 },
      ],
      products: [
        {
          id: 'hobby',
          title: 'Hobby',
          found: [
            { title: 'Tarred', packs: 2 },
            { title: 'Lake Charts', packs: 9 },
            { title: 'Not listed', packs: 9 },
            { title: 'A parallel', packs: 686 },
          ],
          complete: [],
        },
        { id: 'tin', title: 'Tin', found: [], complete: [] },
      ],
    });
  });
});

describe('of the demo', () => {
  const released = select(readContent(memoryFolder(demoFiles({ art: false }))));

  function told(at: string): ToldFigures {
    if (released === null) throw new Error('the demo cannot be read');
    const seen: View | null = view(released, { kind: 'public', at: instantOf(at) });
    const set = seen?.sets.find(({ id }) => id === 'high-water');
    if (set === undefined) throw new Error('the set is not public then');
    return toldFigures(set);
  }

  it('the public is told of three subsets, and of nothing that is held or handmade', () => {
    const { made, products } = told('2027-04-16T09:00:00+01:00[Europe/London]');
    expect(made).toEqual([
      { title: 'Crew and Craft, 17b', cards: 1, copies: 250 },
      { title: 'Varnished', cards: 84, copies: 84 },
      { title: 'Brass-Nailed', cards: 84, copies: 12 },
      { title: 'Printing Plates', cards: 84, copies: 4 },
      { title: 'Keel', cards: 84, copies: 1 },
    ]);
    // Each as exact fractions have it.
    expect(
      products.map(({ title, complete }) => [
        title,
        complete.map((own) => [own.title, own.cards, own.expected, own.half, own.ninetyNine]),
      ]),
    ).toEqual([
      [
        'Hobby',
        [
          ['Lake Charts', 8, 87, 80, 211],
          ['Maker’s Benches', 12, 224, 207, 507],
          ['Night Signals', 16, 433, 405, 941],
        ],
      ],
      [
        'Retail',
        [
          ['Lake Charts', 8, 174, 159, 425],
          ['Maker’s Benches', 12, 447, 415, 1017],
          ['Night Signals', 16, 487, 455, 1059],
        ],
      ],
    ]);
    expect(products[1]?.found).toEqual([
      { title: 'Lamplit', packs: 1 },
      { title: 'Lake Charts', packs: 8 },
      { title: 'Night Signals', packs: 9 },
      { title: 'Maker’s Benches', packs: 12 },
    ]);
  });

  it('what is held is not found before it is in shops, nor what has its own day before that', () => {
    const titles = (at: string): readonly (readonly string[])[] =>
      told(at).products.map(({ found }) => found.map(({ title }) => title));
    const letters = 'Letters from the Drowned Street';
    const before = titles('2026-09-01T09:00:00+01:00[Europe/London]');
    const inShops = titles('2027-04-16T09:00:00+01:00[Europe/London]');
    const later = (own: readonly string[]) =>
      own.filter((title) => title !== letters && title !== 'Lamplit');
    expect(before).toEqual(inShops.map(later));
    expect(before).not.toEqual(inShops);
    expect(inShops.flat()).toContain(letters);
  });
});
