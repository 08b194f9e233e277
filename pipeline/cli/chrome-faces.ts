import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

import { openFace, type Faces } from '../typeset/index.js';

/** The faces of everything on a sheet that is not the card. */
export function chromeFaces(): Faces {
  const require = createRequire(import.meta.url);
  const open = (file: string): Faces['regular'] =>
    openFace(readFileSync(require.resolve(`@fontsource/alegreya-sans/files/${file}`)), file);
  const regular = open('alegreya-sans-latin-400-normal.woff');
  const italic = open('alegreya-sans-latin-400-italic.woff');
  const bold = open('alegreya-sans-latin-700-normal.woff');
  return { regular, italic, bold, boldItalic: bold };
}
