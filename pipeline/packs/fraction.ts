/** An exact fraction in lowest terms; the denominator is above 0. */
export interface Fraction {
  readonly over: bigint;
  readonly under: bigint;
}

/**
 * `over / under` in lowest terms.
 * @throws RangeError if `under` is 0.
 */
export function fraction(over: bigint, under: bigint): Fraction {
  if (under === 0n) throw new RangeError('nothing can be divided by 0');
  const shared = greatestCommonDivisor(over < 0n ? -over : over, under < 0n ? -under : under);
  const sign = under < 0n ? -1n : 1n;
  return { over: (sign * over) / shared, under: (sign * under) / shared };
}

export function add(a: Fraction, b: Fraction): Fraction {
  return fraction(a.over * b.under + b.over * a.under, a.under * b.under);
}

export function multiply(a: Fraction, b: Fraction): Fraction {
  return fraction(a.over * b.over, a.under * b.under);
}

/** Euclid, Elements VII.2. */
function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  return b === 0n ? (a === 0n ? 1n : a) : greatestCommonDivisor(b, a % b);
}
