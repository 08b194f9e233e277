import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

import { parse } from 'csv-parse/sync';
import readXlsxFile from 'read-excel-file/node';

import type { CardFront } from '../../schema/index.js';
import {
  BIO,
  IDENTITY,
  SUBSET,
  bodyForm,
  readBio,
  readRow,
  typed,
  type CellValue,
  type SheetCard,
} from '../../pipeline/out/sheets/index.js';
import { pythonForWorkbooks } from '../setup/programs.mjs';

/** What a program reads in a cell: a number where the file says that it is one. */
export type Read = string | number | null;

/** The sheets of a workbook as read-excel-file reads them. */
export async function workbookRows(bytes: Uint8Array): Promise<ReadonlyMap<string, Read[][]>> {
  const sheets = await readXlsxFile(Buffer.from(bytes), { trim: false });
  return new Map(
    sheets.map(({ sheet, data }) => [
      sheet,
      data.map((row) =>
        row.map((cell) => (typeof cell === 'string' || typeof cell === 'number' ? cell : null)),
      ),
    ]),
  );
}

/** The rows of a CSV file as csv-parse reads them. */
export function csvRows(bytes: Uint8Array): Read[][] {
  const rows: string[][] = parse(Buffer.from(bytes), { bom: true, record_delimiter: '\r\n' });
  return rows;
}

/** The cells of each row by heading, as they were before they were guarded. */
export function cellsOf([headings = [], ...rows]: readonly Read[][]): Map<string, string>[] {
  return rows.map(
    (row) =>
      new Map(
        headings.flatMap((heading, at): [string, string][] => {
          const text = String(row[at] ?? '');
          return text === '' ? [] : [[typed(String(heading)), typed(text)]];
        }),
      ),
  );
}

/** The card that a row stands for. */
export function cardOfRow(row: ReadonlyMap<string, string>): SheetCard {
  const front: Record<string, unknown> = {};
  for (const { column, reading } of readRow(row)) {
    if (!reading.ok) throw new Error(`${column.heading}: ${reading.why}`);
    put(front, column.path, reading.value);
  }
  const bio = readBio(row.get(BIO) ?? '');
  const [subset = '', id = ''] = (row.get(IDENTITY) ?? '').split('/');
  if (subset !== row.get(SUBSET)) throw new Error(`${subset} is not ${row.get(SUBSET) ?? ''}`);
  return {
    subset,
    id,
    front: { ...front, ...(bio.none ? { bio: 'none' } : {}) } as CardFront,
    body: bio.body,
  };
}

function put(front: Record<string, unknown>, path: readonly string[], value: CellValue): void {
  const [key = '', part] = path;
  if (part === undefined) front[key] = value;
  else front[key] = Object.fromEntries([...Object.entries(front[key] ?? {}), [part, value]]);
}

/** A card as a sheet carries it: empty facts and texts are as if they were not there. */
export function carried(card: SheetCard): SheetCard {
  const front = Object.entries(card.front).filter(
    ([key, value]) => !(['facts', 'texts'].includes(key) && Object.keys(value).length === 0),
  );
  return { ...card, front: Object.fromEntries(front) as CardFront, body: bodyForm(card.body) };
}

const SCRIPT = fileURLToPath(new URL('../oracles/openpyxl-sheets.py', import.meta.url));

/** A workbook as openpyxl reads it. */
export interface PythonSheet {
  readonly title: string;
  /** The cell below and to the right of what stays in sight; null if nothing does. */
  readonly frozen: string | null;
  /** In characters, by the letters of the column. */
  readonly widths: Readonly<Record<string, number>>;
  /** Type and value of each cell: `s` is text, `n` a number or nothing, `f` a formula. */
  readonly cells: readonly (readonly [type: string, value: Read])[][];
  /** Whether long texts wrap, of each cell below the headings. */
  readonly wrapped: readonly boolean[];
}

/** The sheets of a workbook as openpyxl reads them; `_xHHHH_` is left as it stands in the file. */
export function openpyxlSheets(bytes: Uint8Array): readonly PythonSheet[] {
  const said = execFileSync(pythonForWorkbooks(), [SCRIPT], {
    input: bytes,
    maxBuffer: 1 << 28,
    stdio: ['pipe', 'pipe', 'ignore'],
  });
  return JSON.parse(said.toString('utf8')) as PythonSheet[];
}
