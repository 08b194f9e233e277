import { copiesOfEntries, type Copies } from './amounts.js';
import type { Fraction } from './fraction.js';
import type { Entry, Kind, Product, ReleasePlan } from './plan.js';
import { sharingOf, type Sharing } from './sharing.js';
import { volumeOf, type Volume } from './volume.js';

/** A plan with what does not depend on how many cases are made. */
export interface Prepared {
  readonly plan: ReleasePlan;
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly sharings: ReadonlyMap<string, Sharing>;
  readonly base: Sharing;
  readonly baseKinds: readonly Kind[];
}

/** What goes of a kind in a product. */
export interface Line {
  readonly entry: Entry;
  /** The index of the entry in the plan. */
  readonly at: number;
  readonly kind: Kind;
  /** Whole copies; what is left of a fraction is dropped. */
  readonly copies: number;
  /** The copies exactly. A plan in which they are not whole cannot be packed. */
  readonly exact: Fraction;
  readonly places: number;
}

export interface TalliedProduct {
  readonly product: Product;
  readonly volume: Volume;
  readonly lines: readonly Line[];
  /** Places that the lines take. */
  readonly taken: number;
  /** Places that are left; below 0 if the lines take too many. */
  readonly left: number;
}

export interface Tally {
  /** Those of which it is known how many cases are made. */
  readonly products: readonly TalliedProduct[];
  readonly unset: readonly Product[];
  /** Copies packed of each kind besides base, in all; null if an unset product has some. */
  readonly packed: ReadonlyMap<string, number | null>;
  /** Base cards, in all; null if an unset product has some. */
  readonly pool: number | null;
}

export function prepare(plan: ReleasePlan): Prepared {
  const baseKinds = plan.kinds.filter(({ base }) => base === true);
  return {
    plan,
    kinds: new Map(plan.kinds.map((kind) => [kind.id, kind])),
    sharings: new Map(plan.kinds.map((kind) => [kind.id, sharingOf([kind])])),
    base: sharingOf(baseKinds),
    baseKinds,
  };
}

/**
 * The places and copies of a plan that `checkPlan` has nothing against.
 * @param casesOf how many cases of a product are made; null while that is unset.
 */
export function tally(prepared: Prepared, casesOf: (product: Product) => number | null): Tally {
  const { plan } = prepared;
  const volumes = new Map<string, Volume>();
  for (const product of plan.products) {
    const cases = casesOf(product);
    if (cases !== null) volumes.set(product.id, volumeOf(product, cases));
  }
  const copies = copiesOfEntries(plan, prepared.kinds, prepared.sharings, volumes);
  const lines = linesOf(prepared, copies);
  const products = plan.products.flatMap((product): readonly TalliedProduct[] => {
    const volume = volumes.get(product.id);
    if (volume === undefined) return [];
    const own = lines.get(product.id) ?? [];
    const taken = own.reduce((sum, { places }) => sum + places, 0);
    return [{ product, volume, lines: own, taken, left: volume.places - taken }];
  });
  const unset = plan.products.filter(({ id }) => !volumes.has(id));
  return { products, unset, packed: packedOf(prepared, copies), pool: poolOf(products, unset) };
}

function linesOf(
  { plan, kinds }: Prepared,
  copies: readonly Copies[],
): ReadonlyMap<string, readonly Line[]> {
  const lines = new Map<string, Line[]>();
  for (const [at, entry] of plan.entries.entries()) {
    const kind = kinds.get(entry.kind);
    const exact = copies[at] ?? null;
    if (kind === undefined || exact === null) continue;
    const floored = Number(exact.over / exact.under);
    const line = {
      entry,
      at,
      kind,
      copies: floored,
      exact,
      places: floored * (kind.places ?? 1),
    };
    const own = lines.get(entry.product);
    if (own === undefined) lines.set(entry.product, [line]);
    else own.push(line);
  }
  return lines;
}

function packedOf(
  { plan }: Prepared,
  copies: readonly Copies[],
): ReadonlyMap<string, number | null> {
  const packed = new Map<string, number | null>();
  for (const [at, { kind }] of plan.entries.entries()) {
    const before = packed.get(kind) ?? (packed.has(kind) ? null : 0);
    const exact = copies[at] ?? null;
    packed.set(
      kind,
      before === null || exact === null ? null : before + Number(exact.over / exact.under),
    );
  }
  return packed;
}

function poolOf(products: readonly TalliedProduct[], unset: readonly Product[]): number | null {
  if (unset.some(takesBase)) return null;
  return products
    .filter(({ product }) => takesBase(product))
    .reduce((sum, { left }) => sum + Math.max(left, 0), 0);
}

export function takesBase({ rest }: Product): boolean {
  return rest !== 'none';
}
