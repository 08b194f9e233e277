import fc from 'fast-check';

import type {
  Content,
  CorrectionsFile,
  Parallel,
  Product,
  RosterFile,
  Subset,
} from '../../schema/index.js';
import { made, words } from './generate-cards.js';
import {
  embargo,
  instant,
  level,
  name,
  phrase,
  present,
  sometimes,
  word,
} from './generate-words.js';
import type { PlainCard, PlainSales, PlainSet } from './plain.js';

type Hold = { spoiler?: string; embargo?: string[] };

/** A subset with its cards: `few` at least, one more at most. */
function subsetWith(
  base: Subset,
  few: number,
  hold: fc.Arbitrary<Hold>,
): fc.Arbitrary<{ subset: Subset; cards: PlainCard[] }> {
  return fc
    .record({
      hold,
      found: sometimes(fc.constantFrom('pack', 'box', 'redemption', 'event')),
      back: fc.option(fc.constantFrom('standard', 'ornate'), { nil: undefined }),
      coverage: sometimes(fc.constant({ from: '1/1', to: '3/40' })),
      order: sometimes(fc.constant('story' as const)),
      facts: sometimes(fc.constant<string[]>(['Berth'])),
      ships: sometimes(instant),
      cards: fc.array(made, { minLength: few, maxLength: few + 1 }),
    })
    .map(({ hold: own, cards, ...more }) => ({
      subset: { ...base, ...own, ...present(more) },
      cards: cards.map(({ front: own, bio }, index) => ({
        subset: base.id,
        id: `c${index}`,
        front: { ...own, number: numberIn(base, index) },
        bio,
      })),
    }));
}

function numberIn({ numbers }: Subset, index: number): string {
  if (numbers === 'none') return 'none';
  if ('codes' in numbers) return numbers.codes[index] ?? `ZZ-${index}`;
  return `${numbers.prefix ?? ''}${numbers.from + index}`;
}

export const openHold = fc.constant({});
export const anyHold = fc
  .record({ spoiler: fc.oneof(fc.constant(undefined), level), embargo })
  .map((hold) => present(hold));

const artist = fc
  .tuple(
    name,
    fc.constantFrom('asked', 'contracted', 'signed', 'signed', 'withdrawn'),
    sometimes(phrase),
  )
  .map(([who, state, remark]) => present({ name: who, state, remark }));
const roster: fc.Arbitrary<RosterFile> = fc
  .array(artist, { minLength: 1, maxLength: 4 })
  .map((artists) => ({ artists }));

const parallel: fc.Arbitrary<Parallel> = fc
  .record({
    id: fc.nat(999).map((n) => `finish-${n}`),
    title: word,
    of: fc.subarray(['crew', 'charts', 'loose'], { minLength: 1 }),
    run: sometimes(fc.integer({ min: 1, max: 99 }), 3),
    copies: sometimes(fc.integer({ min: 1, max: 99 })),
    tell: sometimes(phrase, 3),
    hold: fc.oneof(openHold, anyHold),
  })
  .map(({ hold, ...more }) => ({ ...present(more), ...hold }));

const content: fc.Arbitrary<Content> = fc
  .record({
    of: fc.constantFrom('crew', 'charts', 'codes', 'loose', 'sketches', 'secret', 'nothing'),
    odds: sometimes(fc.integer({ min: 1, max: 999 }), 3),
    each: sometimes(fc.integer({ min: 1, max: 999 })),
  })
  .map(present);

/** What is packed, the parallels of the set among it. */
function withFinishes(sold: Product, finishes: readonly Parallel[]): Product {
  if (sold.contents === undefined) return sold;
  const lines = finishes.map(({ id }, index) => ({ of: id, odds: 7 + index }));
  return { ...sold, contents: [...sold.contents, ...lines] };
}

const product: fc.Arbitrary<Product> = fc
  .record({
    id: fc.nat(999).map((n) => `product-${n}`),
    title: word,
    pack: sometimes(fc.integer({ min: 1, max: 12 }), 3),
    box: sometimes(fc.integer({ min: 1, max: 36 }), 3),
    case: sometimes(fc.integer({ min: 1, max: 12 })),
    cases: sometimes(fc.constantFrom('unset' as const, 20, 200)),
    contents: sometimes(fc.array(content, { minLength: 1, maxLength: 5 }), 3),
    hold: fc.oneof(openHold, anyHold),
  })
  .map(({ hold, ...more }) => ({ ...present(more), ...hold }));

