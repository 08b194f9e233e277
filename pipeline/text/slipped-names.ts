import type { FoldedWord } from './fold.js';
import { inflected, stemsOf } from './inflected.js';
import {
  foundIn,
  hasCapitals,
  partsLike,
  readingsOf,
  type Entry,
  type Found,
} from './name-entry.js';
import { SlipIndex } from './slips.js';

/** The least letters that a name must have for a slip in it to be noticed. */
const SLIP_LETTERS = 6;
/** The least letters of a word among others of a name for a slip in it to be noticed. */
const SHORT_SLIP_LETTERS = 4;

/** A word in which a slip is looked for: its place in the form; null for all of it, joined. */
interface SlipOf<T> {
  readonly entry: Entry<T>;
  readonly place: number | null;
}

/** Names of six letters or more with one letter wrong in a word that has a capital. */
export class SlippedNames<T> {
  readonly #slips = new SlipIndex<SlipOf<T>>();

  add(entry: Entry<T>): void {
    if (entry.exact || entry.letters.length < SLIP_LETTERS) return;
    const least = entry.words.length > 1 ? SHORT_SLIP_LETTERS : SLIP_LETTERS;
    for (const [place, { folded, typed }] of entry.words.entries()) {
      if (folded.length < least) continue;
      this.#slips.add(folded, { entry, place });
      // A slip may be in one half of what is read as one letter: "Barxaby".
      if (typed !== folded) this.#slips.add(typed, { entry, place });
    }
    // An initial and a surname, joined, are one letter away from the surname.
    const joined = entry.words.length > 1 && entry.words.every(({ folded }) => folded.length > 1);
    if (joined) this.#slips.add(entry.letters, { entry, place: null });
  }

  /** The first one of which a word of a text is the word that is wrong. */
  at(words: readonly FoldedWord[], at: number): Found<T> | null {
    const word = words[at];
    if (!word || word.folded.length < SHORT_SLIP_LETTERS - 1) return null;
    if (word.cased === word.folded || !/\p{Lu}/u.test(word.cased)) return null;
    const stems = readingsOf(word).flatMap(stemsOf);
    for (const near of new Set(stems.flatMap((stem) => this.#slips.near(stem)))) {
      // A plural of the word itself is no slip of it.
      if (stems.includes(near)) continue;
      for (const slip of this.#slips.of(near)) {
        const found = slipIn(slip, words, at);
        if (found) return found;
      }
    }
    return null;
  }
}

/** A form with one letter wrong in one of its words, the others being there. */
function slipIn<T>(
  { entry, place }: SlipOf<T>,
  words: readonly FoldedWord[],
  at: number,
): Found<T> | null {
  if (place === null) return foundIn(words.slice(at, at + 1), [entry], 'slip');
  const start = at - place;
  const here = start < 0 ? [] : words.slice(start, start + entry.words.length);
  if (here.length !== entry.words.length) return null;
  const rest = here.every(({ folded, gap }, index) => {
    const own = entry.words[index];
    const parted = index === 0 || partsLike(own, gap);
    return parted && (index === place || inflected(own?.folded ?? '').includes(folded));
  });
  const short = (entry.words[place]?.folded.length ?? 0) < SLIP_LETTERS;
  if (!rest || (short && !hasCapitals(entry, here, place))) return null;
  const { match } = foundIn(here, [entry], 'slip');
  return { match, length: Math.max(1, start + here.length - at) };
}
