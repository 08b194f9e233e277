import { Unzip, UnzipInflate } from 'fflate';

import { TableError } from './grid.js';

/** Most bytes of a file, and of what is packed in it. */
export const LARGEST_FILE = 32 * 1024 * 1024;
const LARGEST_UNPACKED = 128 * 1024 * 1024;
const MOST_PARTS = 5000;

const MIB = 1024 * 1024;

/** What is said of a file that is too large to be looked at. */
export function tooLarge(): TableError {
  return new TableError(
    `the file is larger than ${String(LARGEST_FILE / MIB)} MiB: a sheet of cards has no pictures in it`,
  );
}

/** The XML parts of a workbook: names in small letters, since they are compared so, to bytes. */
export type Parts = ReadonlyMap<string, Uint8Array>;

/**
 * Unpacks the XML of a workbook, and stops where more comes out than a workbook holds, whatever the
 * archive says of its sizes.
 * @throws TableError for what is no workbook, or too large.
 */
export function unpack(bytes: Uint8Array): Parts {
  if (bytes.length > LARGEST_FILE) throw tooLarge();
  if (isOldWorkbook(bytes)) {
    throw new TableError(
      'this is an .xls file, or one with a password: save it as .xlsx without a password',
    );
  }
  const parts = new Map<string, Uint8Array>();
  let unpacked = 0;
  for (const [name, part] of partsOf(bytes, (more) => {
    unpacked += more;
    if (unpacked > LARGEST_UNPACKED) throw tooFull();
  })) {
    parts.set(name.toLowerCase(), part);
  }
  if (parts.size === 0) throw noWorkbook();
  return parts;
}

function tooFull(): TableError {
  return new TableError(
    `the workbook unpacks to more than ${String(LARGEST_UNPACKED / MIB)} MiB: it is not opened`,
  );
}

function noWorkbook(): TableError {
  return new TableError('this is no .xlsx workbook: save the sheet as .xlsx or .csv');
}

/** Compound File Binary, which older programs and passwords make: [MS-CFB], 2.2. */
function isOldWorkbook(bytes: Uint8Array): boolean {
  return [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1].every((octet, at) => bytes[at] === octet);
}

/** So many packed bytes at a time: at most a thousandfold comes out before it is counted. */
const STEP = 16 * 1024;

/**
 * The XML parts, unpacked piece by piece.
 * @param count told how many more bytes came out; it throws to stop.
 */
function partsOf(
  bytes: Uint8Array,
  count: (more: number) => void,
): readonly (readonly [string, Uint8Array])[] {
  const parts: { name: string; pieces: Uint8Array[]; done: boolean }[] = [];
  const unzip = new Unzip((file) => {
    if (!/\.(?:xml|rels)$/i.test(file.name)) return;
    if (parts.length >= MOST_PARTS) throw tooFull();
    const part = { name: file.name, pieces: new Array<Uint8Array>(), done: false };
    parts.push(part);
    file.ondata = (error, piece, final) => {
      if (error) throw error;
      count(piece.length);
      part.pieces.push(piece);
      part.done = final;
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length; at += STEP) {
      unzip.push(bytes.subarray(at, at + STEP), at + STEP >= bytes.length);
    }
  } catch (error) {
    if (error instanceof TableError) throw error;
    throw noWorkbook();
  }
  if (parts.some(({ done }) => !done)) throw noWorkbook();
  return parts.map(({ name, pieces }) => [name, joined(pieces)]);
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const [only] = pieces;
  if (only && pieces.length === 1) return only;
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
