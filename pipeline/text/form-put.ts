import { isArticle, withoutArticle, type FormEntry } from './form-entry.js';
import type { FormText } from './form-match.js';
import { isCapital } from './name-tokens.js';

/** Words with a capital first. */
export function raised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** What to write for words of a text: the form to use, with their capital, article and ending. */
export function putFor<T>(
  entry: FormEntry<T>,
  at: number,
  length: number,
  plural: string,
  text: FormText,
): string {
  const first = text.tokens[at];
  const last = text.tokens[at + length - 1];
  const before = text.tokens[at - 1];
  if (!first || !last) return entry.form.use;
  let words = entry.form.use;
  const article = /^(?:the|an?)(?=\s)/iu.exec(words)?.[0];
  const typed = first.base;
  if (article !== undefined) {
    const doubled = before?.base.toLowerCase() === article.toLowerCase() && !isArticle(typed);
    if (doubled) words = withoutArticle(words);
    else if (typed === article.toLowerCase() || typed === raised(article)) {
      words = typed + words.slice(article.length);
    }
  }
  if (first.start && isCapital(typed)) words = raised(words);
  const bare = entry.tokens.at(-1)?.ending !== '' && last.whole === entry.tokens.at(-1)?.whole;
  const ending = bare ? '' : last.ending;
  const whole = words + (plural === 's' && /[sxz]$/iu.test(words) ? 'es' : plural);
  const possessive = /^['’ʼ‘]$/u.test(ending) && !/[sxz]$/iu.test(whole) ? `${ending}s` : ending;
  return whole + possessive;
}
