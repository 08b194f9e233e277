/** What a cell holds. `formula` is one whose result is not in the file. */
export type CellKind = 'text' | 'number' | 'date' | 'truth' | 'error' | 'formula';

/** A cell that holds something. */
export interface Cell {
  readonly kind: CellKind;
  /** Its text; of a number the digits in the file, of a date `2027-01-02`, of an error its code. */
  readonly text: string;
  /** How a number is shown, such as `000`. */
  readonly format?: string;
  /** Whether the text is the result of a formula. */
  readonly isResult?: true;
}

/** A row that holds something. */
export interface GridRow {
  /** From 1, as the program that made the file shows it; of a CSV file the record. */
  readonly number: number;
  /** By column, from 1. */
  readonly cells: ReadonlyMap<number, Cell>;
}

/** One sheet of a workbook, or a CSV file. */
export interface Grid {
  readonly name: string;
  readonly hidden: boolean;
  readonly rows: readonly GridRow[];
  /** Cells that are merged into another one, by `mergeKey`: the cell that has their value. */
  readonly merged: ReadonlyMap<string, string>;
}

/** A file that is no table which can be read. The message is one sentence for whoever made it. */
export class TableError extends Error {
  override readonly name = 'TableError';
}

/** Most rows of a sheet, and most cells of a workbook, that hold something. */
export const MOST_ROWS = 50_000;
export const MOST_CELLS = 1_000_000;

/** What is said of more. */
export function tooMany(what: 'rows' | 'cells'): TableError {
  const most = what === 'rows' ? MOST_ROWS : MOST_CELLS;
  return new TableError(
    `the file has more than ${String(most)} ${what}: save the rows of one set in a file of their own`,
  );
}

/** The key of a cell in `merged`. */
export function mergeKey(row: number, column: number): string {
  return `${String(row)}:${String(column)}`;
}

/** `A`, `Z`, `AA`: a column from 1 as spreadsheets call it. */
export function lettersOf(column: number): string {
  let letters = '';
  for (let left = column; left > 0; left = Math.floor((left - 1) / 26)) {
    letters = String.fromCharCode(65 + ((left - 1) % 26)) + letters;
  }
  return letters;
}

/** The column of letters, from 1; null if they are none. The last column that there is is XFD. */
export function columnNumber(letters: string): number | null {
  if (!/^[A-Za-z]{1,3}$/.test(letters)) return null;
  let column = 0;
  for (const letter of letters.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return column <= 16_384 ? column : null;
}
