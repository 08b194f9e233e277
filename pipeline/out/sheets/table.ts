import { delimited, guarded } from './cells.js';

/** How a column is shown: words on one line, words that wrap, or figures. */
export type ColumnKind = 'line' | 'long' | 'figure';

export interface TableColumn {
  readonly heading: string;
  readonly kind: ColumnKind;
  /** In characters. */
  readonly width: number;
}

export interface TableRow {
  /** What it is called where something in it is wrong. */
  readonly label: string;
  /** One for each column, empty where there is nothing. */
  readonly cells: readonly string[];
}

/** A sheet of rows under headings. */
export interface Table {
  readonly name: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  /** Columns that stay in sight at the left, beside the headings; 0 if nothing stays. */
  readonly frozen: number;
}

/** Cells by heading. */
export interface SheetRecord {
  readonly label: string;
  readonly cells: ReadonlyMap<string, string>;
}

const FIGURES: ReadonlySet<string> = new Set([
  'Run',
  'Format',
  'Lines used',
  'Lines there are',
  'Words used',
  'Words at least',
  'Words at most',
]);

const WIDTHS: ReadonlyMap<string, number> = new Map([
  ['Bio', 60],
  ['Name', 28],
  ['Public name', 28],
  ['Image alt', 40],
  ['Remark', 40],
  ['Why', 40],
  ['Signers', 40],
  ['Credits', 40],
  ['Sources', 40],
  ['Accepted', 40],
  ['Holds', 30],
  ['Ships', 30],
  ['Fit', 30],
  ['Identity', 16],
  ['Number', 10],
  ['Variation letter', 9],
  ['Set title', 28],
  ['Subset title', 24],
  ['To be revealed', 22],
]);

/** From how many characters a column wraps. */
const WRAPPED = 40;

/** How a column of this heading is shown. */
export function columnFor(heading: string): TableColumn {
  if (FIGURES.has(heading)) return { heading, kind: 'figure', width: 10 };
  const width = WIDTHS.get(heading) ?? (/^(Fact|Text): /.test(heading) ? WRAPPED : 14);
  return { heading, kind: width >= WRAPPED ? 'long' : 'line', width };
}

/** Records as a sheet, with these headings and the mark after them. */
export function tableOf(
  name: string,
  headings: readonly string[],
  records: readonly SheetRecord[],
  mark: string | null,
): Table {
  const all = [...headings, ...(mark === null ? [] : [mark])];
  return {
    name,
    columns: all.map((heading) =>
      heading === mark ? { heading, kind: 'line', width: 24 } : columnFor(heading),
    ),
    rows: records.map(({ label, cells }) => ({
      label,
      cells: all.map((heading) => (heading === mark ? '' : (cells.get(heading) ?? ''))),
    })),
    frozen: headings.indexOf('Name') + 1,
  };
}

/**
 * A sheet as CSV: RFC 4180, each row ended by CRLF. The bytes are UTF-8 with a byte order mark, by
 * which spreadsheet programs know it. No cell is a formula.
 */
export function csvBytes({ columns, rows }: Table): Uint8Array {
  const all = [columns.map(({ heading }) => heading), ...rows.map(({ cells }) => cells)];
  const text = delimited(
    all.map((row) => row.map(guarded)),
    'csv',
  );
  return new TextEncoder().encode(`\ufeff${text}`);
}
