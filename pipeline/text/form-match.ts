import type { Dictionary } from './dictionary.js';
import { isArticle, typedWord, type FormEntry } from './form-entry.js';
import { raised } from './form-put.js';
import { composed, hasCapital, isCapital, type NameToken } from './name-tokens.js';

/** In what way words are not just the form that they are meant to be. */
export type FormSlip = 'capitals' | 'marks' | 'joined' | 'swapped' | 'letters';

/** Words of a text that are a form of a name, or are meant to be. */
export interface FormMatch<T> {
  readonly entry: FormEntry<T>;
  /** The first of its words, and how many they are. */
  readonly at: number;
  readonly length: number;
  /** UTF-16 units from the start of the text. */
  readonly from: number;
  readonly to: number;
  /** Null if they are just the form. */
  readonly slip: FormSlip | null;
  /** Whether nothing else can be meant. */
  readonly clear: boolean;
  /** What to write instead: the right form with the ending that stands there. */
  readonly put: string;
}

/** A form that words are nearly. */
export interface NearForm<T> extends FormMatch<T> {
  /** Edits between the two. */
  readonly distance: number;
}

/** A text in which forms are looked for. */
export interface FormText {
  readonly tokens: readonly NameToken[];
  /** Whether it is a title, in which small words may have capitals. */
  readonly title: boolean;
}

/** The keys by which the last word of a form is looked for, and what of the word is its ending. */
export function endKeys({
  key,
  whole,
}: NameToken): readonly (readonly [key: string, plural: string])[] {
  const keys: (readonly [string, string])[] =
    whole === key
      ? [[key, '']]
      : [
          [whole, ''],
          [key, ''],
        ];
  if (key.length < 4 || !key.endsWith('s') || key.endsWith('ss')) return keys;
  keys.push([key.slice(0, -1), 's']);
  if (key.endsWith('es') && key.length > 4) keys.push([key.slice(0, -2), 'es']);
  return keys;
}

/** How words differ from a form whose letters they have; null if they are not meant to be it. */
export function slipIn<T>(
  entry: FormEntry<T>,
  at: number,
  plural: string,
  text: FormText,
  { knows }: Pick<Dictionary, 'knows'>,
): FormSlip | 'none' | null {
  const { form, tokens: own } = entry;
  const here = text.tokens.slice(at, at + own.length);
  let found: FormSlip | 'none' = entry.variant === 'own' ? 'none' : entry.variant;
  let recased = false;
  const shouted = isShouted(text.tokens, at, own.length);
  for (const [index, token] of here.entries()) {
    const due = own[index];
    if (!due) return null;
    if (index > 0 && token.gap !== due.gap) {
      if (!isOtherGap(token.gap, due.gap)) return null;
      found = 'joined';
    }
    const last = index === own.length - 1;
    const typed = last ? typedEnd(token, due, plural) : typedWord(token);
    const wanted = typedWord(due);
    if (typed === wanted) continue;
    if (typed.toLowerCase() !== wanted.toLowerCase()) found = 'marks';
    else if (shouted || isLenient(token, typed, wanted, index, text.title)) continue;
    else if (entry.variant === 'swapped' || form.role === 'part') return null;
    else if (form.exact && !isOddlyCased(here, own)) return null;
    else {
      recased = true;
      if (found === 'none') found = 'capitals';
    }
  }
  if (recased && !form.exact && !isMeant(here, own, knows)) return null;
  if (form.exact && found !== 'none' && !here.some(({ base }) => isCapital(base))) return null;
  if (entry.variant === 'joined' && !isCoined(here, knows)) return null;
  return found;
}

function typedEnd(token: NameToken, due: NameToken, plural: string): string {
  if (due.ending !== '' && token.whole === due.whole) return typedWord(token);
  return composed(plural === '' ? token.base : token.base.slice(0, -plural.length));
}

export function isJoint(gap: string): boolean {
  return gap === ' ' || gap === '-';
}

/** Whether a gap may stand for another: a space, a hyphen, or a full stop that cuts a title short. */
export function isOtherGap(gap: string, due: string): boolean {
  if (isJoint(gap) && isJoint(due)) return true;
  const stop = due === '. ' || due === '.';
  return stop && (isJoint(gap) || gap === '.' || gap === '. ');
}

/** A capital that its sentence or title asks for, and either article. */
function isLenient(
  token: NameToken,
  typed: string,
  wanted: string,
  index: number,
  title: boolean,
): boolean {
  const capital = raised(wanted);
  if (index === 0 && isArticle(wanted)) return typed === capital || typed === wanted.toLowerCase();
  return typed === capital && (title || (index === 0 && token.start));
}

/** Whether words in other capitals are meant to be a name, and are no common words. */
function isMeant(
  here: readonly NameToken[],
  own: readonly NameToken[],
  knows: Dictionary['knows'],
): boolean {
  const telling = here.filter((_, index) => hasCapital(own[index]?.base ?? ''));
  const capital = telling.some(({ base, start }) => hasCapital(base) && !start);
  if (capital && here.length > 1) return true;
  return telling.some(({ base }) => !knows(base.toLowerCase()));
}

/**
 * Whether capitals are such as no common word has: within a word ("DePths"), or all of one word and
 * not of the next ("DEPTH Charts").
 */
function isOddlyCased(here: readonly NameToken[], own: readonly NameToken[]): boolean {
  const telling = here.filter((_, index) => isCapital(own[index]?.base ?? ''));
  if (telling.length === 0 || !telling.every(({ base }) => isCapital(base))) return false;
  const loud = telling.map(({ base }) => base === base.toUpperCase());
  const mixed = telling.some(({ base }, at) => !loud[at] && /\p{L}\p{Lu}/u.test(base));
  return mixed || (loud.includes(true) && loud.includes(false));
}

/** Whether words that are joined are no word of the language. */
function isCoined(here: readonly NameToken[], knows: Dictionary['knows']): boolean {
  return here.some(
    ({ base }) => /\p{Ll}\p{Lu}/u.test(base) || !(knows(base) || knows(base.toLowerCase())),
  );
}

/**
 * Whether some words in capitals are a heading or a shout: they stand alone in their line or
 * sentence, or the text around them is in capitals too, so that theirs tell nothing.
 */
export function isShouted(tokens: readonly NameToken[], at: number, length: number): boolean {
  const all = tokens.slice(at, at + length);
  if (!all.every(({ base }) => base === base.toUpperCase())) return false;
  const next = tokens[at + length];
  if (all[0]?.start === true && (next === undefined || next.start)) return true;
  const beside = [tokens[at - 1], tokens[at + length]].filter((each) => each !== undefined);
  return beside.some(
    ({ base }) => base.length > 1 && /\p{Lu}/u.test(base) && base === base.toUpperCase(),
  );
}
