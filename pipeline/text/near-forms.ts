import type { Dictionary } from './dictionary.js';
import { isArticle, type FormEntry } from './form-entry.js';
import { endKeys, isOtherGap, type FormText, type NearForm } from './form-match.js';
import { putFor } from './form-put.js';
import { isCapital, type NameToken } from './name-tokens.js';
import { NearWords } from './near-words.js';
import { ParticleForms } from './particle-forms.js';

/** A word of a form, and the form. */
interface Place<T> {
  readonly entry: FormEntry<T>;
  readonly place: number;
}

type Knows = Dictionary['knows'];

/** Forms with letters wrong in a word: by edit distance in proportion to its length, or by sound. */
export class NearForms<T> {
  readonly #words = new NearWords();
  readonly #places = new Map<string, Place<T>[]>();
  readonly #particles = new ParticleForms<T>();

  add(entry: FormEntry<T>): void {
    if (entry.variant !== 'own' || entry.form.role === 'other') return;
    this.#particles.add(entry);
    for (const [place, { key, whole, base }] of entry.tokens.entries()) {
      if (isArticle(base) || key.length < 3) continue;
      const last = place === entry.tokens.length - 1;
      for (const word of new Set(last ? [key, whole] : [whole])) {
        this.#words.add(word);
        const known = this.#places.get(word);
        if (known) known.push({ entry, place });
        else this.#places.set(word, [{ entry, place }]);
      }
    }
  }

  /** Whether a word is near to one of a form. */
  mayBe(token: NameToken): boolean {
    if (token.key.length < 2) return false;
    const raised = isCapital(token.base);
    return endKeys(token).some(([key]) =>
      (raised ? this.#words.near(key) : this.#words.close(key)).some(
        ({ word }) => raised || word.length >= 5,
      ),
    );
  }

  /** Every form that begins with a word and has one of its small words wrong. */
  particlesAt(at: number, text: FormText): readonly NearForm<T>[] {
    return this.#particles.at(at, text);
  }

  /** Every form that the words around one are nearly, that one having letters wrong. */
  at(at: number, text: FormText, knows: Knows): readonly NearForm<T>[] {
    const token = text.tokens[at];
    if (!token || token.key.length < 2 || /\d/.test(token.key)) return NONE;
    const raised = isCapital(token.base);
    const found: NearForm<T>[] = [];
    for (const [key, plural] of endKeys(token)) {
      const words = raised ? this.#words.near(key) : this.#words.close(key);
      for (const { word, distance, alike } of words) {
        if ((!raised && word.length < 5) || (plural !== '' && word === token.key)) continue;
        for (const { entry, place } of this.#places.get(word) ?? NONE) {
          const near = { word, distance, alike, plural, typed: key.length };
          const match = this.#matchAt({ entry, place }, at, near, text, knows);
          if (match) found.push(match);
        }
      }
    }
    return found;
  }

  #matchAt(
    { entry, place }: Place<T>,
    at: number,
    near: Near,
    text: FormText,
    knows: Knows,
  ): NearForm<T> | null {
    const { form, tokens: own } = entry;
    const start = at - place;
    const here = start < 0 ? [] : text.tokens.slice(start, start + own.length);
    const token = text.tokens[at];
    if (here.length !== own.length || !token) return null;
    const last = place === own.length - 1;
    if (near.plural !== '' && !last) return null;
    const rest = this.#restOf(entry, here, place);
    if (!rest) return null;
    if (!isNearEnough(near, rest, form.role === 'part')) return null;
    const known = knows(token.base) || knows(token.base.toLowerCase());
    if (!mayBeMeant(entry, here, place, known, rest)) return null;
    const plural = last ? near.plural : rest.plural;
    const from = here[0]?.from ?? 0;
    const clear = own.length > 1 && rest.distance === 0 && near.distance === 1 && !known;
    return {
      entry,
      at: start,
      length: own.length,
      from,
      to: here.at(-1)?.to ?? from,
      slip: 'letters',
      clear,
      put: putFor(entry, start, own.length, plural, text),
      distance: near.distance + rest.distance,
    };
  }

  /** The other words of a form, which must be there, one of them perhaps nearly. */
  #restOf(entry: FormEntry<T>, here: readonly NameToken[], wrong: number): Rest | null {
    let plural = '';
    let distance = 0;
    let letters = 0;
    for (const [index, token] of here.entries()) {
      const due = entry.tokens[index];
      if (!due || (index > 0 && token.gap !== due.gap && !isOtherGap(token.gap, due.gap)))
        return null;
      if (index === wrong) continue;
      const last = index === entry.tokens.length - 1;
      const keys: readonly (readonly [string, string])[] = last
        ? endKeys(token)
        : [[token.whole, '']];
      const same = keys.find(([key]) => key === due.whole || (last && key === due.key));
      if (same) {
        plural = last ? same[1] : plural;
        if (!isArticle(due.base)) letters += due.key.length;
        continue;
      }
      const near = this.#words.near(token.key).find(({ word }) => word === due.key);
      if (!near || near.distance > 1 || due.key.length < 4 || !isCapital(token.base)) return null;
      distance += near.distance;
    }
    return { plural, distance, letters };
  }
}

const NONE: readonly never[] = [];

interface Near {
  readonly word: string;
  readonly distance: number;
  readonly alike: boolean;
  readonly plural: string;
  /** The letters of the word that is typed. */
  readonly typed: number;
}

/** What stands beside the wrong word: letters that are right, edits that are not. */
interface Rest {
  readonly plural: string;
  readonly distance: number;
  readonly letters: number;
}

/** Edits in proportion to the letters: more of them beside words that are right. */
function isNearEnough(
  { word, distance, alike, typed }: Near,
  { letters }: Rest,
  part: boolean,
): boolean {
  const length = word.length;
  if (part && length < 5) return false;
  if (length < 4) return letters >= 3 ? distance <= 1 : alike && distance <= 1;
  const beside = letters >= 3;
  const most = length < (beside ? 6 : 8) ? 1 : 2;
  // Of short words too many sound alike: "De" is no "Dace".
  return distance <= most || (alike && distance <= most + 1 && typed >= 4);
}

/** Whether the wrong word can be meant for the name, and is no word of the language. */
function mayBeMeant<T>(
  { form, tokens: own }: FormEntry<T>,
  here: readonly NameToken[],
  wrong: number,
  known: boolean,
  { letters }: Rest,
): boolean {
  const token = here[wrong];
  if (!token) return false;
  const raised = isCapital(token.base);
  if (known && (!raised || token.start || letters < 3)) return false;
  const telling = here.filter((_, index) => index !== wrong && isCapital(own[index]?.base ?? ''));
  const beside = telling.some(({ base, start }) => isCapital(base) && !start);
  if (form.exact || form.role === 'part') {
    const common = known && (form.role === 'part' || letters < 4);
    if (common || !raised || !telling.every(({ base }) => isCapital(base))) return false;
    if (letters < 3 && token.start && form.exact && token.key.length < 4) return false;
  }
  if (letters > 0 && known) return beside || telling.every(({ base }) => isCapital(base));
  return raised || beside || token.key.length >= 5;
}
