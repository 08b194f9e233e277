import { foldedWords, type FoldedWord } from './fold.js';
import { isApart, isTight } from './gap.js';
import { inflected } from './inflected.js';
import { JoinedNames } from './joined-names.js';
import {
  entryOf,
  foundIn,
  hasCapitals,
  readingsOf,
  withoutApostrophes,
  type Entry,
  type Found,
  type NamedForm,
  type NameMatch,
} from './name-entry.js';
import { SlippedNames } from './slipped-names.js';

interface Node<T> {
  readonly next: Map<string, Node<T>>;
  readonly ends: Entry<T>[];
}

/** Forms of names, to be found in texts: the longest first, inflected too. */
export class NameIndex<T> {
  readonly #root: Node<T> = { next: new Map(), ends: [] };
  readonly #joined = new JoinedNames<T>();
  readonly #slipped: SlippedNames<T> | null;

  /** @param slips whether one wrong letter is told too: not for common words, which are near to others. */
  constructor(forms: Iterable<NamedForm<T>>, { slips = true }: { readonly slips?: boolean } = {}) {
    this.#slipped = slips ? new SlippedNames() : null;
    for (const form of forms) {
      const entry = entryOf(form);
      this.#add(entry);
      this.#joined.add(entry);
      this.#slipped?.add(entry);
    }
  }

  /** Names in a text, none within another. A doubt is told only where no form stands as it should. */
  find(text: string): NameMatch<T>[] {
    return this.findIn(foldedWords(text));
  }

  /** `find` in the words of a text. */
  findIn(words: readonly FoldedWord[]): NameMatch<T>[] {
    const found: NameMatch<T>[] = [];
    for (let at = 0; at < words.length;) {
      const match = this.#standingAt(words, at) ?? this.#slipAt(words, at);
      if (match) found.push(match.match);
      at += match?.length ?? 1;
    }
    return found;
  }

  #add(entry: Entry<T>): void {
    const last = entry.words.at(-1);
    if (!last) return;
    let nodes = [this.#root];
    for (const { folded, gap } of entry.words.slice(0, -1)) {
      const forms = new Set([folded, withoutApostrophes(folded)]);
      nodes = nodes.flatMap((node) =>
        [...forms].map((form) => stepTo(node, keyOf(form, isApart(gap)))),
      );
    }
    for (const form of inflected(last.folded)) {
      const key = keyOf(form, isApart(last.gap));
      for (const node of nodes) stepTo(node, key).ends.push(entry);
    }
  }

  #standingAt(words: readonly FoldedWord[], at: number): Found<T> | null {
    return this.#mayBegin(words[at]) ? this.#bestAt(words, at) : null;
  }

  /** A name with a slip, unless a name begins in it that goes on beyond it. */
  #slipAt(words: readonly FoldedWord[], at: number): Found<T> | null {
    const slip = this.#slipped?.at(words, at) ?? null;
    if (!slip) return null;
    for (let index = at + 1; index < at + slip.length; index += 1) {
      const standing = this.#standingAt(words, index);
      if (standing && index + standing.length > at + slip.length) return null;
    }
    return slip;
  }

  /** No for almost every word, and quickly: most texts name few people. */
  #mayBegin(word: FoldedWord | undefined): boolean {
    if (!word || word.others.length > 0 || word.folded.length === 1) return true;
    const { folded } = word;
    return this.#root.next.has(folded) || this.#joined.mayBegin(folded) || folded.includes("'");
  }

  /** The form that takes most of the text; one whose words stand as they should before others. */
  #bestAt(words: readonly FoldedWord[], at: number): Found<T> | null {
    const whole = this.#longestFrom(this.#root, words, at, at);
    const joined = this.#joined.at(words, at);
    if (!whole || !joined) return whole ?? joined;
    return joined.match.doubt === null && joined.match.to > whole.match.to ? joined : whole;
  }

  #longestFrom(
    node: Node<T>,
    words: readonly FoldedWord[],
    at: number,
    index: number,
  ): Found<T> | null {
    const word = words[index];
    if (!word) return null;
    let best: Found<T> | null = null;
    for (const key of keysFor(word, index === at)) {
      const next = node.next.get(key);
      if (!next) continue;
      const found =
        (next.next.size > 0 ? this.#longestFrom(next, words, at, index + 1) : null) ??
        endingAt(next, words.slice(at, index + 1));
      if (found && found.length > (best?.length ?? 0)) best = found;
    }
    return best;
  }
}

/** The least letters of a word that is read without its apostrophe: "we'll" is no "well". */
const LETTERS_WITHOUT_APOSTROPHE = 5;

/** The keys by which a word of a text is looked for: as it is, and as it may be read. */
function keysFor(word: FoldedWord, first: boolean): readonly string[] {
  const { folded, gap } = word;
  const long = folded.length > LETTERS_WITHOUT_APOSTROPHE && folded.includes("'");
  const readings = long ? [...readingsOf(word), withoutApostrophes(folded)] : readingsOf(word);
  if (first) return readings;
  const apart = isApart(gap);
  const either = !apart && gap !== '' && isTight(gap);
  return readings.flatMap((each) => (either ? [each, keyOf(each, true)] : [keyOf(each, apart)]));
}

function endingAt<T>(node: Node<T>, here: readonly FoldedWord[]): Found<T> | null {
  const sure = node.ends.filter((entry) => !entry.exact || hasCapitals(entry, here));
  if (sure.length > 0) return foundIn(here, sure, null);
  const shouted = here.every(({ cased }) => cased === cased.toUpperCase());
  const long = here.some(({ cased }) => cased.length > 1);
  return shouted && long && node.ends.length > 0 ? foundIn(here, node.ends, 'capitals') : null;
}

function stepTo<T>(node: Node<T>, key: string): Node<T> {
  let next = node.next.get(key);
  if (!next) node.next.set(key, (next = { next: new Map(), ends: [] }));
  return next;
}

/** A form that is written with a comma or a stop inside is found only with something of the kind. */
function keyOf(folded: string, apart: boolean): string {
  return apart ? `,${folded}` : folded;
}
