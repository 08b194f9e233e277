import { zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';

import { MOST_ROWS, TableError, readTable, type Grid } from '../../pipeline/sheet/index.js';
import { imported, workbook } from './support.js';

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** The words of a grid, by row and column. */
function words(grid: Grid | undefined): Record<string, string> {
  return Object.fromEntries(
    (grid?.rows ?? []).flatMap(({ number, cells }) =>
      [...cells].map(([column, { text }]) => [`${number}:${column}`, text]),
    ),
  );
}

function refusal(bytes: Uint8Array): string {
  try {
    readTable('x.csv', bytes);
  } catch (error) {
    if (error instanceof TableError) return error.message;
    throw error;
  }
  return 'it was read';
}

describe('a CSV file', () => {
  const TABLE = { '1:1': 'Number', '1:2': 'Name', '2:1': '007', '2:2': 'a, "b"\nc' };
  const utf16 = (text: string): Uint8Array => {
    const units = new Uint16Array([0xfeff, ...text.split('').map((unit) => unit.charCodeAt(0))]);
    return new Uint8Array(units.buffer);
  };

  test.each([
    ['commas and CRLF (RFC 4180)', bytesOf('Number,Name\r\n007,"a, ""b""\nc"\r\n')],
    ['a byte order mark', bytesOf('\ufeffNumber,Name\n007,"a, ""b""\nc"\n')],
    ['semicolons', bytesOf('Number;Name\n007;"a, ""b""\nc"')],
    ['tabs', bytesOf('Number\tName\r\n007\t"a, ""b""\nc"')],
    ['a mixture of line ends', bytesOf('Number,Name\r007,"a, ""b""\nc"\r\n')],
    ['UTF-16', utf16('Number\tName\r\n007\t"a, ""b""\nc"')],
  ])('with %s is read', (_, bytes) => {
    expect(words(readTable('x.csv', bytes).grids[0])).toEqual(TABLE);
  });

  test('has rows as they are counted, blank ones and a line that names the mark too', () => {
    const { grids } = readTable('x.csv', bytesOf('sep=;\n\nNumber;Name\n;\n1;A;;\n'));
    expect(words(grids[0])).toEqual({ '3:1': 'Number', '3:2': 'Name', '5:1': '1', '5:2': 'A' });
  });

  test('may have many lines in its cells, and blank rows', () => {
    const bio = 'A bell is heard.\n'.repeat(MOST_ROWS + 1);
    const { grids } = readTable(
      'x.csv',
      bytesOf(`Bio,Name\n"${bio}",A\n${',""\n'.repeat(MOST_ROWS)}`),
    );
    expect(grids[0]?.rows.map(({ number }) => number)).toEqual([1, 2]);
  });

  test.each([
    ['another encoding', new Uint8Array([0x4e, 0xe9, 0x2c, 0x41]), 'UTF-8 text'],
    ['zeros', bytesOf('a\0b'), 'UTF-8 text'],
    ['an open quote', bytesOf('a,"b\nc'), 'a quote that opens a cell is never closed'],
    ['a stray quote', bytesOf('a,b\nc "d",e\n'), 'line 2'],
    ['nothing in it', new Uint8Array(), 'empty'],
    ['a million rows', bytesOf('1\n'.repeat(1_000_000)), `more than ${MOST_ROWS} rows`],
    ['a row too many', bytesOf('1\r\n'.repeat(MOST_ROWS + 1)), `more than ${MOST_ROWS} rows`],
    [
      'a row too many that has no end',
      bytesOf('\n1'.repeat(MOST_ROWS + 1)),
      `more than ${MOST_ROWS} rows`,
    ],
    ['a hundred megabytes', new Uint8Array(100_000_000).fill(0x41), 'larger than 32 MiB'],
  ])('with %s is refused in one sentence', (_, bytes, why) => {
    const said = refusal(bytes);
    expect(said).toContain(why);
    expect(said).not.toContain('\n');
  });
});

describe('a workbook', () => {
  test('has text in pieces, references, CDATA, rich text and escapes, and no sounds', () => {
    // ECMA-376 Part 1, 18.4.12 (si), 18.4.6 (rPh) and 22.9.2.19 (ST_Xstring).
    const sheet =
      '<row r="2"><c r="B2" t="inlineStr"><is><r><t>a &amp; </t></r><r><t>b<![CDATA[<c>]]>&#x1F6F6;</t></r><rPh><t>no</t></rPh></is></c>' +
      '<c t="str"><f>A1</f><v>_x005F_x0041_ _x0041_</v></c></row><row><c t="b"><v>1</v></c></row>';
    expect(words(readTable('x', workbook(sheet)).grids[0])).toEqual({
      '2:2': 'a & b<c>🛶',
      '2:3': '_x0041_ A',
      '3:1': 'TRUE',
    });
  });

  test.each([
    ['0', 'General', '17', '17'],
    ['1', '0', '17', '17'],
    ['49', '@', '17.0', '17'],
  ])('with a number under format %s (%s) gives what was typed', (id, _, value, text) => {
    const { report } = numbered(`<xf numFmtId="${id}"/>`, value);
    expect(report.adds.map(({ number }) => number)).toEqual([text]);
  });

  test.each([
    ['<xf numFmtId="2"/>', '17', 'may be shown in another way'],
    ['<xf numFmtId="170"/>', '7', 'shown as “007”'],
    ['<xf numFmtId="0"/>', '1.5', 'may be shown in another way'],
    ['<xf numFmtId="0"/>', '-3', 'may be shown in another way'],
    // ECMA-376 Part 1, 18.17.4.1: serial 1 is 1 January 1900, 61 is 1 March 1900.
    ['<xf numFmtId="14"/>', '1', 'the date 1900-01-01'],
    ['<xf numFmtId="16"/>', '61', 'the date 1900-03-01'],
    ['<xf numFmtId="171"/>', '46419', 'the date 2027-02-01'],
  ])('with a number under %s is %s rejected', (xf, value, why) => {
    const { report } = numbered(xf, value);
    expect(report.adds).toEqual([]);
    expect(report.rejected[0]?.reasons[0]).toContain(why);
  });

  function numbered(xf: string, value: string) {
    const text = (words: string, at: string): string =>
      `<c r="${at}" t="inlineStr"><is><t>${words}</t></is></c>`;
    const sheet = `<row r="1">${text('Number', 'A1')}${text('Name', 'B1')}${text('Subset', 'C1')}</row><row r="2"><c r="A2" s="0"><v>${value}</v></c>${text('The Oar', 'B2')}${text('base', 'C2')}</row>`;
    const formats =
      '<numFmts><numFmt numFmtId="170" formatCode="000"/><numFmt numFmtId="171" formatCode="[$-809]d&quot; of &quot;m;@"/></numFmts>';
    const styles = `<styleSheet>${formats}<cellXfs>${xf}</cellXfs></styleSheet>`;
    return imported(workbook(sheet, { 'xl/styles.xml': styles }));
  }

  const BOMB = zipSync({ 'xl/workbook.xml': new Uint8Array(200_000_000) }, { level: 9 });

  test.each([
    ['a bomb', BOMB, 'unpacks to more than 128 MiB'],
    ['a bomb that lies', lying(BOMB), 'unpacks to more than 128 MiB'],
    ['no workbook in it', zipSync({ 'a.xml': bytesOf('<a/>') }), 'no .xlsx workbook'],
    ['half of it', workbook('').subarray(0, 300), 'no .xlsx workbook'],
    ['a document type', workbook('<!DOCTYPE a><row/>'), 'damaged'],
    ['an entity', workbook('<row><c t="str"><v>&a;</v></c></row>'), 'damaged'],
    ['crossed elements', workbook('<row><c></row></c>'), 'damaged'],
    ['deep elements', workbook(`${'<a>'.repeat(500)}${'</a>'.repeat(500)}`), 'damaged'],
    ['an older form', new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]), '.xls'],
    [
      'a million rows',
      workbook('<row><c><v>1</v></c></row>'.repeat(1_000_000)),
      `more than ${MOST_ROWS} rows`,
    ],
  ])('with %s is refused in one sentence', (_, bytes, why) => {
    const said = refusal(bytes);
    expect(said).toContain(why);
    expect(said).not.toContain('\n');
  });

  test('with long broken tags takes no longer than its length', () => {
    const start = performance.now();
    refusal(workbook(`<c ${'a'.repeat(1_000_000)}`));
    refusal(workbook(`<c ${' '.repeat(1_000_000)}`));
    refusal(workbook('&'.repeat(1_000_000)));
    expect(performance.now() - start).toBeLessThan(5000);
  });
});

/** The archive, its largest part said to have ten bytes (APPNOTE 4.3.7 and 4.3.12). */
function lying(archive: Uint8Array): Uint8Array {
  const bytes = archive.slice();
  const view = new DataView(bytes.buffer);
  for (let at = 0; at + 28 < bytes.length; at += 1) {
    const mark = view.getUint32(at, true);
    if (mark === 0x04034b50) view.setUint32(at + 22, 10, true);
    if (mark === 0x02014b50) view.setUint32(at + 24, 10, true);
  }
  return bytes;
}
