import type { Content, Parallel, Product } from '../../schema/index.js';
import type { Table } from './decision.js';

export const PARALLEL = {
  id: 'shown',
  title: 'shown',
  of: 'shown',
  run: 'shown',
  copies: 'never',
  tell: 'shown',
  found: 'never',
  places: 'never',
  reserve: 'never',
  spoiler: 'decides',
  embargo: 'decides',
} as const satisfies Table<Parallel>;

export const PRODUCT = {
  id: 'shown',
  title: 'shown',
  pack: 'shown',
  box: 'shown',
  case: 'never',
  cases: 'never',
  collation: 'never',
  contents: 'shown',
  guarantees: 'never',
  decoys: 'never',
  spoiler: 'decides',
  embargo: 'decides',
} as const satisfies Table<Product>;

/** Odds are said in the plan and held to what is packed, so that nothing shown is worked out of it. */
export const CONTENT = {
  of: 'shown',
  odds: 'shown',
  copies: 'never',
  each: 'never',
  perBox: 'never',
  perCase: 'never',
  all: 'never',
  even: 'never',
} as const satisfies Table<Content>;
