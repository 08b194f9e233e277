import { create, type Font } from 'fontkit';
import { FontError, openFace } from '../../typeset/index.js';
import { openPrintFaces, type PrintFaces } from '../print/index.js';
import { readCut, typeChoice, type Family } from './type-choice.js';

/** What is set in the type of the site without a browser: sheets, and the picture for links. */
export interface Lettering {
  readonly sheets: PrintFaces;
  readonly picture: readonly [Font, ...Font[]];
}

const opened = new Map<string, Promise<Lettering>>();

/** The faces of a choice of type, opened once: they keep the widths of words. */
export function letteringOf(type: string | null): Promise<Lettering> {
  const { words, labels } = typeChoice(type);
  const known = opened.get(words.package);
  if (known) return known;
  const lettering = open(words, labels);
  opened.set(words.package, lettering);
  return lettering;
}

async function open(words: Family, labels: Family): Promise<Lettering> {
  const [regular, italic, bold, label, medium] = await Promise.all([
    cut(words, '400-normal'),
    cut(words, '400-italic'),
    cut(words, '700-normal'),
    cut(labels, '400-normal'),
    cut(labels, '500-normal'),
  ]);
  const text = { regular, italic, bold };
  const sheets = openPrintFaces({ text, labels: { regular: label, medium } });
  const [latin, more] = regular;
  return { sheets, picture: [shapesOf(latin, words.family), shapesOf(more, words.family)] };
}

function shapesOf(bytes: Uint8Array, family: string): Font {
  const font = create(Buffer.from(openFace(bytes, family).bytes));
  if (!('layout' in font)) throw new FontError(family, 'a collection of fonts');
  return font;
}

/** The files of a cut: one for Latin, one for its further letters. */
async function cut(family: Family, name: string): Promise<readonly [Uint8Array, Uint8Array]> {
  const [latin, more] = await Promise.all([
    readCut(family, `latin-${name}.woff`),
    readCut(family, `latin-ext-${name}.woff`),
  ]);
  return [latin, more];
}
