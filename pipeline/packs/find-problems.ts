import { alikeProblems } from './alike-problems.js';
import { divideProblems } from './divide-problems.js';
import { guaranteeProblems } from './guarantee-problems.js';
import { oddsProblems } from './odds-problems.js';
import { placeProblems } from './place-problems.js';
import { problem, type Problem } from './problem.js';
import { redemptionProblems } from './redemption-problems.js';
import type { KindReport, ProductReport } from './report.js';
import { runProblems } from './run-problems.js';
import { statedProblems } from './stated-problems.js';
import type { Prepared, Tally } from './tally.js';

/** Every problem of a plan that could be worked out. */
export function findProblems(
  prepared: Prepared,
  counted: Tally,
  reports: {
    readonly products: readonly ProductReport[];
    readonly kinds: readonly KindReport[];
  },
): readonly Problem[] {
  return [
    ...counted.unset.map(({ id, title }) =>
      problem(
        'cases-unset',
        { product: id },
        `${title}: how many cases are made is not decided, so that what it shares with other products is not worked out.`,
      ),
    ),
    ...placeProblems(prepared, counted),
    ...alikeProblems(prepared, reports.products),
    ...divideProblems(prepared, counted),
    ...runProblems(prepared, counted),
    ...statedProblems(prepared, reports.kinds),
    ...guaranteeProblems(prepared, reports.products),
    ...oddsProblems(prepared, counted, reports.products),
    ...redemptionProblems(prepared.plan),
  ];
}
