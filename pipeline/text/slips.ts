import { editDistance } from './distance.js';

/**
 * Words that a word is one letter away from: one wrong, missing or too many, or two neighbours that
 * changed places. Looked up by what is left without one letter (symmetric deletion).
 */
export class SlipIndex<T> {
  readonly #words = new Map<string, T[]>();
  readonly #shortened = new Map<string, Set<string>>();
  readonly #known = new Map<string, readonly string[]>();

  add(word: string, of: T): void {
    const same = this.#words.get(word);
    if (same) {
      same.push(of);
      return;
    }
    this.#words.set(word, [of]);
    for (const short of shortened(word)) {
      const words = this.#shortened.get(short) ?? new Set();
      this.#shortened.set(short, words.add(word));
    }
  }

  /** The words that were added and are just one letter away. */
  near(word: string): readonly string[] {
    const known = this.#known.get(word);
    if (known) return known;
    const near = this.#lookedUp(word);
    this.#known.set(word, near);
    return near;
  }

  #lookedUp(word: string): readonly string[] {
    let found: Set<string> | null = null;
    for (const short of shortened(word)) {
      for (const each of this.#shortened.get(short) ?? NONE) {
        if (editDistance(each, word) === 1) (found ??= new Set()).add(each);
      }
    }
    return found ? [...found] : NONE;
  }

  of(word: string): readonly T[] {
    return this.#words.get(word) ?? [];
  }
}

/** One for all the words without any, which are almost all. */
const NONE: readonly string[] = [];

/** A word, and the word without each of its letters. */
function shortened(word: string): readonly string[] {
  return [
    word,
    ...Array.from({ length: word.length }, (_, at) => word.slice(0, at) + word.slice(at + 1)),
  ];
}
