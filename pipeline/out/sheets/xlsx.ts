import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import writeExcelFile, { type CellObject, type Sheet } from 'write-excel-file/node';

import { guarded } from './cells.js';
import { assertFits } from './limits.js';
import type { ColumnKind, Table, TableColumn } from './table.js';

/** The earliest time that a zip archive can state: a workbook tells nothing of when it was made. */
const NO_TIME = new Date(1980, 0, 1);

const STRINGS = 'xl/sharedStrings.xml';

/** Columns in which a program would make a date or a number of what is typed next. */
const KEPT_AS_TEXT: ReadonlySet<string> = new Set(['Number', 'Story']);

/**
 * Sheets as a workbook (ECMA-376): headings stay in sight, long texts wrap, figures are numbers and
 * everything else is text, also what looks like a number, a date or a formula. The same sheets give
 * the same bytes.
 *
 * The package drops some characters and takes a text such as `constructor` for a key of its own, so
 * it is given the number of each text, and the texts are written here.
 * @throws SheetError for what a workbook cannot hold; every such cell is named.
 */
export async function xlsxBytes(tables: readonly Table[]): Promise<Uint8Array> {
  assertFits(tables);
  const texts = new Map<string, string>();
  const sheets = tables.map((table) => sheetOf(table, texts));
  const files = unzipSync(await writeExcelFile(sheets).toBuffer());
  const strings = strFromU8(files[STRINGS] ?? new Uint8Array());
  const byNumber = [...texts.keys()];
  files[STRINGS] = strToU8(
    strings.replace(/<si><t>(\d+)<\/t><\/si>/g, (_, number: string) =>
      stringItem(byNumber[Number(number)] ?? ''),
    ),
  );
  return zipSync(files, { mtime: NO_TIME });
}

function sheetOf({ name, columns, rows, frozen }: Table, texts: Map<string, string>): Sheet<never> {
  const numberOf = (text: string): string => {
    const known = texts.get(text) ?? String(texts.size);
    texts.set(text, known);
    return known;
  };
  const heading = ({ heading: text }: TableColumn): CellObject => ({
    value: numberOf(guarded(text)),
    type: String,
    fontWeight: 'bold',
    backgroundColor: '#e6eaec',
    wrap: true,
    alignVertical: 'top',
  });
  return {
    sheet: name,
    ...(frozen === 0 ? {} : { stickyRowsCount: 1, stickyColumnsCount: frozen }),
    columns: columns.map(({ width }) => ({ width })),
    data: [
      columns.map(heading),
      ...rows.map(({ cells }) => cells.map((text, at) => cellOf(text, columns[at], numberOf))),
    ],
  };
}

const STYLES: Readonly<Record<ColumnKind, CellObject>> = {
  line: { type: String, format: '@', alignVertical: 'top' },
  long: { type: String, wrap: true, alignVertical: 'top' },
  figure: { alignVertical: 'top' },
};

function cellOf(
  text: string,
  column: TableColumn | undefined,
  numberOf: (text: string) => string,
): CellObject | null {
  const kind = column?.kind ?? 'line';
  if (text === '') return KEPT_AS_TEXT.has(column?.heading ?? '') ? STYLES[kind] : null;
  if (kind === 'figure' && /^\d{1,15}$/.test(text)) {
    return { ...STYLES.figure, value: Number(text), type: Number };
  }
  return { ...STYLES[kind], value: numberOf(guarded(text)), type: String };
}

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };

/**
 * A text of the workbook. `_x000D_` is a carriage return, and what looks like such a sign has its
 * underscore written as one (ECMA-376 part 1, 22.9.2.19, ST_Xstring).
 */
function stringItem(text: string): string {
  const escaped = text
    .replace(/_(?=x[0-9a-f]{4}_)/gi, '_x005F_')
    .replace(/\r/g, '_x000D_')
    .replace(/[&<>]/g, (sign) => ENTITIES[sign] ?? sign);
  return `<si><t xml:space="preserve">${escaped}</t></si>`;
}
