import type { PublicSubset } from '../../schema/index.js';
import { ask, foundWords, pageOperators, pageTexts, type FoundWord } from '../proof/tools.js';

/** What a sheet says, without any white space, in the order in which it is drawn. */
export function unspaced(pdf: Uint8Array): string {
  return pageTexts(pdf).join('').replace(/\s+/g, '');
}

/**
 * The structure of a document with its words, as poppler reads it to somebody: what it adds about
 * how an element is laid out is left off.
 */
export function readOut(pdf: Uint8Array): string {
  return ask('pdfinfo', ['-struct-text', 'FILE'], pdf).replace(
    /(?: \((?:block|inline)\)|:)$/gm,
    '',
  );
}

/** How many tick boxes stand on each page: nothing else on a sheet is a rectangle. */
export function boxesOn(pdf: Uint8Array): readonly number[] {
  return pageOperators(pdf).map((page) => [...page.matchAll(/^(?:[\d.-]+ ){4}re$/gm)].length);
}

export function pageCount(pdf: Uint8Array): number {
  return Number(/^Pages: +(\d+)$/m.exec(ask('pdfinfo', ['FILE'], pdf))?.[1]);
}

export function issuedRows(subsets: readonly PublicSubset[]): number {
  return subsets
    .flatMap(({ cards, artists }) => [...cards.map(({ state }) => state), ...artists])
    .filter((row) => row !== 'not issued').length;
}

/** The band of a word's box in which its small letters stand: ascenders may reach the line above. */
function heart({ yMin, yMax }: FoundWord): readonly [number, number] {
  const middle = (yMin + yMax) / 2;
  const half = (yMax - yMin) / 6;
  return [middle - half, middle + half];
}

/** Words of one page that stand on one another. */
export function overlaps(pdf: Uint8Array): readonly string[] {
  return foundWords(pdf).flatMap((words) =>
    words.flatMap((one, index) =>
      words
        .slice(index + 1)
        .filter((other) => meet(one, other))
        .map((other) => `${one.text} / ${other.text}`),
    ),
  );
}

function meet(one: FoundWord, other: FoundWord): boolean {
  const [top, bottom] = heart(one);
  const [otherTop, otherBottom] = heart(other);
  const across = Math.min(one.xMax, other.xMax) - Math.max(one.xMin, other.xMin);
  return across > 0.3 && Math.min(bottom, otherBottom) > Math.max(top, otherTop);
}

/** Words that stand outside of so many points from the edges of their page. */
export function outside(
  pdf: Uint8Array,
  { width, height }: { readonly width: number; readonly height: number },
  margin: number,
): readonly string[] {
  return foundWords(pdf).flatMap((words) =>
    words
      .filter(
        (word) =>
          word.xMin < margin ||
          word.xMax > width - margin ||
          heart(word)[0] < margin ||
          heart(word)[1] > height - margin,
      )
      .map(({ text }) => text),
  );
}
