import { deflateSync } from 'node:zlib';

import { describe, expect, it } from 'vitest';

import { auditSite, sayAuditPlace } from '../../pipeline/audit/index.js';
import { pdfOf } from './containers.js';
import { SMALL, SMALL_DAY } from './small-property.js';

const NAME = 'Ysolde Marrack';
const FOUND = `the name ${NAME}`;
const CLOSED = 'something that cannot be opened: it is packed in an unknown way, or damaged';

function found(bytes: Uint8Array): readonly string[] {
  return auditSite(new Map([['a.pdf', bytes]]), SMALL, SMALL_DAY).map(
    (finding) => `${sayAuditPlace(finding)}  ${finding.from}`,
  );
}

/** Objects of a PDF file, numbered from 1, as ISO 32000-1, 7.3.10 writes them. */
function pdf(...objects: readonly (string | Buffer)[]): Buffer {
  const written = objects.flatMap((object, index) => [
    Buffer.from(`${String(index + 1)} 0 obj\n`),
    Buffer.from(object),
    Buffer.from('\nendobj\n'),
  ]);
  return Buffer.concat([Buffer.from('%PDF-1.7\n'), ...written, Buffer.from('%%EOF')]);
}

function stream(entries: string, content: string | Buffer): Buffer {
  const bytes = Buffer.from(content);
  const head = `<< ${entries} /Length ${String(bytes.length)} >>\nstream\n`;
  return Buffer.concat([Buffer.from(head), bytes, Buffer.from('\nendstream')]);
}

const hex = (number: number): string => number.toString(16).padStart(4, '0');

/** A page that shows codes of a font with a map to Unicode (9.10.3). */
const mapped = (map: string, codes: string): Buffer =>
  pdf(
    '<< /Type /Page /Contents 4 0 R /Resources << /Font << /F 2 0 R >> >> >>',
    '<< /Type /Font /Subtype /Type0 /ToUnicode 3 0 R >>',
    stream('', `1 begincodespacerange <0000> <ffff> endcodespacerange ${map}`),
    stream('', `BT /F 9 Tf <${codes}> Tj ET`),
  );

describe('the letters of a font', () => {
  it('are told one by one: each code is another letter’s', () => {
    const all = Array.from(NAME);
    const each = all.map((letter, at) => `<${hex(at + 1)}> <${hex(letter.charCodeAt(0))}>`);
    const map = `${String(all.length)} beginbfchar ${each.join('\n')} endbfchar`;
    const codes = all.map((_, at) => hex(at + 1)).join('');
    expect(found(mapped(map, codes))).toEqual([`a.pdf > page 1 1:1  ${FOUND}`]);
  });

  it('are told by where a row of them begins', () => {
    const codes = Array.from(NAME, (letter) => hex(letter.charCodeAt(0) + 0x100)).join('');
    const map = '1 beginbfrange <0120> <017e> <0020> endbfrange';
    expect(found(mapped(map, codes))).toEqual([`a.pdf > page 1 1:1  ${FOUND}`]);
  });

  it('and where nobody tells them, that is a finding', () => {
    expect(found(mapped('', '00010002'))).toEqual([
      'a.pdf > page 1  something that cannot be opened: it has a font without letters',
    ]);
  });
});

describe('a string of more than ASCII', () => {
  // ISO 32000-1, 7.9.2.2; UTF-8 since ISO 32000-2; the low byte first is of no standard.
  it.each([
    ['UTF-16, high byte first', `feff${Buffer.from(NAME, 'utf16le').swap16().toString('hex')}`],
    ['UTF-16, low byte first', `fffe${Buffer.from(NAME, 'utf16le').toString('hex')}`],
  ])('is read: %s', (_way, digits) => {
    expect(found(pdf(`<< /Title <${digits}> >>`))).toEqual([`a.pdf > strings 2:1  ${FOUND}`]);
  });

  it('is read: UTF-8', () => {
    const name = Buffer.from(NAME.replace('e', 'é')).toString('hex');
    expect(found(pdf(`<< /Title <efbbbf${name}> >>`))).toEqual([`a.pdf > strings 2:1  ${FOUND}`]);
  });

  it.each([
    ['in metadata', pdfOf({ info: { Title: `Über ${NAME}` } }, () => undefined)],
    ['in a bookmark', pdfOf({}, (document) => document.outline.addItem(`Über ${NAME}`))],
  ])('is read as another program writes it, %s', async (_way, made) => {
    expect((await made).includes(Buffer.from('Y\0s\0o'))).toBe(true);
    expect(found(await made).join()).toMatch(/^a\.pdf > strings \d+:6 {2}the name/);
  });
});

