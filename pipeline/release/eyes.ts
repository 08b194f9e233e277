import { createHash } from 'node:crypto';

import type { Eyes } from '../audit/index.js';
import { rasterise, readArt, type Folder } from '../read/index.js';
import { remembered } from './remembered.js';

const small = remembered((picture, width) => rasterise(picture, width, 'png'));

/**
 * How the audit sees art: that of a content folder, and pictures drawn small, each once for as long
 * as the process runs.
 */
export function auditEyes(folder: Folder): Eyes {
  return {
    art: (path) => {
      try {
        return readArt(folder, path);
      } catch {
        return null;
      }
    },
    draw: async (picture, width) => (await small(picture, width)).bytes,
    digest: (bytes) => Promise.resolve(createHash('sha256').update(bytes).digest()),
  };
}
