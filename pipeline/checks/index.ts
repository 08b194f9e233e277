export { check, lookInSteps, reportOf, type CheckOptions, type Looked } from './run.js';
export { LookAhead } from './look-ahead.js';
export { lookAgain, readingFindings, type ChangedCard } from './look-again.js';
export { listClaims } from './claims/list.js';
export { RULES } from './rules.js';
export { bioFits } from './fitted.js';
export { sampleWith } from './sample.js';
export type { About, Failing, Files, Passing, Rule, Severity } from './rule.js';
export {
  pageOfRule,
  type FailingPage,
  type PageFile,
  type PageLine,
  type RulePage,
} from './page.js';
export { bioReadings, type BioReading } from './reading-bios.js';
export { MARGIN_YEARS, gradeFor } from './readability.js';
export { packedOf, type Packed, type PackedSaid } from './packed/plan.js';
