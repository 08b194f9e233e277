import { lettersOfOne, merged, type FoldedWord } from './fold.js';
import { isApart, isInsideWord } from './gap.js';
import { inflected } from './inflected.js';
import {
  foundIn,
  partsLike,
  readingsOf,
  withoutApostrophes,
  type Entry,
  type Found,
} from './name-entry.js';

/** The least letters that are taken for a name though its words are joined, or broken by spaces. */
const JOINED_LETTERS = 4;
const BROKEN_LETTERS = 6;

/** Signs that stand for a letter inside a word. */
const AS_LETTERS: Readonly<Record<string, string>> = { '@': 'a', $: 's', '!': 'i' };

/** Names whose words are joined, or broken in other places than their own: "OdalysThrane", "Y s o l d e". */
export class JoinedNames<T> {
  /** Forms by their letters alone, inflected; and every beginning of these. */
  readonly #forms = new Map<string, Entry<T>[]>();
  readonly #beginnings = new Set<string>();

  add(entry: Entry<T>): void {
    if (entry.letters.length < 3 || !/^\p{L}+$/u.test(entry.letters)) return;
    for (const form of new Set(inflected(entry.letters).filter(isPlain).map(withoutApostrophes))) {
      this.#forms.set(form, [...(this.#forms.get(form) ?? []), entry]);
      for (let end = 1; end <= form.length; end += 1) {
        for (const start of beginningsAt(form, end)) this.#beginnings.add(start);
      }
    }
  }

  /** Whether letters may be the first of one. */
  mayBegin(letters: string): boolean {
    return this.#beginnings.has(letters);
  }

  /** The longest one that begins with a word of a text. */
  at(words: readonly FoldedWord[], at: number): Found<T> | null {
    let best: Found<T> | null = null;
    let readings: readonly Reading[] = [{ letters: '', starts: [] }];
    for (let index = at; index < words.length; index += 1) {
      const word = words[index];
      if (!word) break;
      readings = readings
        .flatMap((each) => longer(each, word))
        .filter(({ letters }) => this.#beginnings.has(letters));
      if (readings.length === 0) break;
      for (const reading of readings) {
        const ends = this.#forms.get(reading.letters);
        if (ends) best = joinedIn(words.slice(at, index + 1), reading, ends) ?? best;
      }
    }
    return best;
  }
}

const CONTRACTION = /'(?:d|ll|ve|re)$/;

/** Not a contraction: "Hope'd" is Hope, "hoped" is not. */
function isPlain(form: string): boolean {
  return !CONTRACTION.test(form);
}

/** A beginning of some letters, and as it is before the second half of a letter that stands for two. */
function beginningsAt(letters: string, end: number): readonly string[] {
  const start = letters.slice(0, end);
  const half = start.endsWith('m') ? 'r' : start.endsWith('w') ? 'v' : null;
  return half === null ? [start] : [start, start.slice(0, -1) + half];
}

/** The letters of some words without what parts them, and where in them each word begins. */
interface Reading {
  readonly letters: string;
  /** Null for a word before which a sign stands for a letter. */
  readonly starts: readonly (number | null)[];
}

/** Every way in which letters go on with a word. */
function longer({ letters, starts }: Reading, word: FoldedWord): readonly Reading[] {
  const own = lettersIn(word);
  const sign = letters === '' ? undefined : AS_LETTERS[word.gap.trimStart()];
  return [
    ...own.map((each) => ({
      letters: merged(letters + each),
      starts: [...starts, letters.length],
    })),
    ...(sign === undefined
      ? []
      : own.map((each) => ({ letters: merged(letters + sign + each), starts: [...starts, null] }))),
  ];
}

function lettersIn(word: FoldedWord): readonly string[] {
  if (word.folded.length === 1) return lettersOfOne(word.folded);
  return readingsOf(word).map((each) => withoutApostrophes(each.replace(CONTRACTION, '')));
}

/** The forms whose letters these words are, if the gaps between them are such as a name may have. */
function joinedIn<T>(
  here: readonly FoldedWord[],
  reading: Reading,
  entries: readonly Entry<T>[],
): Found<T> | null {
  const sure = entries.filter((entry) => howJoined(entry, here, reading) === 'sure');
  if (sure.length > 0) return foundIn(here, sure, null);
  const broken = entries.filter((entry) => howJoined(entry, here, reading) === 'broken');
  return broken.length > 0 ? foundIn(here, broken, 'apart') : null;
}

/** Surely the form, perhaps it, with spaces inside its words, or not. */
function howJoined<T>(
  entry: Entry<T>,
  here: readonly FoldedWord[],
  { starts }: Reading,
): 'sure' | 'broken' | null {
  const single = here.every(({ folded }) => folded.length === 1);
  if (!single && entry.letters.length < JOINED_LETTERS) return null;
  if (entry.exact && !casedLetters(here).startsWith(casedLetters(entry.words))) return null;
  let broken = false;
  for (const [index, { folded, gap }] of here.entries()) {
    const start = starts[index] ?? null;
    const lone = folded.length === 1 && here[index - 1]?.folded.length === 1;
    if (index === 0 || start === null || lone) continue;
    const own = entry.words[entry.starts.indexOf(start)];
    if (own ? partsLike(own, gap) : isInsideWord(gap)) continue;
    if (own || isApart(gap)) return null;
    broken = true;
  }
  if (!broken) return 'sure';
  const capital = /^\p{Lu}/u.test(here[0]?.cased ?? '');
  return capital && !entry.exact && entry.letters.length >= BROKEN_LETTERS ? 'broken' : null;
}

function casedLetters(words: readonly FoldedWord[]): string {
  return words.map(({ cased }) => withoutApostrophes(cased)).join('');
}
