import { deflateSync, gzipSync } from 'node:zlib';

import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';

import { auditSite, sayAuditPlace } from '../../pipeline/audit/index.js';
import { png } from './containers.js';
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
const wide = (text: string): Buffer => Buffer.from(text, 'utf16le').swap16();
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
    const told = gzipSync(gzipSync(gzipSync(strToU8(NAME))));
    expect(audit('a.gz', told)).toEqual([
      `a.gz > unpacked > unpacked > unpacked 1:1  the name ${NAME}`,
    ]);
  });

  it('and words in base64 are, three times and within what is packed', () => {
    const text = `we saw ${NAME} here`;
    const once = (words: string): string => Buffer.from(words).toString('base64');
    const places = audit('a.txt', once(once(once(text))));
    expect(places).toEqual([
      `a.txt > base64 at 1:1 > base64 at 1:1 > base64 at 1:1 1:8  the name ${NAME}`,
    ]);
    expect(audit('a.gz', gzipSync(once(once(once(text)))))).toHaveLength(1);
  });

  it('packed words of a picture that are damaged are a finding', () => {
    const data = Buffer.concat([Buffer.from('Title\0\0'), Buffer.from('no such thing')]);
    expect(audit('a.png', png('zTXt', data))).toEqual([`a.png > zTXt  ${CLOSED}: it is damaged`]);
  });
});

describe('a finding says where it is', () => {
  it.each([
    ['a line of text', 'a.txt', `calm\r\nlake ${NAME}`, 'a.txt 2:6'],
    ['after an escape', 'a.html', `<p>caf&eacute;\n&amp; ${NAME}`, 'a.html 2:7'],
    ['after tags', 'a.html', `<ul>\n<li>\n<b>${NAME}`, 'a.html 3:4'],
    ['in an attribute', 'a.html', `<p>\n<img alt="${NAME}">`, 'a.html 2:11'],
    ['within an escape', 'a.json', `["\\u0059solde Marrack"]`, 'a.json 1:3'],
    ['at an escape of an escape', 'a.html', `<p>lake &amp;#89;solde Marrack`, 'a.html 1:9'],
    ['after an escape of an escape', 'a.html', `<p>&amp;#89; &#38;lt; ${NAME}`, 'a.html 1:23'],
    ['before an escape', 'a.html', `<p>${NAME}&#46;`, 'a.html 1:4'],
    // All escapes in a row are one: the place is within them.
    ['within many escapes', 'a.txt', 'lake %41%20%59solde Marrack', 'a.txt 1:8'],
    ['after many escapes', 'a.txt', `lake %41%20%42 ${NAME}`, 'a.txt 1:16'],
    ['an escape among bytes', 'a.bin', '\0\x01\x02 l&#97;ke &#89;solde Marrack', 'a.bin byte 13'],
    ['UTF-16, high byte first', 'a.csv', wide(`\ufeff1,${NAME}`), 'a.csv 1:3'],
    [
      'UTF-16 among bytes, high byte first',
      'a.bin',
      Buffer.concat([Buffer.from([1, 2, 0xff, 0xff]), wide(NAME), Buffer.from([0xff, 0xff])]),
      'a.bin byte 4',
    ],
    [
      'in packed words of a picture',
      'a.png',
      png('zTXt', Buffer.concat([Buffer.from('Title\0\0'), deflateSync(`\n${NAME}`)])),
      'a.png > zTXt 2:1',
    ],
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
