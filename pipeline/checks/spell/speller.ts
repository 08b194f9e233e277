import type { Dictionary, English } from '../../text/index.js';
import { isDerived } from './derived.js';
import { plainLetters, smallLetters, withoutMarks } from './lexicon.js';

/** Who knows the words of one English and of one property. */
export interface Speller {
  readonly english: English;
  /** Whether a word may stand as it is typed; a first capital is no mistake. */
  readonly knows: (word: string) => boolean;
  /** Whether the dictionary alone has it, in small letters or as a name. */
  readonly inDictionary: (word: string) => boolean;
}

/** What is spoken with the word before it. */
const CLITICS = /'(?:s|d|ll|ve|re|m)$/;

/** Contracted words that hunspell's lists lack. */
const CONTRACTIONS = new Set(
  "mayn't daren't usedn't innit ain't amn't y'all ma'am e'er ne'er o'er whate'er where'er fo'c'sle fo'c's'le bo's'n bos'n cap'n s'pose d'you t'other 'tisn't rock'n'roll".split(
    ' ',
  ),
);

/** A speller whose words are those of a dictionary and those that a property adds. */
export function spellerOf(
  english: English,
  dictionary: Dictionary,
  added: ReadonlySet<string>,
): Speller {
  const memory = new Map<string, boolean>();
  const inDictionary = (word: string): boolean =>
    dictionary.knows(word) || (/^\p{Lu}/u.test(word) && dictionary.knows(word.toLowerCase()));
  const isWhole = (word: string): boolean =>
    added.has(word.toLowerCase()) || inDictionary(word) || isUnmarked(word, inDictionary);
  const isKnown = (word: string): boolean =>
    isWhole(word) || isDerived(word.toLowerCase(), isWhole);
  const judge = (typed: string): boolean => {
    const word = plainLetters(typed);
    if (isWhole(word)) return true;
    if (word.includes("'")) return isContracted(word, isKnown);
    return isDerived(word.toLowerCase(), isWhole);
  };
  return {
    english,
    inDictionary,
    knows: (word) => {
      const before = memory.get(word);
      if (before !== undefined) return before;
      const right = judge(word);
      memory.set(word, right);
      return right;
    },
  };
}

/** "naïve" and "café" stand in lists without their marks. */
function isUnmarked(word: string, inDictionary: (word: string) => boolean): boolean {
  if (/^[\u0000-\u007f]*$/.test(word)) return false;
  const plain = withoutMarks(word);
  return plain !== word && inDictionary(plain);
}

/** A possessive or a contraction of a known word; words joined by 'n'. */
function isContracted(word: string, isWhole: (word: string) => boolean): boolean {
  const small = smallLetters(word);
  if (CONTRACTIONS.has(small)) return true;
  const [first, ...rest] = word.split(/'n'/i);
  if (rest.length > 0 && [first ?? '', ...rest].every(isWhole)) return true;
  // "shouldn't've", "who'd've": one after the other.
  let bare = word;
  for (let step = 0; step < 2; step++) {
    const shorter = bare.replace(CLITICS, '');
    if (shorter === bare) break;
    bare = shorter;
    if (bare !== '' && isWhole(bare)) return true;
  }
  return /^o'\p{L}{2}/iu.test(word) && isWhole(word.slice(2));
}
