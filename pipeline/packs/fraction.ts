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

/** The greatest fraction of which both are whole multiples; of 0 and another that one. */
export function commonMeasure(a: Fraction, b: Fraction): Fraction {
  const under = a.under * b.under;
  return fraction(greatestCommonDivisor(a.over * b.under, b.over * a.under), under);
}

/** Euclid, Elements VII.2. */
function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  return b === 0n ? (a === 0n ? 1n : a) : greatestCommonDivisor(b, a % b);
}

/** A whole count as a fraction. */
export function whole(count: number): Fraction {
  return { over: BigInt(count), under: 1n };
}

export function subtract(a: Fraction, b: Fraction): Fraction {
  return add(a, { over: -b.over, under: b.under });
}

/** Below 0, 0, or above 0, as `a` is below `b`, the same, or above it. */
export function compare(a: Fraction, b: Fraction): number {
  const apart = a.over * b.under - b.over * a.under;
  return apart < 0n ? -1 : apart > 0n ? 1 : 0;
}

/** The nearest number: for what is drawn or estimated, never for a count. */
export function approximately({ over, under }: Fraction): number {
  const shift = 10n ** 15n;
  const quotient = over / under;
  return Number(quotient) + Number(((over % under) * shift) / under) / Number(shift);
}
