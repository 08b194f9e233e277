/**
 * Unpacks a WOFF 1 file to the TrueType or OpenType file inside (W3C, WOFF File Format 1.0, sections
 * 3 to 5). The font library would inflate the table of outlines anew for every glyph that it embeds.
 * Other kinds of file come back as they are.
 */
export async function unpackWoff(bytes: Uint8Array): Promise<Uint8Array> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (view.getUint32(0) !== WOFF) return bytes;
  const count = view.getUint16(12);
  const tables = await Promise.all(
    Array.from({ length: count }, (_, index) => unpackTable(bytes, view, 44 + 20 * index)),
  );
  return sfntOf(view.getUint32(4), tables);
}

/** The signature `wOFF`. */
const WOFF = 0x774f4646;

interface Table {
  readonly tag: number;
  readonly checksum: number;
  readonly data: Uint8Array;
}

async function unpackTable(bytes: Uint8Array, view: DataView, entry: number): Promise<Table> {
  const offset = view.getUint32(entry + 4);
  const packed = view.getUint32(entry + 8);
  const length = view.getUint32(entry + 12);
  const data = bytes.slice(offset, offset + packed);
  return {
    tag: view.getUint32(entry),
    checksum: view.getUint32(entry + 16),
    data: packed < length ? await inflate(data) : data,
  };
}

async function inflate(data: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const inflated = new Blob([data]).stream().pipeThrough(new DecompressionStream('deflate'));
  return new Uint8Array(await new Response(inflated).arrayBuffer());
}

/** Puts tables into one file, as "Organization of an OpenType Font" of OpenType 1.9 says. */
function sfntOf(flavour: number, tables: readonly Table[]): Uint8Array {
  const directory = 12 + 16 * tables.length;
  const size = tables.reduce((sum, { data }) => sum + padded(data.length), directory);
  const bytes = new Uint8Array(size);
  const view = new DataView(bytes.buffer);
  const power = Math.floor(Math.log2(tables.length));
  view.setUint32(0, flavour);
  view.setUint16(4, tables.length);
  view.setUint16(6, 16 * 2 ** power);
  view.setUint16(8, power);
  view.setUint16(10, 16 * (tables.length - 2 ** power));
  let at = directory;
  tables.forEach(({ tag, checksum, data }, index) => {
    [tag, checksum, at, data.length].forEach((value, field) => {
      view.setUint32(12 + 16 * index + 4 * field, value);
    });
    bytes.set(data, at);
    at += padded(data.length);
  });
  return bytes;
}

/** Tables start at multiples of four bytes. */
function padded(length: number): number {
  return Math.ceil(length / 4) * 4;
}
