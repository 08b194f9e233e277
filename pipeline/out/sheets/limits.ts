import type { Table } from './table.js';

/** A sheet cannot be made of this content; the message names every cell and says what to do. */
export class SheetError extends Error {
  override readonly name = 'SheetError';
}

/** What spreadsheet programs hold: UTF-16 units in a cell, rows and columns of a sheet. */
const MOST = { units: 32_767, rows: 1_048_576, columns: 16_384 } as const;

/** What XML 1.0 forbids (section 2.2), and the control characters that it merely discourages. */

const FORBIDDEN = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufffe\uffff]|\p{Cs}/u;

/**
 * Whether a workbook can hold sheets whole.
 * @throws SheetError if not: nothing is cut short, and nothing left out.
 */
export function assertFits(tables: readonly Table[]): void {
  const faults = tables.flatMap((table) => [...sizeFaults(table), ...cellFaults(table)]);
  if (faults.length === 0) return;
  const list = faults.map((fault) => `  ${fault}`).join('\n');
  throw new SheetError(`an .xlsx file cannot hold this; mend it, or write a .csv file:\n${list}`);
}

function sizeFaults({ name, columns, rows }: Table): readonly string[] {
  return [
    ...(rows.length < MOST.rows
      ? []
      : [`${name}: ${String(rows.length)} cards, and a sheet holds ${String(MOST.rows - 1)}`]),
    ...(columns.length <= MOST.columns
      ? []
      : [`${name}: ${String(columns.length)} columns, and a sheet holds ${String(MOST.columns)}`]),
  ];
}

function cellFaults({ columns, rows }: Table): readonly string[] {
  const headings = columns.flatMap(({ heading }) =>
    faultOf(heading).map((why) => `a heading ${why}`),
  );
  const cells = rows.flatMap(({ label, cells: texts }) =>
    texts.flatMap((text, at) =>
      faultOf(text).map((why) => `${label}: ${columns[at]?.heading ?? ''} ${why}`),
    ),
  );
  return [...headings, ...cells];
}

/** An apostrophe may be put before it. */
function faultOf(text: string): readonly string[] {
  const code = FORBIDDEN.exec(text)?.[0].codePointAt(0)?.toString(16).toUpperCase();
  return [
    ...(text.length < MOST.units
      ? []
      : [`has ${String(text.length)} characters, and a cell holds ${String(MOST.units - 1)}`]),
    ...(code === undefined ? [] : [`holds the control character U+${code.padStart(4, '0')}`]),
  ];
}
