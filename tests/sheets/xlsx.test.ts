import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { SheetError } from '../../pipeline/out/sheets/index.js';
import { sheetNames } from '../../pipeline/out/sheets/sheet-names.js';
import { tableOf, type Table } from '../../pipeline/out/sheets/table.js';
import { xlsxBytes } from '../../pipeline/out/sheets/xlsx.js';
import { odd } from './odd-cards.js';
import { openpyxlSheets, workbookRows } from './read-back.js';

/** A sheet with one text under each heading. */
function sheet(cells: Readonly<Record<string, string>>, name = 'Cards'): Table {
  const row = { label: 'high-water/crew/c001', cells: new Map(Object.entries(cells)) };
  return tableOf(name, Object.keys(cells), [row], null);
}

describe('a workbook refuses what it cannot hold', () => {
  // Excel: 32,767 characters in a cell. One is kept for an apostrophe.
  test('a text of 32,766 characters fits, one more does not', async () => {
    const longest = 'a'.repeat(32_766);
    const rows = await workbookRows(await xlsxBytes([sheet({ Bio: longest })]));
    expect(rows.get('Cards')?.[1]).toStrictEqual([longest]);
    await expect(
      xlsxBytes([sheet({ Bio: `${longest}a`, Name: 'A', Why: `=${longest}` })]),
    ).rejects.toThrow(
      new SheetError(
        'an .xlsx file cannot hold this; mend it, or write a .csv file:\n' +
          '  high-water/crew/c001: Bio has 32767 characters, and a cell holds 32766\n' +
          '  high-water/crew/c001: Why has 32767 characters, and a cell holds 32766',
      ),
    );
  });

  // XML 1.0, section 2.2, and what it discourages there.
  test.each([0, 1, 8, 0xb, 0xc, 0xe, 0x1f, 0x7f, 0x9f, 0xd800, 0xdc00, 0xfffe, 0xffff])(
    'the character %i',
    async (code) => {
      const sign = `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
      await expect(xlsxBytes([sheet({ Name: `a${String.fromCharCode(code)}b` })])).rejects.toThrow(
        `  high-water/crew/c001: Name holds the control character ${sign}`,
      );
    },
  );

  test('a heading with one', async () => {
    await expect(xlsxBytes([sheet({ 'Fact: \u0007': 'a' })])).rejects.toThrow(
      '  a heading holds the control character U+0007',
    );
  });
});

test.each([
  'constructor',
  '__proto__',
  'hasOwnProperty',
  '\ufffd',
  '_x0041_',
  '_X000d_',
  'a\rb',
  'a\r\nb',
  ' both ends ',
  '\n',
  ']]> &amp; <b>',
  '0',
  '1e5',
  'TRUE',
])('the text %j is that text again', async (text) => {
  const rows = await workbookRows(await xlsxBytes([sheet({ Name: text, Remark: text })]));
  const [, [name, remark] = []] = rows.get('Cards') ?? [];
  const apostrophe = /^[\n]/.test(text) ? "'" : '';
  expect([name, remark]).toStrictEqual([`${apostrophe}${text}`, `${apostrophe}${text}`]);
});

test('no cell is a formula, whatever it begins with', async () => {
  const texts = ['=1+1', '+1', '-1', '@SUM(A1)', '=HYPERLINK("x")', "'=1", '\t=1'];
  const cells = Object.fromEntries(texts.map((text, at) => [`Fact: ${String(at)}`, text]));
  const [only] = openpyxlSheets(await xlsxBytes([sheet(cells)]));
  expect(only?.cells[1]?.map(([type, value]) => [type, value])).toStrictEqual(
    texts.map((text) => ['s', `'${text}`]),
  );
});

test('the time at which it is made is nowhere in it', async () => {
  const first = Buffer.from(await xlsxBytes([sheet({ Name: 'A' })]));
  // DOS date of 1 January 1980 (ZIP, APPNOTE 4.4.6): 0x0021, at midnight.
  expect(first.readUInt32LE(10)).toBe(0x00210000);
  await new Promise((resolve) => setTimeout(resolve, 2100));
  expect(Buffer.from(await xlsxBytes([sheet({ Name: 'A' })])).equals(first)).toBe(true);
});

describe('the names of sheets', () => {
  test.each([
    [
      ['High Water', 'HIGH WATER', 'high water'],
      ['High Water', 'HIGH WATER (2)', 'high water (3)'],
    ],
    [['a/b\\c?d*e[f]g:h'], ['a b c d e f g h']],
    [
      ["'Tis", "Widow's", "Kettle'"],
      ['Tis', "Widow's", 'Kettle'],
    ],
    [
      ['History', 'names', 'About this file'],
      ['History (2)', 'names (2)', 'About this file (2)'],
    ],
    [
      ['', ' ', '///'],
      ['Set', 'Set (2)', 'Set (3)'],
    ],
    [
      ['x'.repeat(40), 'x'.repeat(41)],
      ['x'.repeat(31), `${'x'.repeat(27)} (2)`],
    ],
    [[`${'x'.repeat(30)}🛶`], ['x'.repeat(30)]],
    [[`${'x'.repeat(30)} y`], ['x'.repeat(30)]],
    [['a\u0007b\ud800c'], ['a b c']],
  ])('of %j', (titles, names) => {
    expect(sheetNames(titles)).toStrictEqual(names);
  });

  test('are ones that programs take, for any titles', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(odd, fc.string({ unit: 'binary' })), { maxLength: 6 }),
        (titles) => {
          const names = sheetNames(titles);
          expect(names).toHaveLength(titles.length);
          expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(titles.length);
          for (const name of names) {
            expect(name.length).toBeGreaterThan(0);
            expect(name.length).toBeLessThanOrEqual(31);
            expect(name).not.toMatch(/[[\]/\\:*?]|^'|'$|\p{Cs}/u);
          }
        },
      ),
    );
  });

  test('are read as they were given', async () => {
    const names = sheetNames(['Widow’s & <Kettle>', "Widow's “Kettle”", 'é🛶']);
    const tables = names.map((name) => sheet({ Name: 'A' }, name));
    expect(openpyxlSheets(await xlsxBytes(tables)).map(({ title }) => title)).toStrictEqual(names);
  });
});
