import type { HeldWords } from './held.js';

/** Words with fewer letters than this are found only as whole words: "Ash" is not in "flash". */
const WHOLE_BELOW = 6;

/** A search for short held texts, each whole: which of them a text holds. */
export function searchShort(
  held: readonly HeldWords[],
  open: readonly string[],
): (text: string) => readonly HeldWords[] {
  const openWords = open.map(spaced).join('\n');
  const needles = held
    .map((entry) => ({ entry, needle: needleOf(entry.words) }))
    .filter(({ needle }) => needle.trim() !== '')
    .filter(({ entry, needle }) => entry.always || !openWords.includes(needle));
  return (text) => {
    const words = spaced(text);
    return needles.filter(({ needle }) => words.includes(needle)).map(({ entry }) => entry);
  };
}

function needleOf(words: string): string {
  const needle = spaced(words);
  return needle.length < WHOLE_BELOW + 2 ? needle : needle.trim();
}

/**
 * One form for all ways to write the same words: small letters and digits without marks, one space
 * for whatever parts them and at both ends.
 */
function spaced(text: string): string {
  const words = text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}|\p{Cf}|\p{Default_Ignorable_Code_Point}|['‘’‛`´]/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .replace(/ς/g, 'σ');
  return ` ${words.trim()} `;
}
