import { createHash } from 'node:crypto';

import type { Eyes } from '../audit/index.js';
import { rasterise, readArt, type Folder } from '../read/index.js';

/**
 * How the audit sees art: that of a content folder, and pictures drawn small, each once for as long
 * as the eyes are kept.
 */
export function auditEyes(folder: Folder): Eyes {
  const drawn = new Map<string, Promise<Uint8Array>>();
  return {
    art: (path) => {
      try {
        return readArt(folder, path);
      } catch {
        return null;
      }
    },
    draw: (picture, width) => {
      const key = `${String(width)} ${digestOf(picture).toString('hex')}`;
      const known = drawn.get(key) ?? rasterise(picture, width, 'png').then(({ bytes }) => bytes);
      drawn.set(key, known);
      return known;
    },
    digest: (bytes) => Promise.resolve(digestOf(bytes)),
  };
}

function digestOf(bytes: Uint8Array): Buffer {
  return createHash('sha256').update(bytes).digest();
}
