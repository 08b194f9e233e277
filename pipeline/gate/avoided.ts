import { foldedWords } from '../text/index.js';

/** The forms of one name that an audience may know, and those that it may not. */
interface Forms {
  readonly open: readonly string[];
  readonly held: readonly string[];
}

/**
 * Whether words tell nothing of names that are held: no held form stands in them, and no word that
 * only held forms have. When in doubt they do.
 *
 * It is the one place where something held decides what shows, and only by taking away: a form of an
 * open name that has words of a held one should not be in the cast, and showing it would be worse.
 */
export function untelling(names: readonly Forms[]): (words: string) => boolean {
  const held = names.flatMap((name) => name.held.map(wordsOf));
  if (held.length === 0) return () => true;
  const open = new Set(names.flatMap((name) => name.open.flatMap(wordsOf)));
  const telling = new Set(held.flat().filter((word) => !open.has(word)));
  const whole = new Set(held.map(joined));
  const longest = [...whole].reduce((most, { length }) => Math.max(most, length), 0);
  return (words) => {
    const own = wordsOf(words);
    if (own.length === 0 || own.some((word) => telling.has(word))) return false;
    return !own.some((_, from) => begins(own, from));
  };

  /** Whether a held form begins at a word, whatever parts its words. */
  function begins(own: readonly string[], from: number): boolean {
    let letters = '';
    for (const word of own.slice(from)) {
      letters += word;
      if (letters.length > longest) return false;
      if (whole.has(letters)) return true;
    }
    return false;
  }
}

/** Words as a reader takes them, without what makes them possessive. */
function wordsOf(text: string): readonly string[] {
  return foldedWords(text).map(({ folded }) => folded.replace(/'s?$/, ''));
}

/** Without what parts words: "Rope Walk" and "Ropewalk" are one name. */
function joined(words: readonly string[]): string {
  return words.join('');
}
