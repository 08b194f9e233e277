import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

import type { Font } from '../../schema/index.js';
import { spotOf, type Content, type Fault, type SourceFile } from '../model/index.js';
import { FontError, openFace, type Face, type Faces, type FontShelf } from '../typeset/index.js';
import type { Folder } from './folder.js';

const PACKAGE = /^(@[a-z0-9-]+\/)?[a-z0-9][a-z0-9.-]*$/;
const PATH = /^[A-Za-z0-9_-][A-Za-z0-9_.-]*(\/[A-Za-z0-9_-][A-Za-z0-9_.-]*)*$/;

const require = createRequire(import.meta.url);

/** Faces from packages, which do not change while the program runs: a reading again finds them. */
const packaged = new Map<string, Face>();

export interface FontReading {
  readonly fonts: FontShelf;
  readonly faults: readonly Fault[];
}

/**
 * Opens the fonts that the layouts name: files of an installed package, or of the content's own
 * `fonts/`. Each file is opened once, a package's once for all readings; what cannot
 * be opened is a fault at its key.
 */
export function readFonts(layouts: Content['layouts'], folder: Folder): FontReading {
  const opened = new Map<string, Face>();
  const faults: Fault[] = [];
  const fonts = new Map(
    [...layouts].map(([id, layout]) => {
      const families = Object.entries(layout.value.fonts).flatMap(([name, font]) => {
        const faces = openFamily(font, (file, key) => {
          const where = ['fonts', name, key];
          return openOnce(opened, font, file, folder, (why) => {
            faults.push(badFont(layout.source, where, file, why));
          });
        });
        return faces ? [[name, faces] as const] : [];
      });
      return [id, new Map(families)] as const;
    }),
  );
  return { fonts, faults };
}

/** Opens the faces of a family; one that is not given is stood in for by the nearest that is. */
function openFamily(font: Font, open: (file: string, key: string) => Face | null): Faces | null {
  const regular = open(font.regular, 'regular');
  if (!regular) return null;
  const italic = font.italic === undefined ? regular : open(font.italic, 'italic');
  const bold = font.bold === undefined ? regular : open(font.bold, 'bold');
  if (!italic || !bold) return null;
  const both = font.boldItalic === undefined ? bold : open(font.boldItalic, 'boldItalic');
  return both && { regular, italic, bold, boldItalic: both };
}

function openOnce(
  opened: Map<string, Face>,
  font: Font,
  file: string,
  folder: Folder,
  refuse: (why: string) => void,
): Face | null {
  const key = `${font.package ?? ''}/${file}`;
  const shelf = font.package === undefined ? opened : packaged;
  const known = shelf.get(key);
  if (known) return known;
  try {
    const face = openFace(fontBytes(font, file, folder), file.replace(/^.*\//, ''));
    shelf.set(key, face);
    return face;
  } catch (error) {
    refuse(error instanceof FontError ? error.message : 'it is not there');
    return null;
  }
}

function fontBytes(font: Font, file: string, folder: Folder): Uint8Array {
  if (!PATH.test(file)) throw new Error('outside');
  if (font.package === undefined) return folder.read(`fonts/${file}`);
  if (!PACKAGE.test(font.package)) throw new Error('outside');
  return readFileSync(require.resolve(`${font.package}/${file}`));
}

function badFont(source: SourceFile, path: string[], file: string, why: string): Fault {
  return {
    rule: 'schema',
    spot: spotOf(source, path),
    message: `this font cannot be used: ${why}`,
    found: file,
    expected: 'a static TTF, OTF or WOFF file of an installed package or of fonts/',
  };
}
