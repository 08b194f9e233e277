export * as common from './common.js';
export * from './files/property.js';
export {
  PlanFile,
  Subset as SubsetShape,
  Parallel as ParallelShape,
  type Subset,
  type Parallel,
  type MergeField,
  type HouseStyle,
} from './files/plan.js';
export {
  AMOUNTS,
  Content as ContentShape,
  Product as ProductShape,
  type Content,
  type Product,
  type Redemption,
  type Sheet,
} from './files/packed.js';
export * from './files/card.js';
export * from './files/names.js';
export * from './files/people.js';
export {
  BackFile,
  Zone as ZoneShape,
  type Zone,
  Font as FontShape,
  type Font,
} from './files/back.js';
export * from './files/sales.js';
export * from './files/roster.js';
export * from './files/corrections.js';
export * from './files/review.js';
export * from './files/mapping.js';
export * from './outputs/audit.js';
export * from './outputs/check.js';
export * from './outputs/public.js';
export * from './outputs/status.js';
export * from './outputs/reveals.js';
export * from './outputs/packs.js';
export * from './outputs/import.js';
