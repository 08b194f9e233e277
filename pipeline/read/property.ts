import type { Content } from '../model/index.js';
import type { FontShelf } from '../typeset/index.js';
import { readContent } from './content.js';
import type { Folder } from './folder.js';
import { readFonts } from './fonts.js';

/** A content folder with its fonts opened. */
export interface PropertyReading {
  readonly content: Content;
  readonly fonts: FontShelf;
}

/**
 * Reads a content folder and the fonts that its layouts name.
 * @throws what the folder throws when the disk fails.
 */
export function readProperty(folder: Folder): PropertyReading {
  const content = readContent(folder);
  const { fonts, faults } = readFonts(content.layouts, folder);
  return { content: { ...content, faults: [...content.faults, ...faults] }, fonts };
}
