/** A word with letters of two scripts that look alike. */
export interface MixedWord {
  /** UTF-16 units from the start of the text. */
  readonly at: number;
  readonly word: string;
  /** Its scripts, the one with most letters first. */
  readonly scripts: readonly string[];
  /** The letters of all scripts but the first, each once. */
  readonly odd: string;
}

const WORD = /[\p{L}\p{M}]+(?:['’][\p{L}\p{M}]+)*/gu;
const SCRIPTS: readonly (readonly [name: string, letters: RegExp])[] = [
  ['Latin', /\p{Script=Latin}/gu],
  ['Greek', /\p{Script=Greek}/gu],
  ['Cyrillic', /\p{Script=Cyrillic}/gu],
];

/** Words that mix Latin, Greek and Cyrillic letters, three scripts that share many shapes. */
export function mixedWords(text: string): MixedWord[] {
  if (!/[\p{Script=Greek}\p{Script=Cyrillic}]/u.test(text)) return [];
  return [...text.matchAll(WORD)].flatMap(({ 0: word, index }) => {
    const counts = SCRIPTS.map(([name, letters]) => ({ name, letters: word.match(letters) ?? [] }))
      .filter(({ letters }) => letters.length > 0)
      .sort((a, b) => b.letters.length - a.letters.length);
    if (counts.length < 2) return [];
    const odd = counts.slice(1).flatMap(({ letters }) => [...letters]);
    const scripts = counts.map(({ name }) => name);
    return [{ at: index, word, scripts, odd: [...new Set(odd)].join('') }];
  });
}
