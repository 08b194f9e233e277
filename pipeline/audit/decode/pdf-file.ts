import { latin1 } from './characters.js';
import type { Purse } from './piece.js';
import { decodeStream } from './pdf-filters.js';
import { isPdf, PdfReader, type PdfDictionary, type PdfValue } from './pdf-values.js';

/** An object of a PDF file; the same number may stand for several, of which the last counts. */
export interface PdfObject {
  readonly number: number;
  readonly value: PdfValue;
  /** The packed bytes of a stream, or null. */
  readonly stream: Uint8Array | null;
}

export interface PdfFile {
  /** Every object that stands in the file, those of earlier revisions too. */
  readonly objects: readonly PdfObject[];
  /** The object that counts for a number. */
  readonly byNumber: ReadonlyMap<number, PdfObject>;
  /** Streams of objects that cannot be unpacked, so that nobody knows what objects are in them. */
  readonly closed: readonly PdfObject[];
  readonly encrypted: boolean;
}

/**
 * Finds all objects of a PDF file by looking for them, and in streams of objects (ISO 32000-1, 7.5.7);
 * tables that say where they stand are not trusted.
 */
export function pdfFile(bytes: Uint8Array, purse: Purse): PdfFile {
  const text = latin1(bytes);
  const plain = Array.from(text.matchAll(/(?<![0-9])(\d{1,10})[\s\0]+\d{1,5}[\s\0]+obj\b/g)).map(
    (match) => objectAt(text, bytes, Number(match[1]), match.index + match[0].length),
  );
  const byPlainNumber = new Map(plain.map((object) => [object.number, object]));
  const packed = plain
    .filter(({ value }) => isTyped(value, 'ObjStm'))
    .map((object) => ({ object, within: objectsIn(object, byPlainNumber, purse) }));
  const objects = [...packed.flatMap(({ within }) => within ?? []), ...plain];
  const trailers = Array.from(text.matchAll(/\btrailer\b/g)).map((match) =>
    new PdfReader(text, match.index + match[0].length).next(),
  );
  const heads = [
    ...trailers,
    ...plain.map(({ value }) => value).filter((value) => isTyped(value, 'XRef')),
  ];
  return {
    objects: [
      ...objects,
      ...trailers.map((value) => ({ number: -1, value: value ?? null, stream: null })),
    ],
    byNumber: new Map(objects.map((object) => [object.number, object])),
    closed: packed.flatMap(({ object, within }) => (within ? [] : [object])),
    encrypted: heads.some((head) => entryOf(head, 'Encrypt') !== undefined),
  };
}

function objectAt(text: string, bytes: Uint8Array, number: number, at: number): PdfObject {
  const reader = new PdfReader(text, at);
  const value = reader.next() ?? null;
  const after = /^[\s\0]*stream(?:\r\n|\n|\r)?/.exec(text.slice(reader.at, reader.at + 64));
  if (!after) return { number, value, stream: null };
  const from = reader.at + after[0].length;
  const length = entryOf(value, 'Length');
  const stated = typeof length === 'number' ? from + length : -1;
  const isRight = stated > 0 && /^\s*endstream/.test(text.slice(stated, stated + 20));
  const found = isRight ? stated : text.indexOf('endstream', from);
  return { number, value, stream: bytes.subarray(from, found < 0 ? bytes.length : found) };
}

/** The objects of a stream of objects; null if it cannot be unpacked. */
function objectsIn(
  object: PdfObject,
  byNumber: ReadonlyMap<number, PdfObject>,
  purse: Purse,
): PdfObject[] | null {
  const decoded = decodeStream(object, byNumber, purse);
  const first = resolved(entryOf(object.value, 'First'), byNumber);
  if (!decoded.ok || typeof first !== 'number') return null;
  const text = latin1(decoded.bytes);
  const heads = text.slice(0, first).trim().split(/\s+/).map(Number);
  return heads.flatMap((number, index) => {
    const offset = heads[index + 1];
    if (index % 2 === 1 || offset === undefined) return [];
    return [{ number, value: new PdfReader(text, first + offset).next() ?? null, stream: null }];
  });
}

function isTyped(value: PdfValue, type: string): boolean {
  return nameOf(entryOf(value, 'Type')) === type;
}

/** An entry of a dictionary, as it stands there. */
export function entryOf(value: PdfValue | undefined, key: string): PdfValue | undefined {
  return isPdf(value, 'dictionary') ? value.entries.get(key) : undefined;
}

export function nameOf(value: PdfValue | undefined): string | null {
  return isPdf(value, 'name') ? value.name : null;
}

/** What a value stands for, where it refers to an object. */
export function resolved(
  value: PdfValue | undefined,
  byNumber: ReadonlyMap<number, PdfObject>,
): PdfValue | undefined {
  let found = value;
  for (let step = 0; step < 8 && isPdf(found, 'reference'); step += 1) {
    found = byNumber.get(found.number)?.value;
  }
  return found;
}

/** A dictionary, or one with nothing in it. */
export function dictionaryOf(
  value: PdfValue | undefined,
  byNumber: ReadonlyMap<number, PdfObject>,
): PdfDictionary {
  const found = resolved(value, byNumber);
  return isPdf(found, 'dictionary') ? found : { is: 'dictionary', entries: new Map() };
}
