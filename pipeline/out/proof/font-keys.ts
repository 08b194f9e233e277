import type { Face } from '../../typeset/index.js';
import { drawingFont } from './drawing-font.js';
import { unpackWoff } from './woff.js';

/** Font files by face, unpacked; faces of the same bytes share one. */
export type FontFiles = ReadonlyMap<Face, Uint8Array>;

/** Unpacks the files of all faces that a document may draw with. */
export async function unpackFonts(faces: Iterable<Face>): Promise<FontFiles> {
  const files = new Map<Face, Uint8Array>();
  for (const face of new Set(faces)) {
    const twin = [...files].find(([other]) => sameBytes(other.bytes, face.bytes));
    files.set(face, twin?.[1] ?? (await unpackWoff(face.bytes)));
  }
  return files;
}

/**
 * The name under which each face is registered in a document. A file is registered once: the
 * library opens a font anew at each use where the same font is there under another name.
 */
export class FontKeys {
  readonly #doc: PDFKit.PDFDocument;
  readonly #files: FontFiles;
  readonly #keys = new Map<Uint8Array, string>();

  constructor(doc: PDFKit.PDFDocument, files: FontFiles) {
    this.#doc = doc;
    this.#files = files;
  }

  keyOf(face: Face): string {
    const file = this.#files.get(face) ?? face.bytes;
    const known = this.#keys.get(file);
    if (known !== undefined) return known;
    const key = `font ${String(this.#keys.size + 1)}`;
    this.#doc.registerFont(key, drawingFont(file));
    this.#keys.set(file, key);
    return key;
  }
}

function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  return a === b || (a.length === b.length && a.every((byte, index) => byte === b[index]));
}
