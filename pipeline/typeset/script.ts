/**
 * The OpenType script tag that the font library finds for a string: that of its first letter, else
 * that of no script. Null where it is one that is left to the library.
 */
export type Script = 'latn' | 'zzzz' | null;

const STRONG = /[^\p{Script=Common}\p{Script=Inherited}\p{Script=Unknown}]/u;
const LATIN = /\p{Script=Latin}/u;

/** Script of a string: `zzzz` where it holds no letter, as in a number. */
export function scriptOf(text: string): Script {
  const letter = STRONG.exec(text);
  if (!letter) return 'zzzz';
  return LATIN.test(letter[0]) ? 'latn' : null;
}
