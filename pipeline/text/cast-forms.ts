import type { Dictionary } from './dictionary.js';
import { entriesFor, type CastForm, type FormEntry, type FormRole } from './form-entry.js';
import { endKeys, putFor, slipIn, type FormMatch, type FormText } from './form-match.js';
import { nameTokens, type NameToken } from './name-tokens.js';
import { NearForms, type NearForm } from './near-forms.js';

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
  readonly #dictionary: Pick<Dictionary, 'knows'>;
  /** Words with which no form begins and which are near to none: almost all of a text. */
  readonly #quiet = new Set<string>();

  constructor(forms: Iterable<CastForm<T>>, dictionary: Pick<Dictionary, 'knows'>) {
    this.#dictionary = dictionary;
    for (const form of forms) {
      for (const entry of entriesFor(form)) {
        this.#add(entry);
        this.#near.add(entry);
      }
    }
  }

  /** @param title whether the text is a title, in which small words may have capitals. */
  read(text: string, { title = false }: { readonly title?: boolean } = {}): CastReading<T> {
    const tokens = nameTokens(text);
    const read = { tokens, title };
    const loud = tokens.flatMap((token, at) => (this.#isQuiet(token) ? [] : [at]));
    if (loud.length === 0) return { tokens, matches: [] };
    const standing = chosen(loud.flatMap((at) => this.#longestAt(at, read)));
    return { tokens, matches: this.#withSlips(standing, loud, read) };
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
    const near = loud.flatMap((at) => {
      const over = owner.get(at);
      if (over && over.entry.form.role !== 'part') return [];
      return this.#near
        .at(at, text, this.#dictionary.knows)
        .filter((match) => !crosses(match, owner));
    });
    if (near.length === 0) return standing;
    const taken = nearest(near);
    const left = standing.filter((match) => !taken.some((each) => overlaps(each, match)));
    return [...left, ...taken].sort((a, b) => a.at - b.at);
  }
}

const RANK: Readonly<Record<FormRole, number>> = { right: 0, other: 1, avoid: 2, part: 3 };
const SLIPS = [null, 'capitals', 'marks', 'joined', 'swapped', 'letters'] as const;

function isBetter<T>(a: FormMatch<T>, b: FormMatch<T>): boolean {
  const by = SLIPS.indexOf(a.slip) - SLIPS.indexOf(b.slip);
  return by !== 0 ? by < 0 : RANK[a.entry.form.role] < RANK[b.entry.form.role];
}

/** Matches of which none lies in another: the longest first, what is right before what is not. */
function chosen<T>(matches: readonly FormMatch<T>[]): readonly FormMatch<T>[] {
  if (matches.length < 2) return matches;
  const sorted = matches.toSorted(
    (a, b) =>
      b.length - a.length || Number(a.slip !== null) - Number(b.slip !== null) || a.at - b.at,
  );
  const kept: FormMatch<T>[] = [];
  for (const match of sorted) if (!kept.some((each) => overlaps(each, match))) kept.push(match);
  return kept.sort((a, b) => a.at - b.at);
}

function overlaps<T>(a: FormMatch<T>, b: FormMatch<T>): boolean {
  return a.at < b.at + b.length && b.at < a.at + a.length;
}

/** Whether words are part of a form that goes on beyond them, or is all of them. */
function crosses<T>(match: NearForm<T>, owner: ReadonlyMap<number, FormMatch<T>>): boolean {
  for (let index = match.at; index < match.at + match.length; index += 1) {
    const other = owner.get(index);
    if (!other) continue;
    if (other.at < match.at || other.at + other.length > match.at + match.length) return true;
    if (other.length >= match.length) return true;
  }
  return false;
}

/** Of forms that the same words are nearly, the longest and nearest; unclear, if others are as near. */
function nearest<T>(near: readonly NearForm<T>[]): readonly FormMatch<T>[] {
  const sorted = near.toSorted(
    (a, b) =>
      b.length - a.length ||
      a.distance - b.distance ||
      RANK[a.entry.form.role] - RANK[b.entry.form.role] ||
      a.at - b.at,
  );
  const kept: NearForm<T>[] = [];
  for (const match of sorted) {
    const rival = kept.findIndex((each) => overlaps(each, match));
    const other = kept[rival];
    if (!other) kept.push(match);
    else if (isRival(match, other)) kept[rival] = { ...other, clear: false };
  }
  return kept;
}

function isRival<T>(a: NearForm<T>, b: NearForm<T>): boolean {
  return a.at === b.at && a.length === b.length && a.distance === b.distance && a.put !== b.put;
}
