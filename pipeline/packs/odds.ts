import { fraction, type Fraction } from './fraction.js';

/**
 * The N of "1:N packs" for so many copies spread over so many packs: whole, and never better than
 * the truth, so it is rounded up. Null where there is no copy.
 * @throws RangeError for numbers below 0.
 */
export function statedOdds(copies: bigint, packs: bigint): bigint | null {
  if (copies < 0n || packs < 0n) throw new RangeError('copies and packs are counts');
  if (copies === 0n) return null;
  const packsForOne = (packs + copies - 1n) / copies;
  return packsForOne > 1n ? packsForOne : 1n;
}

/** Copies for each pack, exactly. */
export function copiesAPack(copies: bigint, packs: bigint): Fraction {
  return fraction(copies, packs);
}

/** Odds as they are, and as they may be said. */
export interface Odds {
  /** Packs for one copy, on average over all that is made; null if there is no copy. */
  readonly packsForOne: Fraction | null;
  /** Copies in a pack, on average. */
  readonly aPack: Fraction;
  /** The N of "1:N packs": whole, never better than the truth; null if there is no copy. */
  readonly oneIn: number | null;
}

/** The odds of so many copies, which may be a fraction on average, in so many packs. */
export function oddsOf(copies: Fraction, packs: number): Odds {
  const aPack = fraction(copies.over, copies.under * BigInt(packs));
  if (copies.over <= 0n) return { packsForOne: null, aPack, oneIn: null };
  return {
    packsForOne: fraction(aPack.under, aPack.over),
    aPack,
    oneIn: Number(statedOdds(aPack.over, aPack.under)),
  };
}
