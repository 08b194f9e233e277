import { composed, hasCapital, nameTokens, type NameToken } from './name-tokens.js';

/**
 * What a form is for: the right way to say a name; one that is no longer used; a name or phrase that
 * is known and no business of the cast; a word of a name, which alone tells who is meant.
 */
export type FormRole = 'right' | 'avoid' | 'other' | 'part';

/** A form of a name as it is looked for. */
export interface CastForm<T> {
  readonly form: string;
  readonly role: FormRole;
  /** Capitals count: the form is also a common word. */
  readonly exact: boolean;
  /** What to write for it: itself, or what is used instead. */
  readonly use: string;
  readonly of: T;
}

/** How an entry is made of its form: as it is, its words joined, or in another order. */
export type Variant = 'own' | 'joined' | 'swapped';

export interface FormEntry<T> {
  readonly form: CastForm<T>;
  readonly variant: Variant;
  readonly tokens: readonly NameToken[];
}

const ARTICLE = /^(?:the|an?)$/i;

export function isArticle(word: string): boolean {
  return ARTICLE.test(word);
}

/** A text without the article that it begins with. */
export function withoutArticle(text: string): string {
  return text.replace(/^(?:the|an?)\s+/iu, '');
}

/** A form in every way in which it may stand in a text, rightly or not. */
export function entriesFor<T>(form: CastForm<T>): readonly FormEntry<T>[] {
  const own = entry(form, form.form, 'own');
  const bare = withoutArticle(form.form);
  const short = bare !== form.form && (!form.exact || /\s/u.test(bare));
  const all = short
    ? [own, entry({ ...form, form: bare, use: withoutArticle(form.use) }, bare, 'own')]
    : [own];
  if (form.role === 'part' || form.role === 'other') return all;
  return [...all, ...all.flatMap((each) => [...joinedOf(each), ...swappedOf(each)])];
}

function entry<T>(form: CastForm<T>, text: string, variant: Variant): FormEntry<T> {
  return { form, variant, tokens: nameTokens(text) };
}

/** With two neighbours written as one word, and all of them. */
function joinedOf<T>({ form, tokens }: FormEntry<T>): readonly FormEntry<T>[] {
  const words = tokens.map(({ base, ending }) => base + ending);
  if (words.length < 2) return [];
  const telling = isArticle(words[0] ?? '') ? words.slice(1) : words;
  const ways = new Set(telling.length > 1 ? [telling.join('')] : []);
  for (let at = 1; at < words.length; at += 1) {
    ways.add(
      [
        ...words.slice(0, at - 1),
        `${words[at - 1] ?? ''}${words[at] ?? ''}`,
        ...words.slice(at + 1),
      ].join(' '),
    );
  }
  return [...ways].map((way) => entry(form, way, 'joined'));
}

/** With the last word first, or the first last, where all are words with a capital. */
function swappedOf<T>({ form }: FormEntry<T>): readonly FormEntry<T>[] {
  const words = form.form.split(' ');
  if (words.length < 2 || words.length > 3 || !words.every(hasCapital)) return [];
  const last = [words.at(-1) ?? '', ...words.slice(0, -1)];
  const first = [...words.slice(1), words[0] ?? ''];
  const ways = new Set([last.join(' '), first.join(' ')].filter((way) => way !== form.form));
  return [...ways].map((way) => entry(form, way, 'swapped'));
}

/** The word of a token with its marks and capitals, for comparing. */
export function typedWord({ base, ending }: NameToken): string {
  return composed(base + ending);
}
