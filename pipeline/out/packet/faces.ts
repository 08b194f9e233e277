import type { Face, Faces } from '../../typeset/index.js';
import { packed } from './packed.js';
import type { FaceKeys } from './page-data.js';

/** Gives each face of a page a key, the same for the same face. */
export class FaceList {
  readonly #keys = new Map<Face, string>();

  keyOf(face: Face): string {
    const known = this.#keys.get(face);
    if (known !== undefined) return known;
    const key = `f${String(this.#keys.size)}`;
    this.#keys.set(face, key);
    return key;
  }

  keysOf({ regular, italic, bold, boldItalic }: Faces): FaceKeys {
    return {
      regular: this.keyOf(regular),
      italic: this.keyOf(italic),
      bold: this.keyOf(bold),
      boldItalic: this.keyOf(boldItalic),
    };
  }

  get keys(): readonly string[] {
    return [...this.#keys.values()];
  }

  /** The files of all faces by key: TrueType, packed by DEFLATE, in base64. */
  packed(): readonly (readonly [key: string, file: string])[] {
    return [...this.#keys].map(([face, key]) => [key, packed(face.bytes)] as const);
  }
}
