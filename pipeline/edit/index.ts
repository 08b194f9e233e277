export { rewriteBio, type Rewriting } from './rewrite.js';
export { quotedAs, rewriteScalar } from './scalar.js';
export { splice, type Change } from './splice.js';
export { plainBio } from './units.js';
export { apart, fixOf, type FindingFix } from './finding-fix.js';
export { offsetOf } from './offset.js';
export { patchText } from './patch.js';
export { renumbered } from './renumbered.js';
export { frontValues, withValue, type YamlValue } from './front-value.js';
