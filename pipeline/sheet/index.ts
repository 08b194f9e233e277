export { MOST_CELLS, MOST_ROWS, TableError, type Cell, type Grid, type GridRow } from './grid.js';
export { LARGEST_FILE, tooLarge } from './unpack.js';
export { readSheets, readTable, type Table, type TableOrder, type TableReading } from './table.js';
export {
  planRows,
  type CardChange,
  type NewCard,
  type PlanGround,
  type SheetPlan,
} from './plan.js';
export type { Edit } from './compare.js';
export type { CardRow, Rejected, RowPlace, Skipped } from './rows.js';
export { mappingText } from './mapping-text.js';
