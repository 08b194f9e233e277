import { add, compare, fraction, subtract, whole, type Fraction } from './fraction.js';
import { oddsBelow, type OddsStep } from './published.js';

/** Odds that are public: of one kind, or of several together ("any insert 1:2 packs"). */
export interface PublicOdds {
  readonly kinds: readonly string[];
  readonly oneIn: number;
  readonly step: OddsStep;
}

/** What subtraction tells of a kind whose odds are not public. */
export interface Subtracted {
  readonly kind: string;
  /** Copies in a pack, at least and at most; `most` is null where nothing bounds it. */
  readonly least: Fraction;
  readonly most: Fraction | null;
  /** Whether it follows that there is any of it. */
  readonly told: boolean;
}

interface Bounds {
  readonly least: Fraction;
  readonly most: Fraction | null;
}

const NONE = whole(0);
const UNKNOWN: Bounds = { least: NONE, most: null };

/**
 * Whether the odds of held kinds can be got by subtracting public odds from odds of several kinds
 * together. The cards of a pack are no such sum, since base cards are the rest of it and their number
 * is never published: leave them out, or name a base kind among the kinds of that sum and nowhere else.
 */
export function bySubtraction(
  held: readonly string[],
  odds: readonly PublicOdds[],
): readonly Subtracted[] {
  const known = new Map<string, Bounds>();
  // Each round narrows at least one kind, or is the last.
  for (let round = 0; round < ROUNDS; round += 1) {
    let narrowed = false;
    for (const sum of odds) narrowed = narrow(sum, known) || narrowed;
    if (!narrowed) break;
  }
  return held.map((kind) => {
    const { least, most } = known.get(kind) ?? UNKNOWN;
    return { kind, least, most, told: compare(least, NONE) > 0 };
  });
}

/** What sums tell of each other is told after a few rounds: later ones narrow next to nothing. */
const ROUNDS = 12;

/** Narrows the bounds of each kind of a sum by those of the others. */
function narrow({ kinds, oneIn, step }: PublicOdds, known: Map<string, Bounds>): boolean {
  const sum = boundsOf(oneIn, step);
  const all = kinds.map((kind) => known.get(kind) ?? UNKNOWN);
  const unbounded = all.filter(({ most }) => most === null).length;
  const least = all.reduce((whole, each) => add(whole, each.least), NONE);
  const most = all.reduce((whole, each) => add(whole, each.most ?? NONE), NONE);
  let narrowed = false;
  for (const [at, kind] of kinds.entries()) {
    const own = all[at] ?? UNKNOWN;
    const othersBounded = unbounded === 0 || (unbounded === 1 && own.most === null);
    const atLeast = othersBounded ? subtract(sum.least, subtract(most, own.most ?? NONE)) : NONE;
    const atMost = sum.most === null ? null : subtract(sum.most, subtract(least, own.least));
    const now = { least: greater(own.least, atLeast), most: lesser(own.most, atMost) };
    if (!same(own, now)) {
      known.set(kind, now);
      narrowed = true;
    }
  }
  return narrowed;
}

/** Copies in a pack: 1:N, rounded up from a truth above B, is from 1/N to below 1/B. */
function boundsOf(oneIn: number, step: OddsStep): Bounds {
  const below = oddsBelow(oneIn, step);
  return {
    least: fraction(1n, BigInt(oneIn)),
    most: below === 0 ? null : fraction(1n, BigInt(below)),
  };
}

function greater(a: Fraction, b: Fraction): Fraction {
  return compare(a, b) >= 0 ? a : b;
}

function lesser(a: Fraction | null, b: Fraction | null): Fraction | null {
  if (a === null || b === null) return a ?? b;
  return compare(a, b) <= 0 ? a : b;
}

function same(a: Bounds, b: Bounds): boolean {
  if (compare(a.least, b.least) !== 0) return false;
  return a.most === null || b.most === null ? a.most === b.most : compare(a.most, b.most) === 0;
}
