import { checkRange, type CaseRange } from './cases.js';
import type { Kind, Product } from './plan.js';
import { oddsBelow, ODDS_STEPS, roundedOdds, type OddsStep } from './published.js';
import { statedOdds } from './odds.js';
import type { ProductReport } from './report.js';

/** What the public knows of a line: its odds, and how many copies there are, as on numbered cards. */
export interface PublicLine {
  /** The N of "1:N packs", rounded up to a number of this step. */
  readonly oneIn: number;
  readonly step: OddsStep;
  /** Copies in this product; null if that is not public, and then its odds tell nothing of cases. */
  readonly copies: number | null;
}

/** Case counts that agree with what is public; none if `from` is above `to`. */
export interface PossibleCases extends CaseRange {
  /** How many there are. */
  readonly count: number;
}

type Packing = Pick<Product, 'packsABox' | 'boxesACase'>;

/**
 * The numbers of cases within a range that agree with all public lines of a product. Odds of 1:N that
 * are rounded up from a truth above B say that copies × B < packs ≤ copies × N; so those numbers follow
 * each other.
 * @throws RangeError for a range that is none, or odds that are none.
 */
export function possibleCases(
  { packsABox, boxesACase }: Packing,
  lines: readonly PublicLine[],
  range: CaseRange,
): PossibleCases {
  checkRange(range);
  const packs = BigInt(packsABox) * BigInt(boxesACase);
  let { from, to } = range;
  for (const { oneIn, step, copies } of lines) {
    if (copies === null) continue;
    const least = (BigInt(copies) * BigInt(oddsBelow(oneIn, step))) / packs + 1n;
    const most = (BigInt(copies) * BigInt(oneIn)) / packs;
    from = Math.max(from, Number(least));
    to = Math.min(to, Number(most));
  }
  return { from, to, count: Math.max(0, to - from + 1) };
}

export interface StepTells {
  readonly step: OddsStep;
  /** The N of each kind whose run is public, in the order of the product. */
  readonly published: readonly { readonly kind: string; readonly oneIn: number }[];
  readonly possible: PossibleCases;
}

/**
 * How far the number of cases of a product can be told from its published odds and the public runs
 * that are packed in it whole, at each step of rounding: the coarser the step, the wider.
 */
export function whatOddsTell(
  product: ProductReport,
  kinds: readonly Kind[],
  range: CaseRange,
): readonly StepTells[] {
  const runs = new Map(
    kinds.map(({ id, run, reserve = 0, cards }) => [id, { run, reserve, cards }]),
  );
  const known = product.lines.flatMap(({ kind, copies }) => {
    const of = kind === null ? undefined : runs.get(kind);
    if (kind === null || of?.run === undefined || copies === 0) return [];
    const whole = (of.run - of.reserve) * of.cards.length === copies;
    return whole ? [{ kind, copies }] : [];
  });
  return ODDS_STEPS.map((step) => {
    const lines = known.map(({ kind, copies }) => {
      const finest = Number(statedOdds(BigInt(copies), BigInt(product.packs)) ?? 1n);
      return { kind, copies, oneIn: roundedOdds(finest, step), step };
    });
    return {
      step,
      published: lines.map(({ kind, oneIn }) => ({ kind, oneIn })),
      possible: possibleCases(product, lines, range),
    };
  });
}
