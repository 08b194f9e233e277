import { checkRange, type CaseRange } from './cases.js';
import { atLeast, atMost, fittingFrom, fittingTo, type Share } from './public-share.js';
import type { Product } from './plan.js';

/** Odds of a kind in one product, as the public reads them. */
export interface SaidOdds {
  readonly product: string;
  /** The N of "1:N packs": the truth is no more. */
  readonly oneIn: number;
  /** What the truth is above: a whole number below N; 0 if nothing is known. */
  readonly above: number;
}

/** What the public knows of a kind. */
export interface PublicKind {
  /** Copies of all its cards in all products, as of numbered cards; null if that is not public. */
  readonly copies: number | null;
  /** One for each product whose odds are public. */
  readonly odds: readonly SaidOdds[];
  /** Whether products whose odds are not public may hold some. */
  readonly elsewhere: boolean;
}

/** Case counts that agree with what is public; none if `from` is above `to`. */
export interface PossibleCases extends CaseRange {
  /** How many there are: fewer than lie between the two ends, if some between them do not agree. */
  readonly count: number;
}

type Packing = Pick<Product, 'id' | 'packsABox' | 'boxesACase'>;

interface Known {
  readonly copies: bigint | null;
  readonly elsewhere: boolean;
  readonly shares: readonly Share[];
}

interface Ends {
  readonly from: bigint;
  readonly to: bigint;
}

/** More cases than of any product. */
const ALL: Ends = { from: 1n, to: 1_000_000_000_000n };
/** Up to so many numbers are tried one by one. */
const MOST_TRIED = 20_000n;
/** What figures tell of each other is mostly told after a few rounds; fewer leave more possible. */
const ROUNDS = 100;
const NOTHING: PossibleCases = { from: 1, to: 0, count: 0 };

/**
 * The numbers of cases of each product, within a range, that agree with all that is public. In c cases
 * of k packs, odds of 1:N whose truth is above B say of the copies x of a kind that x × B < c × k ≤
 * x × N; so x is between two whole numbers, and those of all products add up to the copies of the kind.
 *
 * Never too narrow. Exact where kinds tie no product to more than one other; where they tie three or
 * more, a number is left out only if the bounds that follow from it, narrowed in turn, leave none for
 * another product. Where more than 20,000 numbers are left they are not tried one by one.
 * @throws RangeError for a range that is none.
 */
export function possibleCases(
  products: readonly Packing[],
  kinds: readonly PublicKind[],
  range: CaseRange,
): ReadonlyMap<string, PossibleCases> {
  checkRange(range);
  const known = kinds.map((kind) => knownOf(kind, products));
  const ends = narrowed(
    known.filter(({ copies }) => copies !== null),
    products.map(() => ALL),
  );
  const asked = { from: BigInt(range.from), to: BigInt(range.to) };
  return new Map(
    products.map(({ id }, at) => [
      id,
      ends === null ? NOTHING : possibleOf(at, known, ends, asked),
    ]),
  );
}

function knownOf({ copies, odds, elsewhere }: PublicKind, products: readonly Packing[]): Known {
  const shares = products.flatMap(({ id, packsABox, boxesACase }, at): readonly Share[] => {
    const said = odds.find(({ product }) => product === id);
    if (said === undefined) return [];
    const packs = BigInt(packsABox) * BigInt(boxesACase);
    return [{ at, packs, oneIn: BigInt(said.oneIn), above: BigInt(said.above) }];
  });
  return {
    copies: copies === null ? null : BigInt(copies),
    elsewhere: elsewhere || shares.length < odds.length,
    shares,
  };
}

function possibleOf(
  at: number,
  known: readonly Known[],
  all: readonly Ends[],
  asked: Ends,
): PossibleCases {
  const own = all[at] ?? ALL;
  const within = { from: larger(own.from, asked.from), to: smaller(own.to, asked.to) };
  const { from, to } = within;
  if (from > to) return NOTHING;
  if (to - from >= MOST_TRIED) return counted([from, to], to - from + 1n);
  const shares = sharesAt(known, at);
  const isTied = known.some((kind) => kind.shares.length > 1 && kind.shares.some(isAt(at)));
  const found: bigint[] = [];
  for (let next = fittingFrom(shares, within); next <= to;) {
    const agrees = !isTied || narrowed(known, fixedAt(all, at, next)) !== null;
    if (agrees) found.push(next);
    next = fittingFrom(shares, { from: next + 1n, to });
  }
  return counted(found, BigInt(found.length));
}

function counted(found: readonly bigint[], count: bigint): PossibleCases {
  const from = found[0];
  const to = found.at(-1);
  if (from === undefined || to === undefined) return NOTHING;
  return { from: Number(from), to: Number(to), count: Number(count) };
}

function isAt(at: number): (share: Share) => boolean {
  return (share) => share.at === at;
}

function sharesAt(known: readonly Known[], at: number): readonly Share[] {
  return known.flatMap(({ shares }) => shares.filter(isAt(at)));
}

function fixedAt(all: readonly Ends[], at: number, cases: bigint): readonly Ends[] {
  return all.with(at, { from: cases, to: cases });
}

/** The ends between which each product's cases must lie; null if none are left for one of them. */
function narrowed(known: readonly Known[], all: readonly Ends[]): readonly Ends[] | null {
  let ends = all;
  for (let round = 0; round < ROUNDS; round += 1) {
    const before = ends;
    for (const kind of known) ends = narrowedBy(kind, ends);
    ends = ends.map((own, at) => fitted(own, sharesAt(known, at)));
    if (ends.some(({ from, to }) => from > to)) return null;
    if (ends.every((own, at) => isSame(own, before[at]))) return ends;
  }
  return ends;
}

/** What one kind says of the cases of each product, by what the others leave of its copies. */
function narrowedBy({ copies, elsewhere, shares }: Known, all: readonly Ends[]): readonly Ends[] {
  if (copies === null) return all;
  const least = shares.map((share) => atLeast(share, all[share.at]?.from ?? ALL.from));
  const most = shares.map((share) => atMost(share, all[share.at]?.to ?? ALL.to) ?? copies);
  const leastOfAll = least.reduce(plus, 0n);
  const mostOfAll = most.reduce(plus, 0n);
  return shares.reduce((ends, { at, packs, oneIn, above }, index) => {
    const own = ends[at] ?? ALL;
    const room = copies - (leastOfAll - (least[index] ?? 0n));
    const needed = elsewhere ? 0n : copies - (mostOfAll - (most[index] ?? 0n));
    const from = needed > 0n ? (needed * above) / packs + 1n : own.from;
    const to = room > 0n ? (room * oneIn) / packs : 0n;
    return ends.with(at, { from: larger(own.from, from), to: smaller(own.to, to) });
  }, all);
}

/** The same ends, drawn in to numbers of which all odds give whole copies. */
function fitted(own: Ends, shares: readonly Share[]): Ends {
  const from = fittingFrom(shares, own);
  return { from, to: from > own.to ? own.to : fittingTo(shares, { from, to: own.to }) };
}

function isSame(a: Ends, b: Ends | undefined): boolean {
  return a.from === b?.from && a.to === b.to;
}

function plus(a: bigint, b: bigint): bigint {
  return a + b;
}

function larger(a: bigint, b: bigint): bigint {
  return a > b ? a : b;
}

function smaller(a: bigint, b: bigint): bigint {
  return a < b ? a : b;
}
