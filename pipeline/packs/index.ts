export { expectedPacks, packsForChances, type Collecting } from './collecting.js';
export { expectedDraws, type Likelihood } from './drawing.js';
export { add, fraction, multiply, type Fraction } from './fraction.js';
export { copiesAPack, statedOdds } from './odds.js';
