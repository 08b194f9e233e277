import { editDistance } from './distance.js';
import { foldedWords, type FoldedWord } from './fold.js';

/** A form of a name, and whose it is. */
export interface NamedForm<T> {
  readonly form: string;
  /** Capitals count: the form is also a common word. */
  readonly exact: boolean;
  readonly of: T;
}

/** Words of a text that are a form of a name. */
export interface NameMatch<T> {
  readonly from: number;
  readonly to: number;
  /** Whose form it is: of everyone who bears it. */
  readonly of: readonly T[];
  /** One letter is wrong. */
  readonly slip: boolean;
}

interface Entry<T> {
  readonly words: readonly FoldedWord[];
  readonly exact: boolean;
  readonly of: T;
}

interface Node<T> {
  readonly next: Map<string, Node<T>>;
  readonly ends: Entry<T>[];
}

/** The least letters that a word of a name must have for a slip in it to be noticed. */
const SLIP_LETTERS = 6;

/** Forms of names, to be found in texts: the longest first, inflected too. */
export class NameIndex<T> {
  readonly #root: Node<T> = { next: new Map(), ends: [] };
  /** Words of forms that are long enough for a slip, by the word. */
  readonly #long = new Map<string, Entry<T>[]>();
  readonly #slips = new Map<string, readonly string[]>();

  constructor(forms: Iterable<NamedForm<T>>) {
    for (const { form, exact, of } of forms) {
      const words = foldedWords(form);
      if (words.length > 0) this.#add({ words, exact, of });
    }
  }

  /** Names in a text, none within another. A slip is told only where no form stands as it should. */
  find(text: string): NameMatch<T>[] {
    return this.findIn(foldedWords(text));
  }

  /** `find` in the words of a text. */
  findIn(words: readonly FoldedWord[]): NameMatch<T>[] {
    const found: NameMatch<T>[] = [];
    for (let at = 0; at < words.length;) {
      const match = this.#longestAt(words, at) ?? this.#slipAt(words, at);
      if (match) found.push(match.match);
      at += match?.length ?? 1;
    }
    return found;
  }

  #add(entry: Entry<T>): void {
    const last = entry.words.at(-1)?.folded ?? '';
    let node = this.#root;
    for (const word of entry.words.slice(0, -1)) node = stepTo(node, keyOf(word));
    for (const form of inflected(last)) {
      const key = keyOf({ folded: form, apart: entry.words.at(-1)?.apart ?? false });
      stepTo(node, entry.words.length === 1 ? form : key).ends.push(entry);
    }
    for (const { folded } of entry.words) {
      if (folded.length < SLIP_LETTERS || entry.exact) continue;
      this.#long.set(folded, [...(this.#long.get(folded) ?? []), entry]);
    }
  }

  #longestAt(words: readonly FoldedWord[], at: number): Found<T> | null {
    let node: Node<T> | undefined = this.#root;
    let best: Found<T> | null = null;
    for (let index = at; index < words.length; index += 1) {
      const word = words[index];
      if (!word) break;
      node = node.next.get(index === at ? word.folded : keyOf(word));
      if (!node) break;
      const here = words.slice(at, index + 1);
      const ends = node.ends.filter((entry) => !entry.exact || hasCapitals(entry, here));
      if (ends.length > 0) best = foundIn(here, ends, false);
    }
    return best;
  }

  #slipAt(words: readonly FoldedWord[], at: number): Found<T> | null {
    for (const long of this.#slipsOf(words[at])) {
      for (const entry of this.#long.get(long) ?? []) {
        const start = at - entry.words.findIndex(({ folded }) => folded === long);
        const here = start < 0 ? [] : words.slice(start, start + entry.words.length);
        const rest = here.every(
          ({ folded }, index) =>
            start + index === at || inflected(entry.words[index]?.folded ?? '').includes(folded),
        );
        if (here.length !== entry.words.length || !rest) continue;
        const ends = [entry];
        const { match } = foundIn(here, ends, true);
        return { match, length: Math.max(1, start + here.length - at) };
      }
    }
    return null;
  }

  /** The words of forms that a word of a text is one letter away from. */
  #slipsOf(word: FoldedWord | undefined): readonly string[] {
    if (!word || word.folded.length < SLIP_LETTERS - 1 || !/^\p{Lu}/u.test(word.cased)) return [];
    const known = this.#slips.get(word.folded);
    if (known) return known;
    const stem = word.folded.replace(/'s?$/, '');
    const near = [...this.#long.keys()].filter(
      (long) =>
        Math.abs(long.length - stem.length) <= 1 && stem !== long && editDistance(long, stem) === 1,
    );
    this.#slips.set(word.folded, near);
    return near;
  }
}

interface Found<T> {
  readonly match: NameMatch<T>;
  /** Words that it takes from where it was looked for. */
  readonly length: number;
}

function foundIn<T>(
  words: readonly FoldedWord[],
  ends: readonly Entry<T>[],
  slip: boolean,
): Found<T> {
  const from = words[0]?.from ?? 0;
  const to = words.at(-1)?.to ?? from;
  const match = { from, to, of: ends.map((entry) => entry.of), slip };
  return { match, length: words.length };
}

function stepTo<T>(node: Node<T>, key: string): Node<T> {
  let next = node.next.get(key);
  if (!next) node.next.set(key, (next = { next: new Map(), ends: [] }));
  return next;
}

/** A form that is written with a comma or a stop inside is found only with something of the kind. */
function keyOf({ folded, apart }: Pick<FoldedWord, 'folded' | 'apart'>): string {
  return apart ? `,${folded}` : folded;
}

/** The forms that a folded word, or the last word of a name, takes: possessive and plural. */
export function inflected(word: string): readonly string[] {
  const forms = [word, `${word}'s`, `${word}s`, `${word}es`, `${word}s's`];
  if (word.endsWith("'s")) forms.push(word.slice(0, -2), `${word.slice(0, -2)}s`);
  if (word.endsWith('y')) forms.push(`${word.slice(0, -1)}ies`);
  return [...new Set(forms)];
}

function hasCapitals<T>({ words }: Entry<T>, here: readonly FoldedWord[]): boolean {
  return words.every(({ cased }, index) => here[index]?.cased.startsWith(cased) === true);
}
