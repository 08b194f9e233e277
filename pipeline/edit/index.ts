export { splice, type Change } from './splice.js';
