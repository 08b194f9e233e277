import { crc32, deflateSync, gzipSync } from 'node:zlib';

import { strToU8, zipSync } from 'fflate';
import PDFDocument from 'pdfkit';

import type { Hiding } from './planted.js';

const bytes = (text: string): Buffer => Buffer.from(text, 'utf8');
const latin1 = (text: string): Buffer => Buffer.from(text, 'latin1');
const high = (number: number, size: 2 | 4): Buffer => {
  const buffer = Buffer.alloc(size);
  buffer.writeUIntBE(number, 0, size);
  return buffer;
};
const low = (number: number, size: 2 | 4): Buffer => high(number, size).reverse();

/** A chunk of a PNG file: length, kind, data, check. */
function chunk(kind: string, data: Buffer): Buffer {
  const body = Buffer.concat([latin1(kind), data]);
  return Buffer.concat([high(data.length, 4), body, high(crc32(body), 4)]);
}

/** A PNG picture of one grey pixel with a chunk of its own. */
export function png(kind: string, data: Buffer, after: Buffer = Buffer.alloc(0)): Buffer {
  const head = Buffer.concat([high(1, 4), high(1, 4), Buffer.from([8, 0, 0, 0, 0])]);
  return Buffer.concat([
    latin1('\x89PNG\r\n\x1a\n'),
    chunk('IHDR', head),
    chunk(kind, data),
    chunk('IDAT', deflateSync(Buffer.from([0, 128]))),
    chunk('IEND', Buffer.alloc(0)),
    after,
  ]);
}

/** A JPEG file of headers, a scan and an end: nothing but the headers is looked at. */
function jpeg(...segments: readonly (readonly [marker: number, data: Buffer])[]): Buffer {
  const headers = segments.map(([marker, data]) =>
    Buffer.concat([Buffer.from([0xff, marker]), high(data.length + 2, 2), data]),
  );
  const scan = Buffer.from([0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0, 0x12, 0xff, 0, 0x34, 0xff, 0xd9]);
  return Buffer.concat([Buffer.from([0xff, 0xd8]), ...headers, scan]);
}

function webp(kind: string, data: Buffer): Buffer {
  const padded = data.length % 2 === 0 ? data : Buffer.concat([data, Buffer.alloc(1)]);
  const body = Buffer.concat([
    latin1('WEBP'),
    latin1('VP8L'),
    low(2, 4),
    Buffer.from([0x2f, 0]),
    latin1(kind),
    low(data.length, 4),
    padded,
  ]);
  return Buffer.concat([latin1('RIFF'), low(body.length, 4), body]);
}

/** A GIF file of one extension: its blocks have up to 255 bytes each; `most` makes them shorter. */
function gif(label: number, data: Buffer, most = 255): Buffer {
  const blocks: Buffer[] = [];
  for (let at = 0; at < data.length; at += most) {
    const block = data.subarray(at, at + most);
    blocks.push(Buffer.from([block.length]), block);
  }
  return Buffer.concat([
    latin1('GIF89a'),
    Buffer.from([1, 0, 1, 0, 0, 0, 0, 0x21, label]),
    ...blocks,
    Buffer.from([0, 0x3b]),
  ]);
}

/** Exif: a head, and a string as a camera or a program writes it. */
const exif = (text: Buffer): Buffer =>
  Buffer.concat([latin1('Exif\0\0II*\0\x08\0\0\0\x01\0\x0e\x01\x02\0'), text, Buffer.alloc(2)]);

const wide = (text: string): Buffer => Buffer.from(text, 'utf16le');
const wideHighFirst = (text: string): Buffer => wide(text).swap16();
const xmp = (text: string): Buffer =>
  bytes(`<x:xmpmeta><dc:description>${text.replace(/&/g, '&amp;')}</dc:description></x:xmpmeta>`);

/** A text that a PDF shows, or that stands in its metadata. */
export function pdfOf(
  options: PDFKit.PDFDocumentOptions,
  draw: (document: PDFKit.PDFDocument) => void,
): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    const document = new PDFDocument(options);
    const parts: Buffer[] = [];
    document.on('data', (part: Buffer) => parts.push(part));
    document.on('end', () => {
      resolve(Buffer.concat(parts));
    });
    document.on('error', reject);
    draw(document);
    document.end();
  });
}

const zipped = (name: string, content: Buffer, level: 0 | 9): Uint8Array =>
  zipSync({ [name]: content, 'other.txt': strToU8('The lake is calm.') }, { level });

