/** Cells that a spreadsheet program would run as a formula (OWASP, CSV Injection). */
const FORMULA = /^[=+\-@\t\r\n]/;

/** A cell that is no formula: one that would be has an apostrophe before it. */
export function neutral(text: string): string {
  return FORMULA.test(text) ? `'${text}` : text;
}

/** The mark between cells. */
export const SEPARATORS = { csv: ',', tsv: '\t' } as const;
export type SheetFormat = keyof typeof SEPARATORS;

/**
 * Rows as text, each ended by CRLF, with quotes as in RFC 4180: a cell that holds the separator, a
 * quote or a line end stands in quotes, and its own quotes are doubled. In CSV every cell comes back
 * as it was. In TSV, which many programs read without minding quotes, tabs and line ends become
 * spaces, so that only a cell with a quote in it is quoted.
 */
export function delimited(rows: readonly (readonly string[])[], format: SheetFormat): string {
  const written = format === 'csv' ? csvCell : tsvCell;
  return rows.map((row) => `${row.map(written).join(SEPARATORS[format])}\r\n`).join('');
}

function csvCell(text: string): string {
  return /[",\r\n]/.test(text) ? quoted(text) : text;
}

function tsvCell(text: string): string {
  const line = text.replace(/\r\n|[\t\r\n]/g, ' ');
  return line.includes('"') ? quoted(line) : line;
}

function quoted(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

/** What would be a formula, however many apostrophes stand before it already. */
const GUARDED = /^'*[=+\-@\t\r\n]/;

/**
 * A cell that is no formula, and that `typed` takes back: also a text that begins with an apostrophe
 * before such a sign has one more put before it.
 */
export function guarded(text: string): string {
  return GUARDED.test(text) ? `'${text}` : text;
}

/** What was typed before `guarded` put its apostrophe there; any other text as it is. */
export function typed(cell: string): string {
  return cell.startsWith("'") && GUARDED.test(cell) ? cell.slice(1) : cell;
}
