import type { PlacedSide, PlacedWord } from '../../pipeline/out/proof/index.js';
import type { Face } from '../../pipeline/typeset/index.js';
import type { FoundWord } from './tools.js';

/** Points: how far a drawn word may lie from where it was measured. */
const NEAR = 0.05;

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < NEAR;
}

/**
 * Whether a word runs to the right from where it was put and stands on its baseline, in type of any
 * size: poppler makes the box of a word from the ascender and descender of its font.
 */
function isUpright(found: FoundWord, { x, baseline, width }: PlacedWord, face: Face): boolean {
  const em = (found.yMax - found.yMin) / (face.ascent + face.descent);
  return (
    near(found.xMin, x) &&
    near(found.xMax, x + width) &&
    near(found.yMin, baseline - face.ascent * em)
  );
}

/** The same for a word that runs up the page, of a card with its top to the left. */
function isTurned(found: FoundWord, { x, baseline, width }: PlacedWord, face: Face): boolean {
  const em = (found.xMax - found.xMin) / (face.ascent + face.descent);
  return (
    near(found.yMax, baseline) &&
    near(found.yMin, baseline - width) &&
    near(found.xMin, x - face.ascent * em)
  );
}

/** Words of bios that are not found where they were put; `face` is the font of the bios. */
export function astray(
  placed: readonly PlacedSide[],
  pages: readonly (readonly FoundWord[])[],
  face: Face | undefined,
): readonly string[] {
  if (!face) throw new Error('the bios have no font');
  return placed.flatMap((side) => {
    const page = pages[side.page - 1] ?? [];
    const stands = side.turn === 'none' ? isUpright : isTurned;
    return side.bio
      .filter((word) => !page.some((each) => each.text === word.text && stands(each, word, face)))
      .map((word) => `${side.identity ?? ''} ${word.text}`);
  });
}