/** Files that hold a text in the way of their format, so that a reader of it gets the text back. */
export const CONTAINERS: readonly Hiding[] = [
  { way: 'PNG tEXt', file: 'a.png', hide: (text) => png('tEXt', latin1(`Title\0${text}`)) },
  {
    way: 'PNG zTXt',
    file: 'a.png',
    hide: (text) => png('zTXt', Buffer.concat([latin1('Title\0\0'), deflateSync(latin1(text))])),
  },
  {
    way: 'PNG iTXt',
    file: 'a.png',
    hide: (text) => png('iTXt', bytes(`Title\0\0\0en\0Titel\0${text}`)),
  },
  {
    way: 'PNG iTXt, packed',
    file: 'a.png',
    hide: (text) =>
      png('iTXt', Buffer.concat([bytes('Title\0\x01\0en\0Titel\0'), deflateSync(bytes(text))])),
  },
  { way: 'PNG eXIf', file: 'a.png', hide: (text) => png('eXIf', exif(bytes(`${text}\0`))) },
  { way: 'a chunk of its own', file: 'a.png', hide: (text) => png('noTe', bytes(text)) },
  {
    way: 'after a picture',
    file: 'a.png',
    hide: (text) => png('tIME', Buffer.alloc(7), bytes(text)),
  },
  { way: 'JPEG comment', file: 'a.jpg', hide: (text) => jpeg([0xfe, latin1(text)]) },
  {
    way: 'JPEG Exif',
    file: 'a.jpg',
    hide: (text) => jpeg([0xe1, exif(bytes(`${text}\0`))]),
  },
  {
    way: 'JPEG Exif in UTF-16',
    file: 'a.jpg',
    hide: (text) => jpeg([0xe1, exif(wide(`${text}\0`))]),
  },
  {
    way: 'JPEG Exif in UTF-16, high byte first',
    file: 'a.jpg',
    hide: (text) => jpeg([0xe1, exif(wideHighFirst(`${text}\0`))]),
  },
  {
    way: 'JPEG XMP',
    file: 'a.jpg',
    hide: (text) =>
      jpeg([0xe1, Buffer.concat([latin1('http://ns.adobe.com/xap/1.0/\0'), xmp(text)])]),
  },
  {
    way: 'JPEG XMP in parts',
    file: 'a.jpg',
    hide: (text) => {
      const all = xmp(text);
      const middle = Math.floor(all.length / 2);
      const part = (data: Buffer, from: number): [number, Buffer] => [
        0xe1,
        Buffer.concat([
          latin1(`http://ns.adobe.com/xmp/extension/\0${'A'.repeat(32)}`),
          high(all.length, 4),
          high(from, 4),
          data,
        ]),
      ];
      return jpeg(part(all.subarray(0, middle), 0), part(all.subarray(middle), middle));
    },
  },
  {
    way: 'JPEG header of a program',
    file: 'a.jpg',
    hide: (text) => jpeg([0xed, latin1(`Photo 3.0\x008BIM\x04\x04\0\0\0\x1c\x02\x78\0${text}\0`)]),
  },
  { way: 'WebP Exif', file: 'a.webp', hide: (text) => webp('EXIF', exif(bytes(`${text}\0`))) },
  { way: 'WebP XMP', file: 'a.webp', hide: (text) => webp('XMP ', xmp(text)) },
  { way: 'GIF comment', file: 'a.gif', hide: (text) => gif(0xfe, latin1(text)) },
  { way: 'GIF comment in blocks', file: 'a.gif', hide: (text) => gif(0xfe, latin1(text), 7) },
  {
    way: 'GIF application',
    file: 'a.gif',
    hide: (text) => gif(0xff, Buffer.concat([latin1('XMP DataXMP'), xmp(text)])),
  },
  { way: 'zip, packed', file: 'a.zip', hide: (text) => zipped('a.txt', bytes(text), 9) },
  { way: 'zip, stored', file: 'a.zip', hide: (text) => zipped('a.txt', bytes(text), 0) },
  {
    way: 'zip in zip',
    file: 'a.zip',
    hide: (text) => zipped('b.zip', Buffer.from(zipped('a.txt', bytes(text), 9)), 9),
  },
  {
    way: 'gzip in zip in zip',
    file: 'a.epub',
    hide: (text) => {
      const inner = zipped('a.json.gz', gzipSync(JSON.stringify({ text })), 0);
      return zipped('b.zip', Buffer.from(inner), 0);
    },
  },
  {
    way: 'picture in zip',
    file: 'a.zip',
    hide: (text) => zipped('a.png', png('tEXt', latin1(`Title\0${text}`)), 9),
  },
  {
    way: 'the name of an entry of a zip',
    file: 'a.zip',
    hide: (text) => zipped(`${text}.txt`, bytes('calm'), 9),
  },
  {
    way: 'between entries of a zip',
    file: 'a.zip',
    hide: (text) => hiddenInZip(bytes(text)),
  },
  {
    way: 'zip as base64',
    file: 'a.html',
    hide: (text) => {
      const zip = Buffer.from(zipped('a.txt', bytes(text), 9)).toString('base64');
      return `<!doctype html><a href="data:application/zip;base64,${zip}">all</a>`;
    },
  },
  {
    way: 'the name in the head of gzip',
    file: 'a.gz',
    hide: (text) => {
      const whole = gzipSync('calm');
      const head = Buffer.from(whole.subarray(0, 10));
      head[3] = 8;
      return Buffer.concat([head, latin1(`${text}\0`), whole.subarray(10)]);
    },
  },
  {
    way: 'Windows-1252',
    file: 'a.txt',
    hide: (text) => latin1(`caf\xe9 \x93${text.replace(/e/g, '\xe9')}\x94 caf\xe9`),
  },
  {
    way: 'UTF-16, high byte first',
    file: 'a.csv',
    hide: (text) => Buffer.concat([Buffer.from([0xfe, 0xff]), wideHighFirst(`"a","${text}"`)]),
  },
];

/** A zip with an entry's data that its list does not name. */
function hiddenInZip(data: Buffer): Uint8Array {
  const zip = Buffer.from(zipSync({ 'other.txt': strToU8('The lake is calm.') }, { level: 0 }));
  const list = zip.indexOf('PK\x01\x02', 0, 'latin1');
  const moved = Buffer.concat([zip.subarray(0, list), data, zip.subarray(list)]);
  const end = moved.indexOf('PK\x05\x06', 0, 'latin1');
  moved.writeUInt32LE(list + data.length, end + 16);
  return moved;
}
