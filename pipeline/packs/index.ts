/** Exact arithmetic of print runs, places and odds: what a release plan comes to, and what is wrong with it. */

export { bySubtraction, type PublicOdds, type Subtracted } from './by-subtraction.js';
export { caseCounts, type CaseCount, type CaseRange } from './cases.js';
export {
  expectedPacks,
  packsForChances,
  varianceOfPacks,
  type Collecting,
  type MixedCollecting,
} from './collecting.js';
export {
  completing,
  openingsOf,
  type ByChance,
  type BySequence,
  type Completion,
  type Points,
} from './completing.js';
export { drawsForChances, expectedDraws, type Likelihood } from './drawing.js';
export {
  add,
  approximately,
  compare,
  fraction,
  multiply,
  subtract,
  whole,
  type Fraction,
} from './fraction.js';
export { copiesAPack, oddsOf, statedOdds, type Odds } from './odds.js';
export { broughtBy, type Opening } from './openings.js';
export { packingList, type PackingRow } from './packing-list.js';
export type {
  Amount,
  Entry,
  Guarantee,
  Kind,
  PlannedCard,
  Product,
  PublishedOdds,
  Redemption,
  ReleasePlan,
  Sheet,
} from './plan.js';
export type { About, Problem, ProblemKind } from './problem.js';
export {
  possibleCases,
  type PossibleCases,
  type PublicKind,
  type SaidOdds,
} from './possible-cases.js';
export { whatPublicTells, type StepTells } from './public-figures.js';
export {
  asRead,
  compareStated,
  ODDS_STEPS,
  oddsToPublish,
  roundedOdds,
  type OddsStep,
  type StatedVerdict,
} from './published.js';
export type {
  CardsMade,
  CardsReport,
  KindReport,
  LineReport,
  PackReport,
  ProductReport,
  Totals,
} from './report.js';
export { boxOfSequence, type BoxOfSequence } from './sequence.js';
export { pressSheets, type Form, type PressSheets, type Printed, type Subject } from './sheets.js';
export type { Random } from './shuffle.js';
export { packAtRandom, type PackedCard, type PackedProduct } from './simulate.js';
export { workOut } from './work-out.js';
