import type { FoldedWord } from './fold.js';
import { inflected, stemsOf } from './inflected.js';
import {
  foundIn,
  partsLike,
  readingsOf,
  withoutApostrophes,
  type Entry,
  type Found,
} from './name-entry.js';
import { SlipIndex } from './slips.js';

/** The least letters that a name must have for a slip in it to be noticed. */
const SLIP_LETTERS = 6;
/** The least letters of a word among others of a name for a slip in it to be noticed. */
const PART_LETTERS = 3;
/** The least letters of such a word that needs no capitals about it. */
const SURE_PART_LETTERS = 6;

/** A word in which a slip is looked for: its place in the form; null for all of it, joined. */
interface SlipOf<T> {
  readonly entry: Entry<T>;
  readonly place: number | null;
}

/** A word of a form that a word of a text may be, with a slip in it. */
interface NearWord<T> {
  /** Whether the slip is in its first letter, so that a capital may have gone with it. */
  readonly first: boolean;
  readonly slips: readonly SlipOf<T>[];
}

/**
 * Names of six letters or more with one letter wrong in a word that has a capital, or may have had
 * one: its first letter is wrong, or its sentence begins with a small letter.
 */
export class SlippedNames<T> {
  readonly #slips = new SlipIndex<SlipOf<T>>();
  /** What was found for a word: a text says most of its words again and again. */
  readonly #known = new Map<string, readonly NearWord<T>[]>();

  add(entry: Entry<T>): void {
    if (entry.exact || entry.letters.length < SLIP_LETTERS) return;
    this.#known.clear();
    const least = entry.words.length > 1 ? PART_LETTERS : SLIP_LETTERS;
    for (const [place, { folded, typed, cased }] of entry.words.entries()) {
      if (typed.length < least || (typed.length < SLIP_LETTERS && cased === folded)) continue;
      // A slip may be in one half of what is read as one letter ("Barxaby"), or have no apostrophe.
      for (const way of new Set([folded, typed, withoutApostrophes(folded)])) {
        this.#slips.add(way, { entry, place });
      }
    }
    // An initial and a surname, joined, are one letter away from the surname.
    const joined = entry.words.length > 1 && entry.words.every(({ folded }) => folded.length > 1);
    if (joined) this.#slips.add(entry.letters, { entry, place: null });
  }

  /** The first one of which a word of a text is the word that is wrong. */
  at(words: readonly FoldedWord[], at: number): Found<T> | null {
    const word = words[at];
    if (!word || word.typed.length < PART_LETTERS - 1) return null;
    for (const { first, slips } of this.#nearTo(word)) {
      const capital = hasCapital(word) || first;
      for (const slip of slips) {
        const found = slipIn(slip, words, at, capital);
        if (found) return found;
      }
    }
    return null;
  }

  #nearTo(word: FoldedWord): readonly NearWord<T>[] {
    const key = keyOf(word);
    const known = this.#known.get(key);
    if (known) return known;
    const near = this.#lookedUp(word);
    this.#known.set(key, near);
    return near;
  }

  #lookedUp(word: FoldedWord): readonly NearWord<T>[] {
    const stems = [...new Set(readingsOfSlip(word).flatMap(stemsOf))];
    const near = new Set(stems.flatMap((stem) => this.#slips.near(stem)));
    if (near.size === 0) return NONE;
    return [...near].map((each) => ({
      first: each.length > PART_LETTERS && stems.some((stem) => isFirstLetter(stem, each)),
      slips: this.#slips.of(each).filter((slip) => !stems.includes(each) || !isLast(slip)),
    }));
  }
}

/** One for all the words without any, which are almost all. */
const NONE: readonly never[] = [];

/** All that is looked at of a word to find what it is near to: for most words the word itself. */
function keyOf({ folded, typed, others }: FoldedWord): string {
  if (others.length === 0 && typed === folded) return folded;
  return [folded, typed, ...others].join(' ');
}

/**
 * Whether a word is another without its first letter, or with a wrong one: a capital may have gone
 * with it.
 */
function isFirstLetter(word: string, meant: string): boolean {
  return meant.slice(1) === word || meant.slice(1) === word.slice(1);
}

/**
 * A form with one letter wrong in one of its words, the others being there.
 * @param capital whether that word has a capital, or may have lost it.
 */
function slipIn<T>(
  { entry, place }: SlipOf<T>,
  words: readonly FoldedWord[],
  at: number,
  capital: boolean,
): Found<T> | null {
  const start = at - (place ?? 0);
  const length = place === null ? 1 : entry.words.length;
  const here = start < 0 ? [] : words.slice(start, start + length);
  const small = beginsSmall(here[0], start);
  if (here.length !== length) return null;
  if (!capital && !small && (place === null || !isLong(entry, place))) return null;
  if (place === null) return foundIn(here, [entry], 'slip');
  const rest = here.every((word, index) => {
    const own = entry.words[index];
    const forms = inflected(own?.folded ?? '');
    const parted = index === 0 || partsLike(own, word.gap);
    return parted && (index === place || readingsOf(word).some((each) => forms.includes(each)));
  });
  const short = (entry.words[place]?.typed.length ?? 0) < SURE_PART_LETTERS;
  if (!rest || (short && !small && !isCapitalised(entry, here, place))) return null;
  const { match } = foundIn(here, [entry], 'slip');
  return { match, length: Math.max(1, start + here.length - at) };
}

/** Whether a word ends its form, so that its plural is no slip of it. */
function isLast<T>({ entry, place }: SlipOf<T>): boolean {
  return place === null || place === entry.words.length - 1;
}

function readingsOfSlip(word: FoldedWord): readonly string[] {
  return [...readingsOf(word), word.typed, withoutApostrophes(word.folded)];
}

function hasCapital(word: FoldedWord | undefined): boolean {
  return /\p{Lu}/u.test(word?.cased ?? '');
}

/** Whether a sentence begins with a word, in small letters. */
function beginsSmall(word: FoldedWord | undefined, at: number): boolean {
  return word !== undefined && !hasCapital(word) && (at === 0 || /[.!?…]/u.test(word.gap));
}

/** Whether words have capitals where a form has them; of the one that is wrong, it may be gone. */
function isCapitalised<T>(
  { words }: Entry<T>,
  here: readonly FoldedWord[],
  wrong: number,
): boolean {
  const due = here.filter((_, at) => at !== wrong && hasCapital(words[at]));
  return due.every(hasCapital) && (due.length > 0 || hasCapital(here[wrong]));
}

/** Whether the words of a form beside the wrong one, and this one, are long enough to tell it alone. */
function isLong<T>({ words }: Entry<T>, wrong: number): boolean {
  const beside = words.filter((word, at) => at !== wrong && hasCapital(word));
  const long = (words[wrong]?.typed.length ?? 0) >= SURE_PART_LETTERS;
  return long && beside.some(({ typed }) => typed.length > PART_LETTERS);
}
