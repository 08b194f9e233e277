import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join } from 'node:path';

import type { Font } from '../../schema/index.js';
import type { Content } from '../../pipeline/model/index.js';
import { openFace, type Face, type Faces, type FontShelf } from '../../pipeline/typeset/index.js';

const require = createRequire(import.meta.url);
const opened = new Map<string, Face>();

/** Opens the fonts of every layout from their installed packages; each file once. */
export function shelfOf(content: Content): FontShelf {
  return new Map(
    [...content.layouts].map(([id, { value }]) => [
      id,
      new Map(Object.entries(value.fonts).map(([name, font]) => [name, facesOf(font)])),
    ]),
  );
}

function facesOf(font: Font): Faces {
  const regular = face(font, font.regular);
  const italic = font.italic === undefined ? regular : face(font, font.italic);
  const bold = font.bold === undefined ? regular : face(font, font.bold);
  const boldItalic = font.boldItalic === undefined ? bold : face(font, font.boldItalic);
  return { regular, italic, bold, boldItalic };
}

function face(font: Font, file: string): Face {
  const path = join(dirname(require.resolve(`${font.package ?? ''}/package.json`)), file);
  const known = opened.get(path) ?? openFace(readFileSync(path), basename(file));
  opened.set(path, known);
  return known;
}
