import type { Face } from '../../typeset/index.js';
import { drawingFont } from './drawing-font.js';

/**
 * The name under which each face is registered in a document. Faces of the same bytes share one,
 * since the library opens a font anew at each use where the same font is there under another name.
 */
export class FontKeys {
  readonly #doc: PDFKit.PDFDocument;
  readonly #keys = new Map<Face, string>();

  constructor(doc: PDFKit.PDFDocument) {
    this.#doc = doc;
  }

  keyOf(face: Face): string {
    const known = this.#keys.get(face);
    if (known !== undefined) return known;
    const twin = [...this.#keys].find(([other]) => sameBytes(other.bytes, face.bytes));
    const key = twin?.[1] ?? this.#register(face);
    this.#keys.set(face, key);
    return key;
  }

  #register({ bytes }: Face): string {
    const key = `font ${String(this.#keys.size + 1)}`;
    this.#doc.registerFont(key, drawingFont(bytes));
    return key;
  }
}

function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  return a === b || (a.length === b.length && a.every((byte, index) => byte === b[index]));
}
