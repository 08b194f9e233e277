export type { SheetFormat } from './cells.js';
export { checklistCsv } from './checklist.js';
export { ENCODINGS, encoded, type Encoding } from './encode.js';
export {
  MergeError,
  mergeTable,
  mergeText,
  type MergeCell,
  type MergeOptions,
  type MergeTable,
} from './merge.js';
