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
