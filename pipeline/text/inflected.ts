/** Would, will, have and are, spoken with the word before. */
const CONTRACTED = [`'d`, `'ll`, `'ve`, `'re`] as const;
const LIKE = ['esque', 'like'] as const;

/** The forms that a folded word, or the last word of a name, takes: possessive and plural. */
export function inflected(word: string): readonly string[] {
  const forms = ['', `'s`, 's', 'es', `s's`, ...CONTRACTED, ...LIKE].map((end) => word + end);
  if (word.endsWith("'s")) forms.push(word.slice(0, -2), `${word.slice(0, -2)}s`);
  if (word.endsWith('y')) forms.push(`${word.slice(0, -1)}ies`);
  return [...new Set(forms)];
}

/** A word of a text as the words that it may be a form of, its own self first. */
export function stemsOf(folded: string): readonly string[] {
  const bare = folded.replace(/'(?:s|d|ll|ve|re)?$/, '');
  const whole = bare === folded ? [bare] : [bare, folded];
  if (!bare.endsWith('s') || bare.length < 5) return whole;
  return [...whole, bare.slice(0, -1), ...(bare.endsWith('es') ? [bare.slice(0, -2)] : [])];
}
