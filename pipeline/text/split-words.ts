import { isCapital, type NameToken } from './name-tokens.js';

/** Words shorter than this are not looked for in two pieces. */
const LEAST = 5;

/** A text in which two tokens are read as the one word that a space or hyphen parts. */
export interface Mended {
  readonly tokens: readonly NameToken[];
  /** The place of the word in them. */
  readonly at: number;
}

/** Words that may stand in two pieces: "Thim ble". */
export class SplitWords {
  readonly #words = new Set<string>();
  readonly #beginnings = new Set<string>();

  add(word: string): void {
    if (word.length < LEAST || this.#words.has(word)) return;
    this.#words.add(word);
    for (let end = 1; end < word.length; end += 1) this.#beginnings.add(word.slice(0, end));
  }

  /**
   * Every way in which two neighbours of a text make one word, of which one piece is no word, or the
   * first has a capital that nothing asks for.
   */
  in(tokens: readonly NameToken[], knows: (word: string) => boolean): readonly Mended[] {
    let found: Mended[] | null = null;
    for (let at = 0; at < tokens.length - 1; at += 1) {
      const first = tokens[at];
      const second = tokens[at + 1];
      if (!first || !second || first.ending !== '' || !this.#beginnings.has(first.key)) continue;
      if (second.start || !/^(?: |-| ?['’] ?)$/u.test(second.gap)) continue;
      const sign = this.#signIn(first, second);
      if (sign === null) continue;
      const pieces = [first, second].every(({ base }) => knows(base) || knows(base.toLowerCase()));
      if (pieces && (first.start || !isCapital(first.base) || isCapital(second.base))) continue;
      const key = first.key + (sign && "'") + second.key;
      const whole = first.key + (sign && "'") + second.whole;
      const word = { ...first, base: first.base + sign + second.base, key, whole };
      const mended = { ...word, ending: second.ending, to: second.to };
      (found ??= []).push({
        tokens: [...tokens.slice(0, at), mended, ...tokens.slice(at + 2)],
        at,
      });
    }
    return found ?? NONE;
  }

  /** What stands between two pieces in their word: nothing or an apostrophe; null if none has them. */
  #signIn(first: NameToken, second: NameToken): '' | '’' | null {
    const isWord = (key: string): boolean => this.#words.has(key) || this.#isPlural(key);
    const straight = second.gap === ' ' || second.gap === '-';
    if (straight && [second.key, second.whole].some((end) => isWord(first.key + end))) return '';
    return [second.key, second.whole].some((end) => isWord(`${first.key}'${end}`)) ? '’' : null;
  }

  #isPlural(key: string): boolean {
    return key.endsWith('s') && this.#words.has(key.slice(0, -1));
  }
}

const NONE: readonly Mended[] = [];
