export { add, fraction, multiply, type Fraction } from './fraction.js';
export { copiesAPack, statedOdds } from './odds.js';
