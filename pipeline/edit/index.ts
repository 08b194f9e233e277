export { rewriteBio, type Rewriting } from './rewrite.js';
export { rewriteScalar } from './scalar.js';
export { splice, type Change } from './splice.js';
export { plainBio } from './units.js';
