import {
  asRead,
  ODDS_STEPS,
  possibleCases,
  roundedOdds,
  type Product,
  type PublicKind,
} from '../../packs/index.js';

/** A product of which it is known how many cases are made. */
export type Made = Product & { readonly cases: number };

/** Copies that odds ask for in the packs that are made; `most` is null where nothing bounds them. */
export interface Asked {
  readonly least: number;
  readonly most: number | null;
}

/** Copies that the odds of a kind ask for in all products together. */
export function askedOf(kind: PublicKind, products: readonly Made[]): Asked {
  return askedIn(kind, products).reduce<Asked>(
    (sum, { least, most }) => ({
      least: sum.least + least,
      most: sum.most === null || most === null ? null : sum.most + most,
    }),
    { least: 0, most: 0 },
  );
}

/** By 1:N, whose truth is above B, the copies x in p packs are such that x × B < p ≤ x × N. */
function askedIn({ odds }: PublicKind, products: readonly Made[]): readonly Asked[] {
  return odds.flatMap(({ product, oneIn, above }): readonly Asked[] => {
    const made = products.find(({ id }) => id === product);
    if (made === undefined) return [];
    const packs = made.cases * made.boxesACase * made.packsABox;
    const most = above === 0 ? null : Math.ceil(packs / above) - 1;
    return [{ least: Math.ceil(packs / oneIn), most }];
  });
}

/** Whether the copies that are public of a kind may be in the packs that are made. */
export function fits(kind: PublicKind, products: readonly Made[]): boolean {
  const { copies, odds, elsewhere } = kind;
  if (askedIn(kind, products).some(({ least, most }) => most !== null && most < least)) {
    return false;
  }
  if (copies === null) return true;
  const { least, most } = askedOf(kind, products);
  const isElsewhere = elsewhere || odds.some(({ product }) => !isAmong(product, products));
  return copies >= least && (isElsewhere || most === null || copies <= most);
}

function isAmong(product: string, products: readonly Made[]): boolean {
  return products.some(({ id }) => id === product);
}

/** Whether the cases that are made are among those that agree with all that is public. */
export function agree(kinds: readonly PublicKind[], products: readonly Made[]): boolean {
  return products.every(({ id, cases }) => {
    const possible = possibleCases(products, kinds, { from: cases, to: cases });
    return (possible.get(id)?.count ?? 0) > 0;
  });
}

/** The odds of a kind, rounded just so much more that its copies fit; null if they never do. */
export function coarserOdds(kind: PublicKind, products: readonly Made[]): readonly number[] | null {
  for (const step of ODDS_STEPS) {
    const odds = kind.odds.map(({ product, oneIn }) => ({
      product,
      ...asRead(roundedOdds(oneIn, step)),
    }));
    if (fits({ ...kind, odds }, products)) return odds.map(({ oneIn }) => oneIn);
  }
  return null;
}
