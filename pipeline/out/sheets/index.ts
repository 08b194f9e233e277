export type { SheetFormat } from './cells.js';
export {
  readCell,
  writeCell,
  type CellForm,
  type CellReading,
  type CellValue,
} from './cell-forms.js';
export {
  BIO,
  COLUMNS,
  CUT,
  CUT_YES,
  HEADINGS,
  IDENTITY,
  SUBSET,
  TOLD,
  columnOf,
  factColumn,
  textColumn,
  type Column,
  type SheetCard,
} from './columns.js';
export {
  BOOK_FORMATS,
  WHATS,
  bookOf,
  cardsBy,
  type Book,
  type BookFormat,
  type BookOptions,
  type What,
} from './book.js';
export { saysWhole } from './about.js';
export { delimited, guarded, neutral, typed } from './cells.js';
export { isMark } from './mark.js';
export { SheetError } from './limits.js';
export { ABOUT_SHEET, NAMES_SHEET } from './sheet-names.js';
export { sheetCardOf, type HouseSource } from './whole.js';
export { bioCell, bodyForm, readBio, readRow, rowOfCard, type ReadCell } from './rows.js';
export { ENCODINGS, encoded, type Encoding } from './encode.js';
export {
  MergeError,
  mergeTable,
  mergeText,
  type MergeCell,
  type MergeOptions,
  type MergeTable,
} from './merge.js';
