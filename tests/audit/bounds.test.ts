import { gzipSync } from 'node:zlib';

import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';

import { auditSite, sayAuditPlace } from '../../pipeline/audit/index.js';
import { SMALL, SMALL_DAY } from './small-property.js';

const NAME = 'Ysolde Marrack';

function audit(file: string, bytes: string | Uint8Array): readonly string[] {
  const content = typeof bytes === 'string' ? Buffer.from(bytes) : bytes;
  return auditSite(new Map([[file, content]]), SMALL, SMALL_DAY).map(
    (finding) => `${sayAuditPlace(finding)}  ${finding.from}`,
  );
}

const CLOSED = 'something that cannot be opened';
const zip = (name: string, bytes: Uint8Array): Uint8Array => zipSync({ [name]: bytes });
const calm = strToU8('The lake is calm.');

/** A zip with one byte of it changed, found by what stands before it. */
function changed(bytes: Uint8Array, after: string, offset: number, value: number): Uint8Array {
  const copy = Buffer.from(bytes);
  copy[copy.indexOf(after, 0, 'latin1') + offset] = value;
  return copy;
}

describe('what cannot be opened is a finding', () => {
  const bomb = Buffer.alloc(65 * 1024 * 1024);
  const list = 'PK\x01\x02';
  it.each([
    ['gzip of too much', 'a.gz', gzipSync(bomb), 'a.gz', 'it unpacks to too much'],
    ['zip of too much', 'a.zip', zip('b', bomb), 'a.zip > b', 'it unpacks to too much'],
    [
      'zip of much, many times',
      'a.zip',
      zipSync({ b: bomb.subarray(0, 40e6), c: bomb.subarray(0, 40e6) }),
      'a.zip > c',
      'it unpacks to too much',
    ],
    ['damaged gzip', 'a.gz', gzipSync(calm).subarray(0, 20), 'a.gz', 'it is damaged'],
    ['half a zip', 'a.zip', zip('b', calm).subarray(0, 40), 'a.zip', 'it is damaged'],
    [
      'an encrypted entry',
      'a.zip',
      changed(zip('b', calm), list, 8, 1),
      'a.zip > b',
      'it is encrypted',
    ],
    [
      'an entry packed in another way',
      'a.zip',
      changed(zip('b', calm), list, 10, 14),
      'a.zip > b',
      'it is packed in an unknown way',
    ],
    [
      'wrapped four times',
      'a.gz',
      gzipSync(gzipSync(gzipSync(gzipSync(calm)))),
      'a.gz > unpacked > unpacked > unpacked',
      'it is wrapped too often',
    ],
  ])('%s', (_what, file, bytes, place, why) => {
    expect(audit(file, bytes)).toEqual([`${place}  ${CLOSED}: ${why}`]);
  });

  it('but what is wrapped three times is opened', () => {
    expect(audit('a.gz', gzipSync(gzipSync(gzipSync(calm))))).toEqual([]);
  });
});

describe('a finding says where it is', () => {
  it.each([
    ['a line of text', 'a.txt', `calm\r\nlake ${NAME}`, 'a.txt 2:6'],
    ['after an escape', 'a.html', `<p>caf&eacute;\n&amp; ${NAME}`, 'a.html 2:7'],
    ['after tags', 'a.html', `<ul>\n<li>\n<b>${NAME}`, 'a.html 3:4'],
    ['in an attribute', 'a.html', `<p>\n<img alt="${NAME}">`, 'a.html 2:11'],
    ['within an escape', 'a.json', `["\\u0059solde Marrack"]`, 'a.json 1:3'],
    ['in a name', `a/${NAME}.txt`, 'calm', `a/${NAME}.txt > its name 1:3`],
    ['among bytes', 'a.bin', `\0\x01\x02 ${NAME}`, 'a.bin byte 4'],
    ['in an archive', 'a.zip', zip('b/c.txt', strToU8(`\n${NAME}`)), 'a.zip > b/c.txt 2:1'],
    [
      'in base64',
      'a.txt',
      `calm\n${Buffer.from(`lake and ${NAME}, for one`).toString('base64')}`,
      'a.txt > base64 at 2:1 1:10',
    ],
  ])('%s', (_what, file, bytes, place) => {
    expect(audit(file, bytes)).toEqual([`${place}  the name Ysolde Marrack`]);
  });

  it('the first of many, in each part', () => {
    const twice = zipSync({ a: strToU8(`x ${NAME} ${NAME}`), b: strToU8(NAME) });
    expect(audit('a.zip', twice)).toEqual([
      'a.zip > a 1:3  the name Ysolde Marrack',
      'a.zip > b 1:1  the name Ysolde Marrack',
    ]);
  });
});
