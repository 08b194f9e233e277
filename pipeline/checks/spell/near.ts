const LETTERS = 'etaoinshrdlcumwfgypbvkjxqz';
const VOWEL = /[aeiouy]/;

/**
 * Words that one slip of the hand makes of a word, the likeliest first: two letters swapped, one
 * doubled or not doubled, a wrong vowel, one too many, one too few, another letter. Four errors of
 * five in typing are one such slip (Damerau 1964); a wrong first letter is the rarest and comes last.
 * @param word in small letters.
 */
export function oneSlipAway(word: string, knows: (word: string) => boolean): readonly string[] {
  const found = new Map<string, number>();
  const offer = (candidate: string, cost: number): void => {
    if (candidate === word || candidate.length < 2) return;
    if ((found.get(candidate) ?? Infinity) > cost && knows(candidate)) found.set(candidate, cost);
  };
  for (let at = 0; at <= word.length; at++) {
    const late = at === 0 ? 6 : 0;
    const [before, letter, after] = [word.slice(0, at), word.charAt(at), word.slice(at + 1)];
    const last = word.charAt(at - 1);
    if (letter !== '') {
      offer(before + after, late + (letter === last ? 1 : 3));
      offer(before + after.charAt(0) + letter + after.slice(1), late + (after === '' ? 9 : 0));
    }
    for (const other of LETTERS) {
      const bothVowels = VOWEL.test(letter) && VOWEL.test(other);
      if (letter !== '') offer(before + other + after, late + (bothVowels ? 2 : 5));
      offer(before + other + letter + after, late + (other === last || other === letter ? 1 : 4));
    }
  }
  return [...found].sort(([, a], [, b]) => a - b).map(([candidate]) => candidate);
}
