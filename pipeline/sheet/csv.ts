import { CsvError, parse } from 'csv-parse/sync';

import { MOST_CELLS, MOST_ROWS, TableError, tooMany, type Cell, type Grid } from './grid.js';
import { LARGEST_FILE, tooLarge } from './unpack.js';

/** Marks between cells, the likelier first. */
const DELIMITERS = [',', ';', '\t'] as const;

/**
 * The rows of a CSV file (RFC 4180): UTF-8, or UTF-16 with its mark; cells parted by commas,
 * semicolons or tabs, whichever the first row has most of; any line ends.
 * @param name what the sheet is called in messages.
 * @throws TableError for what is no such text, or too large.
 */
export function readCsv(name: string, bytes: Uint8Array): Grid {
  if (bytes.length > LARGEST_FILE) throw tooLarge();
  const text = textOf(bytes);
  const told = /^sep=(.)(?:\r\n|\r|\n)/.exec(text);
  const delimiter = told?.[1] ?? delimiterOf(text);
  const table = told ? text.slice(told[0].length) : text;
  refuseTooMany(table, delimiter);
  const records = recordsOf(table, delimiter);
  const skipped = told ? 1 : 0;
  let cells = 0;
  const rows = records.flatMap((record, at) => {
    const own = new Map(
      record.flatMap((words, column): [number, Cell][] =>
        words === '' ? [] : [[column + 1, { kind: 'text', text: words }]],
      ),
    );
    cells += own.size;
    if (cells > MOST_CELLS) throw tooMany('cells');
    return own.size === 0 ? [] : [{ number: at + 1 + skipped, cells: own }];
  });
  if (rows.length > MOST_ROWS) throw tooMany('rows');
  return { name, hidden: false, rows, merged: new Map() };
}

function textOf(bytes: Uint8Array): string {
  const [first, second] = bytes;
  const isLittle = first === 0xff && second === 0xfe;
  const isBig = first === 0xfe && second === 0xff;
  const encoding = isLittle ? 'utf-16le' : isBig ? 'utf-16be' : 'utf-8';
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    if (!text.includes('\0')) return text;
  } catch {
    // Said below: letters of another encoding would come out as others.
  }
  throw new TableError('the file is not UTF-8 text: save it as “CSV UTF-8”, or as .xlsx');
}

/**
 * Counts the line ends of rows that hold something, quotes apart, so that nobody waits for a table
 * to be parsed that is refused then. It never counts a row too many.
 */
function refuseTooMany(text: string, delimiter: string): void {
  const mark = delimiter.charCodeAt(0);
  let [rows, quoted, filled] = [0, false, false];
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code === QUOTE) quoted = !quoted;
    else if (!quoted && (code === LF || code === CR)) {
      if (filled) rows += 1;
      if (rows > MOST_ROWS) throw tooMany('rows');
      filled = false;
    } else if (code !== mark) filled = true;
  }
}

const [QUOTE, LF, CR] = [0x22, 0x0a, 0x0d];

/** The mark that the first row has most of, outside quotes. */
function delimiterOf(text: string): string {
  const counts = new Map<string, number>();
  let quoted = false;
  for (const character of text.slice(0, 100_000)) {
    if (character === '"') quoted = !quoted;
    else if (!quoted && (character === '\n' || character === '\r')) {
      if (counts.size > 0) break;
    } else if (!quoted) {
      for (const mark of DELIMITERS) {
        if (mark === character) counts.set(mark, (counts.get(mark) ?? 0) + 1);
      }
    }
  }
  return DELIMITERS.reduce<string>(
    (best, mark) => ((counts.get(mark) ?? 0) > (counts.get(best) ?? 0) ? mark : best),
    ',',
  );
}

function recordsOf(text: string, delimiter: string): readonly (readonly string[])[] {
  try {
    return parse(text, {
      delimiter,
      record_delimiter: ['\r\n', '\n', '\r'],
      relax_column_count: true,
      skip_empty_lines: false,
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    throw new TableError(said(error));
  }
}

function said({ code, lines }: CsvError): string {
  const line = typeof lines === 'number' ? ` in or before line ${String(lines)}` : '';
  const what =
    code === 'CSV_QUOTE_NOT_CLOSED'
      ? 'a quote that opens a cell is never closed'
      : `a quote stands${line} where none can be`;
  return `the file is no CSV: ${what}; a cell with quotes in it stands in quotes, and its own are doubled`;
}
