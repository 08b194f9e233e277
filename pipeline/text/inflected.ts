/** The forms that a folded word, or the last word of a name, takes: possessive and plural. */
export function inflected(word: string): readonly string[] {
  const forms = [word, `${word}'s`, `${word}s`, `${word}es`, `${word}s's`];
  if (word.endsWith("'s")) forms.push(word.slice(0, -2), `${word.slice(0, -2)}s`);
  if (word.endsWith('y')) forms.push(`${word.slice(0, -1)}ies`);
  return [...new Set(forms)];
}

/** A word of a text as the words that it may be a form of, its own self first. */
export function stemsOf(folded: string): readonly string[] {
  const bare = folded.replace(/'s?$/, '');
  return bare.endsWith('s') && bare.length > 6 ? [bare, bare.slice(0, -1)] : [bare];
}