const corrections: fc.Arbitrary<CorrectionsFile> = fc
  .array(
    fc
      .tuple(
        fc.constantFrom('crew/c0', 'crew/c1', 'crew/c2', 'charts/c0', 'codes/c0', 'crew/gone'),
        fc.constantFrom('2027-01-15', '2027-02-03'),
        phrase,
        phrase,
        sometimes(phrase),
      )
      .map(([card, at, was, now, note]) => present({ card, at, was, now, note })),
    { maxLength: 4 },
  )
  .map((entries) => ({ corrections: entries }));

function sales(least: number): fc.Arbitrary<PlainSales[]> {
  const front = fc.record({
    kind: fc.constantFrom<PlainSales['front']['kind'][]>('sell-sheet', 'web'),
    goes: instant,
    spoiler: level,
  });
  return fc
    .array(fc.record({ front, words }), { minLength: least, maxLength: 2 })
    .map((texts) => texts.map((text, index) => ({ id: `s${index}`, ...text })));
}

/** A set of some cards; if that is more than none, with a parallel and a sales text at least. */
export function setWith(id: string, hold: fc.Arbitrary<Hold>, few: number): fc.Arbitrary<PlainSet> {
  const subsets = fc.tuple(
    subsetWith(
      { id: 'crew', title: 'Crew', group: 'base', numbers: { from: 1, to: 48 } },
      few + 4,
      openHold,
    ),
    subsetWith(
      {
        id: 'charts',
        title: 'Charts',
        group: 'inserts',
        numbers: { prefix: 'LC-', from: 1, to: 8 },
      },
      few,
      fc.oneof(openHold, anyHold),
    ),
    subsetWith(
      { id: 'codes', title: 'Signatures', group: 'autographs', numbers: { codes: CODES } },
      few + 1,
      openHold,
    ),
    subsetWith(
      { id: 'loose', title: 'Loose', group: 'extras', numbers: 'none' },
      few + 1,
      openHold,
    ),
    subsetWith(
      {
        id: 'sketches',
        title: 'Sketches',
        group: 'sketches',
        numbers: 'none',
        roster: 'rosters/a.yaml',
      },
      0,
      fc.oneof(anyHold, fc.constantFrom<Hold[]>({ spoiler: 'spring' }, { embargo: ['undated'] })),
    ),
    subsetWith(
      { id: 'secret', title: 'Secret', group: 'extras', numbers: { from: 90, to: 99 } },
      few,
      fc.constantFrom({ spoiler: 'finale' }, { embargo: ['vanished'] }, { spoiler: 'spring' }),
    ),
  );
  return fc
    .record({
      parts: subsets,
      hold,
      title: word,
      short: fc.option(word, { nil: undefined }),
      stage: fc.constantFrom('planning', 'writing', 'locked'),
      street: fc.option(fc.oneof(instant, fc.record({ uk: instant, au: instant })), {
        nil: undefined,
      }),
      dates: sometimes(fc.constant({ solicit: '2026-12-01' })),
      totals: sometimes(fc.constant({ base: 84 })),
      parallels: fc.array(parallel, { minLength: Math.min(few, 1), maxLength: 4 }),
      products: fc.array(product, { minLength: Math.min(few, 1), maxLength: 3 }),
      rosterFile: roster,
      correctionsFile: fc.option(corrections, { nil: null }),
      texts: sales(Math.min(few, 1)),
    })
    .map(({ parts, hold: own, rosterFile, correctionsFile, texts, ...plan }) => ({
      id,
      plan: {
        id,
        spoiler: 'open',
        ...own,
        ...present(plan),
        products: plan.products.map((sold) => withFinishes(sold, plan.parallels)),
        subsets: parts.map(({ subset }) => subset),
      },
      cards: parts.flatMap(({ cards }) => cards),
      sales: texts,
      rosters: { 'rosters/a.yaml': rosterFile },
      corrections: correctionsFile,
      art: ['art/a0.svg', 'art/a1.svg'],
      drawn: {},
    }));
}

const CODES = ['SG-1', 'SG-9', 'SG-12', 'SG-30'];
