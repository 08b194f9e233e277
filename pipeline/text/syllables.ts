import { syllable } from 'syllable';

import { countInWords } from './number-words.js';

/**
 * The syllables of a word as it is spoken, at least one. A whole number in figures is read aloud;
 * what is joined by a hyphen is said one part after the other.
 */
export function countSyllables(word: string): number {
  const parts = word.match(/\d+|[^\d\s–—-]+/gu) ?? [];
  const sum = parts.reduce(
    (so, part) => so + (/^\d/.test(part) ? inFigures(part) : spoken(part)),
    0,
  );
  return Math.max(1, sum);
}

/** Common words that the rules count wrongly, as the CMU dictionary has them. */
const KNOWN = new Map([
  ['large', 1],
  ['else', 1],
  ['queer', 1],
  ['seeing', 2],
  ['evening', 2],
  ['therefore', 2],
  ['mr', 2],
  ['mrs', 2],
]);

function spoken(letters: string): number {
  const known = KNOWN.get(letters.toLowerCase());
  if (known !== undefined) return known;
  return /\p{L}/u.test(letters) ? Math.max(1, syllable(letters.normalize('NFC'))) : 0;
}

/** "412" is "four hundred and twelve"; of more than six figures each is said alone. */
function inFigures(digits: string): number {
  if (digits.length > 6) return digits.length;
  const value = Number(digits);
  const thousands = Math.floor(value / 1000);
  const rest = value % 1000;
  const high = thousands === 0 ? '' : `${countInWords(thousands)} thousand`;
  const low = rest === 0 && thousands > 0 ? '' : countInWords(rest);
  return syllable(`${high} ${low}`);
}
