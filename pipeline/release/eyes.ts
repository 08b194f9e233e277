import { createHash } from 'node:crypto';

import type { Eyes } from '../audit/index.js';
import { rasterise, readArt, type Folder } from '../read/index.js';

/** How the audit sees art: that of a content folder, and pictures drawn small. */
export function auditEyes(folder: Folder): Eyes {
  return {
    art: (path) => {
      try {
        return readArt(folder, path);
      } catch {
        return null;
      }
    },
    draw: async (picture, width) => (await rasterise(picture, width, 'png')).bytes,
    digest: (bytes) => Promise.resolve(createHash('sha256').update(bytes).digest()),
  };
}
