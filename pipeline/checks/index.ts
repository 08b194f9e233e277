export { check, type CheckOptions } from './run.js';
export { RULES } from './rules.js';
export { bioFits } from './fitted.js';
export { sampleWith } from './sample.js';
export type { About, Failing, Files, Passing, Rule, Severity } from './rule.js';
