import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import readOther from 'read-excel-file/node';
import { describe, expect, test } from 'vitest';

import type { MappingFile } from '../../schema/index.js';
import { readTable } from '../../pipeline/sheet/index.js';
import { imported, textOf } from './support.js';

const oracles = fileURLToPath(new URL('../oracles/', import.meta.url));
/** Made by openpyxl 3.0.9, and of that by Gnumeric 1.12.55, which worked out the formula. */
const MADE = readFileSync(join(oracles, 'messy-workbook.xlsx'));
const SAVED = readFileSync(join(oracles, 'messy-workbook-saved.xlsx'));

const MAPPING: MappingFile = {
  sheets: [{ name: 'cards', header: 3 }],
  columns: [
    { heading: 'subset', key: 'subset', fillDown: true },
    { heading: 'No.', key: 'number' },
    { heading: 'Name', key: 'name' },
    { heading: 'Copy', key: 'bio' },
    { heading: 'SP?', key: 'shortPrint', values: { Yes: 'SP', no: '' } },
    { heading: 'Berth', key: 'facts.Berth' },
    { heading: 'Print run', key: 'run' },
    { heading: 'Sketch', ignore: true },
  ],
};

/** What is wrong with the rows of both files. */
const REJECTED = [
  [7, 'No. (B7): it is the number 6, shown as “006”: make the cell text and type what is printed'],
  [
    8,
    'No. (B8): it is the date 2027-02-01, which a program may have made of what was typed (1/2, 2-14): make the cell text and type it again',
  ],
  [9, 'Copy (D9): it holds the error #REF!'],
  [11, 'NAME (C11): it holds a character that does not show (U+200B, zero width space)'],
  [14, 'the same card stands in row 17 too: leave one'],
  [15, 'the plan has no subset ../../etc'],
  [16, 'the plan has no subset Extar; did you mean extra?'],
  [17, 'the same card stands in row 14 too: leave one'],
];

describe('a workbook as people keep one', () => {
  test('gives its good rows, and says of each other one why it is not taken', () => {
    const { report } = imported(MADE, { mapping: MAPPING });
    expect(report.refused).toEqual([]);
    expect(report.sheets).toEqual([{ name: 'Cards', header: 3, rows: 14, unread: [] }]);
    expect(report.rejected.map(({ row, reasons }) => [row, ...reasons])).toEqual(
      [
        ...REJECTED,
        [
          10,
          'Copy (D10): it is a formula whose result is not in the file: save the file in a spreadsheet program',
        ],
      ].sort(([a], [b]) => Number(a) - Number(b)),
    );
    expect(report.skipped).toEqual([{ sheet: 'Cards', row: 18, why: 'a row of totals' }]);
    expect(report.adds.map(({ row, card }) => [row, card])).toEqual([
      [4, 'base/a3'],
      [5, 'base/a4'],
      [6, 'base/a5'],
      [12, 'base/a10'],
    ]);
  });

  test('is written as it was typed', () => {
    const made = imported(MADE, { mapping: MAPPING });
    expect(textOf(made, 'one/cards/base/a3.md')).toBe(
      '---\nnumber: "3"\nname: The Weir\nspoiler: open\nstate: draft\nfacts: { Berth: Lock two }\nshortPrint: SP\nrun: 250\n---\nWater over “the sill”.\n',
    );
    expect(textOf(made, 'one/cards/base/a4.md')).toBe(
      '---\nnumber: "4"\nname: The Bell\nspoiler: open\nstate: draft\nfacts: { Berth: "007" }\nrun: 1000\n---\nFirst line.\n\nSecond line.\n',
    );
    expect(textOf(made, 'one/cards/base/a5.md')).toContain('facts: { Berth: "1/2" }\n');
    expect(textOf(made, 'one/cards/base/a10.md')).toMatch(/---\n=A1\n$/);
  });

  test('gives the result of a formula where another program put it into the file', () => {
    const made = imported(SAVED, { mapping: MAPPING });
    expect(made.report.rejected.map(({ row, reasons }) => [row, ...reasons])).toEqual(REJECTED);
    expect(textOf(made, 'one/cards/base/a8.md')).toMatch(/---\nWater, twice\n$/);
  });

  test('says where a merged cell looks filled in, if nothing says to fill it down', () => {
    const { report } = imported(MADE);
    expect(report.sheets).toEqual([
      { name: 'Cards', header: 3, rows: 14, unread: ['SP?', 'Sketch'] },
    ]);
    expect(report.adds.map(({ row }) => row)).toEqual([4]);
    expect(report.rejected[0]).toEqual({
      sheet: 'Cards',
      row: 5,
      reasons: [
        'Subset (A5): the cell is merged with A4, which alone has its value: say `fillDown: true` for this column in a mapping',
      ],
    });
    expect(report.skipped).toContainEqual({
      sheet: 'Notes',
      row: 1,
      why: 'a sheet without headings of cards',
    });
  });

  test('has a hidden sheet, which is read only if it is named', () => {
    expect(imported(MADE, { sheets: ['Old'] }).report.adds.map(({ card }) => card)).toEqual([
      'base/a11',
    ]);
    expect(imported(MADE, { sheets: ['Olt'] }).report.refused).toEqual([
      'there is no sheet Olt; did you mean Old?',
    ]);
  });

  test.each([
    ['openpyxl', MADE],
    ['Gnumeric', SAVED],
  ])(
    'of %s reads as read-excel-file 9.3.17 reads it, where that reads anything',
    async (_, file) => {
      const others = await readOther(file, { trim: false, parseNumber: (digits) => digits });
      const { grids } = readTable('x', file);
      let compared = 0;
      for (const { sheet, data } of others) {
        const rows = new Map(
          grids.find(({ name }) => name === sheet)?.rows.map((row) => [row.number, row.cells]),
        );
        for (const [at, row] of data.entries()) {
          for (const [column, value] of row.entries()) {
            if (value === null) continue;
            const said: unknown = value;
            const text = said instanceof Date ? said.toISOString().slice(0, 10) : String(said);
            expect(
              rows.get(at + 1)?.get(column + 1)?.text,
              `${sheet} ${at + 1}:${column + 1}`,
            ).toBe(text);
            compared += 1;
          }
        }
      }
      expect(compared).toBeGreaterThan(60);
    },
  );
});
