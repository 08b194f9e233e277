import { foldedWords, merged, type FoldedWord } from './fold.js';
import { isApart, isTight } from './gap.js';

/** A form of a name, and whose it is. */
export interface NamedForm<T> {
  readonly form: string;
  /** Capitals count: the form is also a common word. */
  readonly exact: boolean;
  readonly of: T;
}

/**
 * Why it is not sure that words are a name: one letter is wrong, the letters stand apart, or all are
 * capitals, of a name that is told from a common word by its capitals alone.
 */
export type Doubt = 'slip' | 'apart' | 'capitals';

/** Words of a text that are a form of a name. */
export interface NameMatch<T> {
  readonly from: number;
  readonly to: number;
  /** Whose form it is: of everyone who bears it. */
  readonly of: readonly T[];
  /** Null if it surely is the name. */
  readonly doubt: Doubt | null;
}

/** A form as it is looked for. */
export interface Entry<T> {
  readonly words: readonly FoldedWord[];
  /** Its letters without what parts the words, and where in them each word begins. */
  readonly letters: string;
  readonly starts: readonly number[];
  readonly exact: boolean;
  readonly of: T;
}

export interface Found<T> {
  readonly match: NameMatch<T>;
  /** Words that it takes from where it was looked for. */
  readonly length: number;
}

export function entryOf<T>({ form, exact, of }: NamedForm<T>): Entry<T> {
  const words = foldedWords(form);
  const starts = words.map((_, at) => lettersOf(words.slice(0, at)).length);
  return { words, letters: lettersOf(words), starts, exact, of };
}

export function foundIn<T>(
  words: readonly FoldedWord[],
  ends: readonly Entry<T>[],
  doubt: Doubt | null,
): Found<T> {
  const from = words[0]?.from ?? 0;
  const to = words.at(-1)?.to ?? from;
  const match = { from, to, of: ends.map((entry) => entry.of), doubt };
  return { match, length: words.length };
}

/** A word in every way in which it may be read. */
export function readingsOf({
  folded,
  others,
}: Pick<FoldedWord, 'folded' | 'others'>): readonly string[] {
  return others.length === 0 ? [folded] : [folded, ...others];
}

export function withoutApostrophes(word: string): string {
  return word.replace(/'/g, '');
}

function lettersOf(words: readonly FoldedWord[]): string {
  return merged(words.map(({ folded }) => withoutApostrophes(folded)).join(''));
}

/** Whether a gap parts two words as a form does before its own word. */
export function partsLike(word: FoldedWord | undefined, gap: string): boolean {
  return isTight(gap) || isApart(gap) === isApart(word?.gap ?? '');
}

/** Whether words have the capitals of a form, and perhaps more, as at the start of a sentence. */
export function hasCapitals<T>({ words }: Entry<T>, here: readonly FoldedWord[]): boolean {
  return words.every(({ folded, cased }, index) => {
    const shown = here[index]?.cased ?? '';
    return shown.startsWith(cased) || (folded === cased && words.length > 1);
  });
}
