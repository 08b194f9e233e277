import { strToU8, zipSync } from 'fflate';

import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import { importSheet, type Importing, type ImportOrder } from '../../pipeline/mend/index.js';
import { memoryFolder } from '../../pipeline/read/index.js';
import { readTable } from '../../pipeline/sheet/index.js';

/** A base subset of twenty with two cards, an insert set of five with one, one without numbers. */
export const SET: Files = {
  'one/plan.yaml': `id: one
title: One
spoiler: open
stage: writing
street: "2027-06-05T09:00:00+01:00[Europe/London]"
subsets:
  - { id: base, title: Base, group: base, numbers: { from: 1, to: 20 }, facts: [Berth] }
  - { id: extra, title: Extra, group: inserts, numbers: { prefix: X-, from: 1, to: 5 } }
  - { id: loose, title: Loose, group: loose, numbers: none }
`,
};

export function sample(over: Files = {}): ReadonlyMap<string, string> {
  return sampleWith({ ...SET, ...over });
}

type More = Partial<Omit<ImportOrder, 'folder' | 'table'>>;

/** What an import of these bytes into the sample would do. */
export function imported(bytes: Uint8Array, more: More = {}, over: Files = {}): Importing {
  return importSheet({
    folder: memoryFolder(sample(over)),
    set: 'one',
    table: readTable('sheet.csv', bytes),
    mapping: null,
    sheets: [],
    into: null,
    overwrite: false,
    mayWrite: () => true,
    ...more,
  });
}

/** The text of a file that an import writes. */
export function textOf({ files }: Importing, file: string): string | undefined {
  const change = files.get(file);
  return change && new TextDecoder().decode(change.after);
}

/** Rows as CSV in which every cell is quoted. */
export function csv(...rows: readonly (readonly string[])[]): Uint8Array {
  const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;
  return strToU8(rows.map((row) => `${row.map(quoted).join(',')}\r\n`).join(''));
}

const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** A workbook of one sheet with this XML in it, and other parts. */
export function workbook(
  sheetData: string,
  parts: Readonly<Record<string, string>> = {},
): Uint8Array {
  const texts = {
    '[Content_Types].xml': '<Types/>',
    'xl/workbook.xml': `<workbook xmlns:r="${RELATIONS}"><sheets><sheet name="S" sheetId="1" r:id="a"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships><Relationship Id="a" Type="${RELATIONS}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="b" Type="${RELATIONS}/styles" Target="styles.xml"/></Relationships>`,
    'xl/styles.xml': '<styleSheet><cellXfs><xf numFmtId="0"/></cellXfs></styleSheet>',
    'xl/worksheets/sheet1.xml': `<worksheet><sheetData>${sheetData}</sheetData></worksheet>`,
    ...parts,
  };
  return zipSync(
    Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, strToU8(text)])),
  );
}
