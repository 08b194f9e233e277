/**
 * The outside of a font file, read by hand: the font library opens kinds of file that cannot be
 * embedded afterwards, and swallows damage to a table.
 */
export interface FontFile {
  readonly kind: 'truetype' | 'opentype' | 'woff' | 'woff2' | 'collection' | 'unknown';
  /** Tags of the tables, where the kind is one that is read. */
  readonly tables: ReadonlySet<string>;
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

function tag(bytes: Uint8Array, at: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + 4));
}

/** Reads kind and table tags (OpenType 1.9 "Table Directory"; WOFF 1.0 sections 3 and 4). */
export function readFontFile(bytes: Uint8Array): FontFile {
  const kind = SIGNATURES.get(tag(bytes, 0)) ?? 'unknown';
  const tables = new Set<string>();
  if (kind === 'woff2' || kind === 'collection' || kind === 'unknown') return { kind, tables };
  const { count, first, entry } = DIRECTORY[kind];
  if (bytes.length < first) return { kind: 'unknown', tables };
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let index = 0; index < view.getUint16(count); index += 1) {
    tables.add(tag(bytes, first + index * entry));
  }
  return { kind, tables };
}
