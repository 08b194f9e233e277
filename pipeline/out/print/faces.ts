import { openFace } from '../../typeset/index.js';
import { PrintFont } from './print-font.js';
import { Voice } from './voice.js';

/**
 * The files of one cut of a family: TTF, OTF or WOFF 1. A character is drawn from the first file
 * that has it.
 */
export type CutFiles = readonly Uint8Array[];

/** What the sheets are set in: one family for words, one for numbers and remarks. */
export interface PrintFiles {
  readonly text: {
    readonly regular: CutFiles;
    readonly italic: CutFiles;
    readonly bold: CutFiles;
  };
  readonly labels: { readonly regular: CutFiles; readonly medium: CutFiles };
}

/** The same, opened. They keep the widths of words, so open them once. */
export interface PrintFaces {
  readonly text: { readonly regular: Voice; readonly italic: Voice; readonly bold: Voice };
  readonly labels: { readonly regular: Voice; readonly medium: Voice };
}

/**
 * Opens the fonts of the sheets.
 *
 * @throws FontError for a file that cannot be embedded in part: woff2, a collection, a variable
 *   font, a damaged file
 * @throws RangeError for a cut without a file
 */
export function openPrintFaces({ text, labels }: PrintFiles): PrintFaces {
  return {
    text: {
      regular: voice(text.regular, 'regular text'),
      italic: voice(text.italic, 'italic text'),
      bold: voice(text.bold, 'bold text'),
    },
    labels: {
      regular: voice(labels.regular, 'regular labels'),
      medium: voice(labels.medium, 'medium labels'),
    },
  };
}

function voice(files: CutFiles, name: string): Voice {
  const [first, ...more] = files.map(
    (bytes, index) => new PrintFont(openFace(bytes, `${name}, file ${String(index + 1)}`).bytes),
  );
  if (!first) throw new RangeError(`no font file is given for ${name}; give at least one`);
  return new Voice([first, ...more]);
}
