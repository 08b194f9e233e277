import { checkPlan } from './check-plan.js';
import { fraction, type Fraction } from './fraction.js';
import type { ReleasePlan } from './plan.js';
import { prepare, tally, type Prepared, type Tally } from './tally.js';

/** What a number of cases of one product would give. */
export interface CaseCount {
  readonly cases: number;
  /** Whether everything comes out whole and fits: no line, card or base card is left in parts. */
  readonly divides: boolean;
  /** Places of the product that its lines leave; below 0 if they take too many. */
  readonly left: number;
  /** Base cards of all products; null while another product is unset. */
  readonly base: number | null;
  /** Copies of each base card of weight 1; null while that is not known, or if there is none. */
  readonly eachBase: Fraction | null;
}

/** A range of case counts, both ends counted. */
export interface CaseRange {
  readonly from: number;
  readonly to: number;
}

/** Above so many counts, somebody has mistyped the range. */
const MOST_COUNTS = 100_000;

/**
 * What each number of cases of a product would give, the other products as they stand; nothing for a
 * plan whose figures are no counts. What the plan states of copies is not asked: that it can be told
 * from here is what this is for.
 * @throws RangeError for a range that is empty, starts below 1, or has more than 100,000 counts.
 */
export function caseCounts(
  plan: ReleasePlan,
  product: string,
  { from, to }: CaseRange,
): readonly CaseCount[] {
  checkRange({ from, to });
  if (checkPlan({ ...plan, products: withCases(plan, product, to) }).length > 0) return [];
  const prepared = prepare(plan);
  return Array.from({ length: to - from + 1 }, (_, at) => {
    const cases = from + at;
    const counted = tally(prepared, (each) =>
      each.id === product ? cases : each.cases === 'unset' ? null : each.cases,
    );
    return countOf(cases, product, prepared, counted);
  });
}

export function checkRange({ from, to }: CaseRange): void {
  const whole = Number.isSafeInteger(from) && Number.isSafeInteger(to);
  if (!whole || from < 1 || to < from || to - from >= MOST_COUNTS) {
    throw new RangeError('a range of cases is whole, from 1 on, and has at most 100,000 counts');
  }
}

function withCases(plan: ReleasePlan, product: string, cases: number): ReleasePlan['products'] {
  return plan.products.map((each) => (each.id === product ? { ...each, cases } : each));
}

function countOf(cases: number, product: string, prepared: Prepared, counted: Tally): CaseCount {
  const { pool } = counted;
  const { weights, fixed } = prepared.base;
  const left = counted.products.find((each) => each.product.id === product)?.left ?? 0;
  const eachBase =
    pool === null || weights === 0 ? null : fraction(BigInt(pool - fixed), BigInt(weights));
  return { cases, divides: divides(prepared, counted), left, base: pool, eachBase };
}

function divides({ plan, sharings, base, baseKinds }: Prepared, counted: Tally): boolean {
  const { products, packed, pool } = counted;
  const fits = products.every(
    ({ product, left }) =>
      left === 0 || (left > 0 && product.rest !== 'none' && baseKinds.length > 0),
  );
  if (!fits) return false;
  if (pool !== null && baseKinds.length > 0 && !shares(pool, base)) return false;
  const even = products.every(({ volume, lines }) =>
    lines.every(({ exact, copies, entry }) => {
      if (exact.under !== 1n) return false;
      if (entry.even === undefined) return true;
      return copies % (entry.even === 'box' ? volume.boxes : volume.cases) === 0;
    }),
  );
  if (!even) return false;
  return plan.kinds.every(({ id, what }) => {
    const copies = packed.get(id) ?? null;
    const sharing = sharings.get(id);
    return what === 'decoy' || copies === null || sharing === undefined || shares(copies, sharing);
  });
}

/** Whether each card gets a whole number of copies. */
function shares(
  copies: number,
  { weights, fixed }: { readonly weights: number; readonly fixed: number },
): boolean {
  const free = copies - fixed;
  return weights === 0 ? free === 0 : free >= 0 && free % weights === 0;
}
