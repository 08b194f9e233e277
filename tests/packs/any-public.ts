import { fc } from '@fast-check/vitest';

import {
  ODDS_STEPS,
  oddsToPublish,
  roundedOdds,
  whole,
  type OddsStep,
  type PublicKind,
} from '../../pipeline/packs/index.js';

/** Products, how many cases of each are made, and what goes in them: not all of it public. */
export interface Made {
  readonly step: OddsStep;
  readonly products: readonly { readonly packsABox: number; readonly cases: number }[];
  readonly kinds: readonly {
    /** Copies in each product. */
    readonly copies: readonly number[];
    readonly isRunPublic: boolean;
    /** The index of a product whose odds of it are not public. */
    readonly unsaid: number;
  }[];
}

/** Products of a few cases, and kinds of a few copies, so that everything can be tried. */
export function anyMade(products: number, mostKinds: number, largest: number): fc.Arbitrary<Made> {
  return fc.record({
    step: fc.constantFrom(...ODDS_STEPS),
    products: fc.array(
      fc.record({
        packsABox: fc.integer({ min: 1, max: largest }),
        cases: fc.integer({ min: 1, max: largest }),
      }),
      { minLength: products, maxLength: products },
    ),
    kinds: fc.array(
      fc.record({
        copies: fc.array(fc.integer({ min: 0, max: 6 }), {
          minLength: products,
          maxLength: products,
        }),
        isRunPublic: fc.oneof(
          { weight: 4, arbitrary: fc.constant(true) },
          { weight: 1, arbitrary: fc.constant(false) },
        ),
        unsaid: fc.oneof(
          { weight: 4, arbitrary: fc.constant(-1) },
          { weight: 1, arbitrary: fc.nat(products - 1) },
        ),
      }),
      { minLength: 1, maxLength: mostKinds },
    ),
  });
}

/** The N of 1:N that is said of so many copies in so many packs. */
export function said(copies: number, packs: number, step: OddsStep): number {
  return roundedOdds(oddsToPublish(whole(copies), packs)?.whole ?? 0, step);
}

/** The greatest number below N that is not rounded to it; 0 if all are. */
function aboveOf(oneIn: number, step: OddsStep): number {
  let above = oneIn - 1;
  while (above > 0 && roundedOdds(above, step) === oneIn) above -= 1;
  return above;
}

/** What the public reads of that. */
export function publicOf({ step, products, kinds }: Made): readonly PublicKind[] {
  return kinds.map(({ copies, isRunPublic, unsaid }) => ({
    copies: isRunPublic ? copies.reduce((sum, each) => sum + each, 0) : null,
    odds: copies.flatMap((own, at) => {
      if (own === 0 || at === unsaid) return [];
      const { packsABox = 1, cases = 1 } = products[at] ?? {};
      const oneIn = said(own, packsABox * cases, step);
      return [{ product: String(at), oneIn, above: aboveOf(oneIn, step) }];
    }),
    elsewhere: (copies[unsaid] ?? 0) > 0,
  }));
}

/**
 * By trying everything, from the meaning of odds alone: the numbers of cases of each product, up to
 * `most`, for which there are cases of the others and copies of each kind that would be said the same.
 */
export function possibleByTrying(made: Made, most: number): readonly (readonly number[])[] {
  const fitting = made.products.map((_, product) =>
    Array.from({ length: most }, (_cases, less) => less + 1).flatMap((cases) => {
      const copies = made.kinds.map((_kind, kind) => copiesThatFit(made, product, cases, kind));
      return copies.every((each) => each.length > 0) ? [{ cases, copies }] : [];
    }),
  );
  return fitting.map((own, product) => {
    const others = fitting.filter((_, at) => at !== product);
    return own.flatMap(({ cases, copies }) => (isCompleted(made, copies, others) ? [cases] : []));
  });
}

interface Fitting {
  readonly cases: number;
  /** Of each kind, all numbers of copies that fit. */
  readonly copies: readonly (readonly number[])[];
}

function isCompleted(
  made: Made,
  reached: readonly (readonly number[])[],
  [next, ...later]: readonly (readonly Fitting[])[],
): boolean {
  if (next === undefined) {
    return made.kinds.every(
      ({ copies, isRunPublic }, kind) => !isRunPublic || reached[kind]?.includes(sumOf(copies)),
    );
  }
  return next.some(({ copies }) => {
    const sums = made.kinds.map(({ isRunPublic, copies: all }, kind) => {
      if (!isRunPublic) return [0];
      const run = sumOf(all);
      const both = (reached[kind] ?? []).flatMap((a) =>
        (copies[kind] ?? []).flatMap((b) => (a + b <= run ? [a + b] : [])),
      );
      return [...new Set(both)];
    });
    return sums.every((each) => each.length > 0) && isCompleted(made, sums, later);
  });
}

/** The copies of a kind in so many cases of a product that would be said as it is. */
function copiesThatFit(
  { step, products, kinds }: Made,
  product: number,
  cases: number,
  kind: number,
): readonly number[] {
  const made = products[product];
  const own = kinds[kind];
  const copies = own?.copies[product] ?? 0;
  if (made === undefined || own === undefined || copies === 0) return [0];
  const run = sumOf(own.copies);
  if (own.unsaid === product) return Array.from({ length: run + 1 }, (_, at) => at);
  const oneIn = said(copies, made.packsABox * made.cases, step);
  const packs = made.packsABox * cases;
  const most = own.isRunPublic ? run : packs;
  return Array.from({ length: most }, (_, at) => at + 1).filter(
    (each) => said(each, packs, step) === oneIn,
  );
}

function sumOf(counts: readonly number[]): number {
  return counts.reduce((sum, each) => sum + each, 0);
}
