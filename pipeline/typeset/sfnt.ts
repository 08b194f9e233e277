import { unzlibSync } from 'fflate';

/**
 * The outside of a font file, read by hand: the font library opens kinds of file that cannot be
 * embedded afterwards, swallows damage to a table, and never returns from one that is cut short.
 */
export interface FontFile {
  readonly kind: 'truetype' | 'opentype' | 'woff' | 'woff2' | 'collection' | 'unknown';
  readonly tables: readonly Table[];
  /** Tags of tables that end before they should or do not unpack. */
  readonly damaged: readonly string[];
}

/** A table of a font, unpacked. */
export interface Table {
  readonly tag: string;
  readonly checksum: number;
  readonly bytes: Uint8Array;
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

/** Zeros after the last table: the font library reads past a glyph without outline that ends a file. */
const PADDING = 16;

/** Reads kind and tables (OpenType 1.9 "Table Directory"; WOFF 1.0 sections 3 to 5). */
export function readFontFile(bytes: Uint8Array): FontFile {
  const kind = SIGNATURES.get(tagAt(bytes, 0)) ?? 'unknown';
  if (kind === 'woff2' || kind === 'collection' || kind === 'unknown') {
    return { kind, tables: [], damaged: [] };
  }
  const { count, first, entry } = DIRECTORY[kind];
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tableCount = bytes.length < first ? 0 : view.getUint16(count);
  if (tableCount === 0 || bytes.length < first + tableCount * entry) {
    return { kind: 'unknown', tables: [], damaged: [] };
  }
  const tables: Table[] = [];
  const damaged: string[] = [];
  for (let at = first; at < first + tableCount * entry; at += entry) {
    const tag = tagAt(bytes, at);
    const table = kind === 'woff' ? packedTable(bytes, view, at) : plainTable(bytes, view, at);
    if (table) tables.push({ tag, ...table });
    else damaged.push(tag);
  }
  return { kind, tables, damaged };
}

function tagAt(bytes: Uint8Array, at: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + 4));
}

type TableBody = Omit<Table, 'tag'>;

/** An entry of an sfnt file: tag, checksum, offset, length. */
function plainTable(bytes: Uint8Array, view: DataView, at: number): TableBody | null {
  const body = slice(bytes, view.getUint32(at + 8), view.getUint32(at + 12));
  return body && { checksum: view.getUint32(at + 4), bytes: body };
}

/** An entry of a WOFF file: tag, offset, packed length, length, checksum. */
function packedTable(bytes: Uint8Array, view: DataView, at: number): TableBody | null {
  const packed = slice(bytes, view.getUint32(at + 4), view.getUint32(at + 8));
  const length = view.getUint32(at + 12);
  const body = packed && packed.length !== length ? inflated(packed) : packed;
  return body?.length === length ? { checksum: view.getUint32(at + 16), bytes: body } : null;
}

function slice(bytes: Uint8Array, from: number, length: number): Uint8Array | null {
  return from + length <= bytes.length ? bytes.subarray(from, from + length) : null;
}

function inflated(packed: Uint8Array): Uint8Array | null {
  try {
    return unzlibSync(packed);
  } catch {
    return null;
  }
}

/** The file of these tables without packing: what the font library reads and what is embedded. */
export function plainFile(tables: readonly Table[]): Uint8Array {
  const { first, entry } = DIRECTORY.truetype;
  const sizes = tables.map((table) => Math.ceil(table.bytes.length / 4) * 4);
  const length = first + tables.length * entry + sizes.reduce((sum, size) => sum + size, PADDING);
  const file = new Uint8Array(length);
  const view = new DataView(file.buffer);
  const outlines = tables.some((table) => table.tag.startsWith('CFF'));
  view.setUint32(0, outlines ? 0x4f54544f : 0x00010000);
  view.setUint16(4, tables.length);
  const power = Math.floor(Math.log2(tables.length));
  view.setUint16(6, 2 ** power * 16);
  view.setUint16(8, power);
  view.setUint16(10, (tables.length - 2 ** power) * 16);
  let offset = first + tables.length * entry;
  tables.forEach(({ tag, checksum, bytes }, index) => {
    const at = first + index * entry;
    for (let letter = 0; letter < 4; letter += 1) file[at + letter] = tag.charCodeAt(letter);
    view.setUint32(at + 4, checksum);
    view.setUint32(at + 8, offset);
    view.setUint32(at + 12, bytes.length);
    file.set(bytes, offset);
    offset += sizes[index] ?? 0;
  });
  return file;
}
