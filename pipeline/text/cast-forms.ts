import type { Dictionary } from './dictionary.js';
import {
  chosen,
  crosses,
  isBetter,
  isSameLetters,
  isWithin,
  nearest,
  overlaps,
} from './form-choice.js';
import { entriesFor, type CastForm, type FormEntry } from './form-entry.js';
import { endKeys, slipIn, type FormMatch, type FormText, type NearForm } from './form-match.js';
import { putFor } from './form-put.js';
import { hasCapital, nameTokens, type NameToken } from './name-tokens.js';
import { NearForms } from './near-forms.js';
import { SplitWords, type Mended } from './split-words.js';

interface Node<T> {
  readonly next: Map<string, Node<T>>;
  readonly ends: FormEntry<T>[];
}

/** Most words that are kept as saying nothing. */
const MOST_QUIET = 200_000;

/** What a text says of the names of a cast. */
export interface CastReading<T> {
  readonly tokens: readonly NameToken[];
  /** In the order of the text, none within another. */
  readonly matches: readonly FormMatch<T>[];
}

/**
 * The forms of the names of a cast, right, wrong and no longer used, looked for in texts: the longest
 * wins. Unlike `NameIndex`, which sees through disguises, it says how what is typed differs from
 * what should be.
 */
export class CastForms<T> {
  readonly #root: Node<T> = { next: new Map(), ends: [] };
  readonly #near = new NearForms<T>();
  readonly #split = new SplitWords();
  readonly #dictionary: Pick<Dictionary, 'knows'>;
  /** Words with which no form begins and which are near to none: almost all of a text. */
  readonly #quiet = new Set<string>();

  constructor(forms: Iterable<CastForm<T>>, dictionary: Pick<Dictionary, 'knows'>) {
    this.#dictionary = dictionary;
    for (const form of forms) {
      for (const entry of entriesFor(form)) {
        this.#add(entry);
        this.#near.add(entry);
        this.#addSplit(entry);
      }
    }
  }

  /** @param title whether the text is a title, in which small words may have capitals. */
  read(text: string, { title = false }: { readonly title?: boolean } = {}): CastReading<T> {
    const tokens = nameTokens(text);
    const read = { tokens, title };
    const loud = tokens.flatMap((token, at) => (this.#isQuiet(token) ? [] : [at]));
    const mended = this.#split.in(tokens, this.#dictionary.knows);
    if (loud.length === 0 && mended.length === 0) return { tokens, matches: [] };
    const standing = chosen(loud.flatMap((at) => this.#longestAt(at, read)));
    const matches = this.#withSlips(standing, loud, read);
    return {
      tokens,
      matches: mended.reduce((sum, each) => this.#withMended(sum, each, title), matches),
    };
  }

  #addSplit({ form, variant, tokens }: FormEntry<T>): void {
    if (variant !== 'own' || form.role === 'other' || form.role === 'avoid') return;
    for (const { whole, base } of tokens) if (hasCapital(base)) this.#split.add(whole);
  }

  /** Puts in a form of which a word stands in two pieces, unless what stands there is longer. */
  #withMended(
    matches: readonly FormMatch<T>[],
    { tokens, at }: Mended,
    title: boolean,
  ): readonly FormMatch<T>[] {
    const starts = [0, 1, 2, 3, 4, 5].map((back) => at - back).filter((start) => start >= 0);
    const found = starts
      .flatMap((start) => this.#longestAt(start, { tokens, title }))
      .filter((match) => match.at + match.length > at && isSameLetters(match))
      .map((match) => ({
        ...match,
        length: match.length + 1,
        slip: 'joined' as const,
        clear: true,
      }));
    const [best] = found.toSorted((a, b) => b.length - a.length);
    if (!best) return matches;
    const others = matches.filter((match) => overlaps(match, best));
    if (others.some((match) => match.slip === null && !isWithin(match, best))) return matches;
    return [...matches.filter((match) => !others.includes(match)), best].sort(
      (a, b) => a.at - b.at,
    );
  }

  #isQuiet(token: NameToken): boolean {
    const word = token.ending === '' ? token.base : token.base + token.ending;
    if (this.#quiet.has(word)) return true;
    const begins = endKeys(token).some(([key]) => this.#root.next.has(key));
    if (begins || this.#root.next.has(token.whole) || this.#near.mayBe(token)) return false;
    if (this.#quiet.size >= MOST_QUIET) this.#quiet.clear();
    this.#quiet.add(word);
    return true;
  }

  #add(entry: FormEntry<T>): void {
    let node = this.#root;
    for (const { whole } of entry.tokens) {
      let next = node.next.get(whole);
      if (!next) node.next.set(whole, (next = { next: new Map(), ends: [] }));
      node = next;
    }
    if (node !== this.#root) node.ends.push(entry);
  }

  /** The longest form that begins with a word; of a wrong one, the longest right one too. */
  #longestAt(at: number, text: FormText): readonly FormMatch<T>[] {
    let node: Node<T> | undefined = this.#root;
    let best: FormMatch<T> | null = null;
    for (let index = at; node; index += 1) {
      const token: NameToken | undefined = text.tokens[index];
      if (!token || (index > at && token.gap.length > 2)) break;
      const from: Node<T> = node;
      const ends: readonly (FormMatch<T> | null)[] = endKeys(token).map(([key, plural]) =>
        this.#endingAt(from.next.get(key), at, index - at + 1, plural, text),
      );
      best = ends.find((each) => each !== null) ?? best;
      node = from.next.get(token.whole);
    }
    return best ? [best] : [];
  }

  #endingAt(
    node: Node<T> | undefined,
    at: number,
    length: number,
    plural: string,
    text: FormText,
  ): FormMatch<T> | null {
    let best: FormMatch<T> | null = null;
    for (const entry of node?.ends ?? []) {
      const slip = slipIn(entry, at, plural, text, this.#dictionary);
      if (slip === null) continue;
      const match = {
        entry,
        at,
        length,
        from: text.tokens[at]?.from ?? 0,
        to: text.tokens[at + length - 1]?.to ?? 0,
        slip: slip === 'none' ? null : slip,
        clear: slip === 'capitals' || slip === 'marks',
        put: putFor(entry, at, length, plural, text),
      };
      if (!best || isBetter(match, best)) best = match;
    }
    return best;
  }

  /** Puts the forms that words are nearly among those that stand there. */
  #withSlips(
    standing: readonly FormMatch<T>[],
    loud: readonly number[],
    text: FormText,
  ): readonly FormMatch<T>[] {
    const owner = new Map<number, FormMatch<T>>();
    for (const match of standing) {
      for (let index = match.at; index < match.at + match.length; index += 1)
        owner.set(index, match);
    }
    const near = loud.flatMap((at): readonly NearForm<T>[] => {
      const over = owner.get(at);
      const particles = this.#near.particlesAt(at, text);
      const words =
        over && over.entry.form.role !== 'part'
          ? []
          : this.#near.at(at, text, this.#dictionary.knows);
      return [...particles, ...words].filter((match) => !crosses(match, owner));
    });
    if (near.length === 0) return standing;
    const taken = nearest(near);
    const left = standing.filter((match) => !taken.some((each) => overlaps(each, match)));
    return [...left, ...taken].sort((a, b) => a.at - b.at);
  }
}