/** Rows as PNG filters them (W3C PNG, clause 9), of these kinds in turn. */
function filtered(bytes: Buffer, width: number, kinds: readonly number[]): Buffer {
  const rows = Array.from({ length: Math.ceil(bytes.length / width) }, (_, row) => {
    const kind = kinds[row % kinds.length] ?? 0;
    const differences = Array.from({ length: width }, (_byte, column) => {
      const at = row * width + column;
      const left = column === 0 ? 0 : (bytes[at - 1] ?? 0);
      const up = row === 0 ? 0 : (bytes[at - width] ?? 0);
      return (bytes[at] ?? 32) - ([0, left, up, (left + up) >> 1][kind] ?? 0);
    });
    return Buffer.from([kind, ...differences]);
  });
  return Buffer.concat(rows);
}

const objectStream = (filter: string, bytes: Buffer): Buffer =>
  pdf(stream(`/Type /ObjStm /N 1 /First 4 ${filter}`, bytes));
const OBJECTS = Buffer.from(`7 0 << /Title (We saw ${NAME} here.) >>`);
const predictor = (number: number, columns = '/Columns 5'): string =>
  `/Filter /FlateDecode /DecodeParms << /Predictor ${String(number)} ${columns} >>`;

describe('a stream of objects', () => {
  it.each([
    ['without rows', 1, OBJECTS],
    ['with rows that are what they are', 10, filtered(OBJECTS, 5, [0])],
    ['with rows after the one above', 12, filtered(OBJECTS, 5, [2])],
    ['with rows of several kinds', 15, filtered(OBJECTS, 5, [1, 2, 3, 0])],
  ])('is read, %s', (_way, number, rows) => {
    expect(found(objectStream(predictor(number), deflateSync(rows)))).toEqual([
      `a.pdf > strings 2:8  ${FOUND}`,
    ]);
  });

  // ISO 32000-1, table 8: a row has one column if nothing is said.
  it('is read, with rows of one byte', () => {
    const bytes = objectStream(predictor(12, ''), deflateSync(filtered(OBJECTS, 1, [2])));
    expect(found(bytes)).toEqual([`a.pdf > strings 2:8  ${FOUND}`]);
  });

  it.each([
    ['with rows of pixels', predictor(2), deflateSync(OBJECTS)],
    ['with rows of an unknown kind', predictor(12), deflateSync(Buffer.from('999999'))],
    ['packed in another way', '/Filter /LZWDecode', OBJECTS],
    ['that is damaged', '/Filter /FlateDecode', OBJECTS],
  ])('is a finding, %s', (_way, filter, bytes) => {
    expect(found(objectStream(filter, bytes))).toEqual([`a.pdf > object 1  ${CLOSED}`]);
  });

  it('is a finding if it does not say where its objects begin', () => {
    expect(found(pdf(stream('/Type /ObjStm /N 1', OBJECTS)))).toEqual([
      `a.pdf > object 1  ${CLOSED}`,
    ]);
  });
});

it('a page has the fonts of what it stands in', () => {
  const codes = Array.from(NAME, (letter) => hex(letter.charCodeAt(0) + 0x100)).join('');
  const made = pdf(
    '<< /Type /Page /Contents 4 0 R /Parent 5 0 R >>',
    '<< /Type /Font /Subtype /Type0 /ToUnicode 3 0 R >>',
    stream(
      '',
      '1 begincodespacerange <0000> <ffff> endcodespacerange 1 beginbfrange <0120> <017e> <0020> endbfrange',
    ),
    stream('', `BT /F 9 Tf <${codes}> Tj ET`),
    '<< /Type /Pages /Parent 6 0 R >>',
    '<< /Type /Pages /Resources << /Font << /F 2 0 R >> >> >>',
    // Another page, which has another font of that name.
    '<< /Type /Page /Resources << /Font << /F << /Type /Font /Subtype /Type1 >> >> >> >>',
  );
  expect(found(made)).toEqual([`a.pdf > page 1 1:1  ${FOUND}`]);
});

it('words that stand for what a page shows are read (14.9.4)', () => {
  const shown = `/Span << /ActualText (We saw ${NAME}) >> BDC BT (calm) Tj ET EMC`;
  const made = pdf('<< /Type /Page /Contents 2 0 R >>', stream('', shown));
  expect(found(made)).toEqual([`a.pdf > page 1 2:8  ${FOUND}`]);
});

it.each(['-', '\\255'])('a name that a line end parts with %s is found', (hyphen) => {
  const shown = `BT (We saw Ysol${hyphen}) Tj 0 -9 Td (de Mar${hyphen}) Tj 0 -9 Td (rack here) Tj ET`;
  const made = pdf('<< /Type /Page /Contents 2 0 R >>', stream('', shown));
  expect(found(made)).toEqual([`a.pdf > page 1 1:6  ${FOUND}`]);
});
