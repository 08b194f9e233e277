import { inflateSync } from 'node:zlib';

/**
 * The outside of a font file, read by hand: the font library opens kinds of file that cannot be
 * embedded afterwards, swallows damage to a table, and never returns from a table that is cut short.
 */
export interface FontFile {
  readonly kind: 'truetype' | 'opentype' | 'woff' | 'woff2' | 'collection' | 'unknown';
  /** Tags of the tables, where the kind is one that is read. */
  readonly tables: ReadonlySet<string>;
  /** Tags of tables that end before they should or do not unpack. */
  readonly damaged: readonly string[];
}

/** Where the list of tables starts, how long an entry is, and where their number stands, in bytes. */
const DIRECTORY = {
  truetype: { count: 4, first: 12, entry: 16 },
  opentype: { count: 4, first: 12, entry: 16 },
  woff: { count: 12, first: 44, entry: 20 },
} as const;

const SIGNATURES: ReadonlyMap<string, FontFile['kind']> = new Map([
  ['\u0000\u0001\u0000\u0000', 'truetype'],
  ['true', 'truetype'],
  ['OTTO', 'opentype'],
  ['wOFF', 'woff'],
  ['wOF2', 'woff2'],
  ['ttcf', 'collection'],
]);

/** Reads kind and tables (OpenType 1.9 "Table Directory"; WOFF 1.0 sections 3 to 5). */
export function readFontFile(bytes: Uint8Array): FontFile {
  const kind = SIGNATURES.get(tagAt(bytes, 0)) ?? 'unknown';
  const tables = new Set<string>();
  const damaged: string[] = [];
  if (kind === 'woff2' || kind === 'collection' || kind === 'unknown') {
    return { kind, tables, damaged };
  }
  const { count, first, entry } = DIRECTORY[kind];
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tableCount = bytes.length < first ? 0 : view.getUint16(count);
  if (bytes.length < first + tableCount * entry) return { kind: 'unknown', tables, damaged };
  for (let at = first; at < first + tableCount * entry; at += entry) {
    const tag = tagAt(bytes, at);
    tables.add(tag);
    const whole = kind === 'woff' ? unpacks(bytes, view, at) : isInside(bytes, view, at + 8);
    if (!whole) damaged.push(tag);
  }
  return { kind, tables, damaged };
}

function tagAt(bytes: Uint8Array, at: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + 4));
}

/** An offset and a length stand at `at`. */
function isInside(bytes: Uint8Array, view: DataView, at: number): boolean {
  return view.getUint32(at) + view.getUint32(at + 4) <= bytes.length;
}

/** A table of a WOFF file: tag, offset, packed length, length, checksum. */
function unpacks(bytes: Uint8Array, view: DataView, at: number): boolean {
  if (!isInside(bytes, view, at + 4)) return false;
  const from = view.getUint32(at + 4);
  const packed = view.getUint32(at + 8);
  const length = view.getUint32(at + 12);
  if (packed === length) return true;
  try {
    return inflateSync(bytes.subarray(from, from + packed)).length === length;
  } catch {
    return false;
  }
}
