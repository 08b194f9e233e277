import { checkPlan } from './check-plan.js';
import { findProblems } from './find-problems.js';
import { reportKinds } from './kinds.js';
import { reportProduct } from './products.js';
import type { ReleasePlan } from './plan.js';
import { redemptionProblems } from './redemption-problems.js';
import type { PackReport, ProductReport, Totals } from './report.js';
import { prepare, tally } from './tally.js';

const NOTHING: Totals = {
  cases: 0,
  boxes: 0,
  packs: 0,
  places: 0,
  taken: 0,
  base: 0,
  cards: 0,
};

/**
 * What a release plan comes to: packs, places, copies and odds by product and over all, and every
 * problem with it. A plan whose figures are no counts is not worked out at all.
 */
export function workOut(plan: ReleasePlan): PackReport {
  const wrong = checkPlan(plan);
  if (wrong.length > 0) {
    return {
      products: [],
      unset: [],
      totals: NOTHING,
      kinds: [],
      problems: [...wrong, ...redemptionProblems(plan)],
    };
  }
  const prepared = prepare(plan);
  const counted = tally(prepared, ({ cases }) => (cases === 'unset' ? null : cases));
  const products = counted.products.map((product) => reportProduct(product, prepared, counted));
  const kinds = reportKinds(prepared, counted);
  return {
    products,
    unset: counted.unset.map(({ id }) => id),
    totals: products.reduce(plus, NOTHING),
    kinds,
    problems: findProblems(prepared, counted, { products, kinds }),
  };
}

function plus(sum: Totals, product: ProductReport): Totals {
  return {
    cases: sum.cases + product.cases,
    boxes: sum.boxes + product.boxes,
    packs: sum.packs + product.packs,
    places: sum.places + product.places,
    taken: sum.taken + product.taken,
    base: sum.base + product.base,
    cards: sum.cards + product.cards,
  };
}
