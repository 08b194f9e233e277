import { spawnSync } from 'node:child_process';

import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { SEPARATORS, delimited, neutral } from '../../pipeline/out/sheets/cells.js';
import { ENCODINGS, encoded, type Encoding } from '../../pipeline/out/sheets/encode.js';

/** What makes trouble in a cell, besides any text. */
const hostile = fc
  .array(
    fc.constantFrom('"', '""', ',', '\t', '\r', '\n', '\r\n', ' ', '=', "'", 'é', '🛶', '\ufeff'),
    { maxLength: 8 },
  )
  .map((parts) => parts.join(''));
const cell = fc.oneof(hostile, fc.string({ unit: 'binary' }));
const rows = fc
  .integer({ min: 1, max: 4 })
  .chain((width) =>
    fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1 }),
  );

/** The text of a file by the WHATWG decoders, without its byte order mark. */
function decoded(bytes: Uint8Array, encoding: Encoding): string {
  const label = encoding === 'utf-8' ? 'utf-8' : 'utf-16le';
  const text = new TextDecoder(label, { fatal: true, ignoreBOM: true }).decode(bytes);
  return encoding === 'utf-8' ? text : text.slice(1);
}

function parsed(text: string, delimiter: string): string[][] {
  return parse(text, { delimiter, record_delimiter: '\r\n' });
}

describe.each(ENCODINGS)('in %s', (encoding) => {
  test('every cell of a CSV comes back as it was', () => {
    fc.assert(
      fc.property(rows, (table) => {
        const text = decoded(encoded(delimited(table, 'csv'), encoding), encoding);
        expect(parsed(text, ',')).toStrictEqual(table);
      }),
    );
  });

  test('every cell of a TSV comes back with spaces for tabs and line ends', () => {
    fc.assert(
      fc.property(rows, (table) => {
        const text = decoded(encoded(delimited(table, 'tsv'), encoding), encoding);
        expect(parsed(text, '\t')).toStrictEqual(
          table.map((row) => row.map((each) => each.split(/\r\n|\r|\n|\t/).join(' '))),
        );
      }),
    );
  });
});

test('a reader of TSV that knows no quotes finds as many rows and cells', () => {
  fc.assert(
    fc.property(rows, (table) => {
      const lines = delimited(table, 'tsv').split('\r\n').slice(0, -1);
      expect(lines.map((line) => line.split('\t').length)).toStrictEqual(
        table.map((row) => row.length),
      );
    }),
  );
});

test('the bytes of a file', () => {
  const table = [
    ['a', 'b "c"'],
    ['1,5', 'é\tf'],
  ];
  expect(delimited(table, 'csv')).toBe('a,"b ""c"""\r\n"1,5",é\tf\r\n');
  expect(delimited([['a\rb']], 'csv')).toBe('"a\rb"\r\n');
  expect(delimited(table, 'tsv')).toBe('a\t"b ""c"""\r\n1,5\té f\r\n');
  expect([...encoded('é🛶', 'utf-8')]).toStrictEqual([0xc3, 0xa9, 0xf0, 0x9f, 0x9b, 0xb6]);
  // RFC 2781 and Unicode, table 3-9: U+1F6F6 is D83D DEF6.
  expect([...encoded('é🛶', 'utf-16')]).toStrictEqual([255, 254, 0xe9, 0, 0x3d, 0xd8, 0xf6, 0xde]);
  expect(SEPARATORS).toStrictEqual({ csv: ',', tsv: '\t' });
});

test('iconv reads UTF-16 by its mark', () => {
  fc.assert(
    fc.property(fc.array(cell, { minLength: 5 }), (row) => {
      const text = delimited([row], 'csv');
      const input = encoded(text, 'utf-16');
      const { stdout, status } = spawnSync('iconv', ['-f', 'UTF-16', '-t', 'UTF-8'], { input });
      expect(status).toBe(0);
      expect(stdout.equals(Buffer.from(text, 'utf8'))).toBe(true);
    }),
    { numRuns: 10 },
  );
});

// OWASP, CSV Injection: the characters by which a cell becomes a formula.
test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '\n=1'])('%j is no formula', (text) => {
  expect(neutral(text)).toBe(`'${text}`);
});

test.each(['', 'Pim', '1-2', 'a=b', '–3', "'=1"])('%j stays', (text) => {
  expect(neutral(text)).toBe(text);
});
