import { readNumber } from './number-grammar.js';
import { isHyphen, numberTokens, type NumberToken } from './number-tokens.js';

/** What a number is by the way that it is written. */
export type NumberKind =
  /** So many. */
  | 'count'
  /** The so-manieth. */
  | 'ordinal'
  /** A part of a whole: value is below one. */
  | 'fraction'
  /** Part of a code or a number as printed: LC-8, #17, No. 4. */
  | 'code'
  /** A time, a decimal, a sum of money, a per cent, a decade: never a count. */
  | 'measure';

/** In which form a right number would be written in its place. */
export type NumberForm = 'figures' | 'words' | 'other';

/** A number of a text. */
export interface FoundNumber {
  readonly value: number;
  readonly kind: NumberKind;
  readonly form: NumberForm;
  /** UTF-16 units from the start of the text. */
  readonly from: number;
  readonly to: number;
  /** Its tokens: the first, and the one behind the last. */
  readonly at: number;
  readonly next: number;
}

/** Words that say how many without being numbers. */
const MANY: ReadonlyMap<string, number> = new Map([
  ['both', 2],
  ['couple', 2],
  ['pair', 2],
  ['duo', 2],
  ['trio', 3],
  ['quartet', 4],
  ['quintet', 5],
  ['sextet', 6],
  ['septet', 7],
  ['octet', 8],
  ['single', 1],
  ['sole', 1],
  ['lone', 1],
]);
const DOZEN = 12;
const SCORE = 20;
const PARTS: ReadonlyMap<string, number> = new Map([
  ['half', 2],
  ['third', 3],
  ['quarter', 4],
  ['fifth', 5],
  ['sixth', 6],
  ['eighth', 8],
  ['tenth', 10],
]);
const SIGNS: ReadonlyMap<string, number> = new Map([
  ['½', 1 / 2],
  ['⅓', 1 / 3],
  ['⅔', 2 / 3],
  ['¼', 1 / 4],
  ['¾', 3 / 4],
]);

type Tokens = readonly NumberToken[];

/** Every number of a text, in order; of "one hundred and six" only the whole. */
export function numbersIn(text: string): readonly FoundNumber[] {
  return numbersAmong(numberTokens(text));
}

/** As `numbersIn`, of tokens. */
export function numbersAmong(tokens: Tokens): readonly FoundNumber[] {
  const found: FoundNumber[] = [];
  for (let at = 0; at < tokens.length;) {
    const number = numberAt(tokens, at);
    if (number) found.push(number);
    at = number?.next ?? at + 1;
  }
  return found;
}

/** A whole text as one count: "sixteen", "A dozen", "no", "1,200"; null if it is something else. */
export function readCount(text: string): number | null {
  const tokens = numberTokens(text);
  if (tokens.length === 1 && tokens[0]?.word === 'no') return 0;
  const number = numberAt(tokens, 0);
  if (number?.next !== tokens.length) return null;
  return number.kind === 'count' || number.kind === 'ordinal' ? number.value : null;
}

/** Whether a text may have a number at all: quick, and never no where there is one. */
export function mayHaveNumber(text: string): boolean {
  return /\d|[½⅓⅔¼¾]|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twel|thir|fif|twent|fort|eight|nin|hundred|thousand|dozen|half|halves|quarter|second|first|both|couple|pair|duo|trio|\w*tet|single|sole|lone|zero|score)|teen|ieth|\u00ad|\u200b/i.test(
    text,
  );
}

function numberAt(tokens: Tokens, at: number): FoundNumber | null {
  return (
    signAt(tokens, at) ?? fractionAt(tokens, at) ?? dozensAt(tokens, at) ?? plainAt(tokens, at)
  );
}

function signAt(tokens: Tokens, at: number): FoundNumber | null {
  const value = SIGNS.get(tokens[at]?.word ?? '');
  return value === undefined ? null : found(tokens, at, at + 1, value, 'fraction', 'other');
}

/** "half of", "a third of", "two-thirds", "three quarters of". */
function fractionAt(tokens: Tokens, at: number): FoundNumber | null {
  const word = tokens[at]?.word ?? '';
  if (word === 'half' && !isDozen(tokens, at + 1)) {
    return found(tokens, at, at + 1, 1 / 2, 'fraction', 'other');
  }
  const many = word === 'a' ? { value: 1, next: at + 1, ordinal: false } : readNumber(tokens, at);
  if (!many || many.ordinal || tokens[at]?.kind === 'figure') return null;
  const next = isHyphen(tokens[many.next]) ? many.next + 1 : many.next;
  const part = tokens[next]?.word ?? '';
  const parts = PARTS.get(many.value === 1 ? part : part.replace(/s$/, ''));
  const plural = many.value === 1 || part.endsWith('s');
  const of = tokens[next + 1]?.word === 'of';
  if (parts === undefined || !plural || many.value >= parts || (many.value === 1 && !of)) {
    return null;
  }
  return found(tokens, at, next + 1, many.value / parts, 'fraction', 'other');
}

function isDozen(tokens: Tokens, at: number): boolean {
  const next = isHyphen(tokens[at]) || tokens[at]?.word === 'a' ? at + 1 : at;
  return tokens[next]?.word === 'dozen';
}

/** "a dozen", "half a dozen", "two dozen", "3 dozen", "three score", "a pair", "both". */
function dozensAt(tokens: Tokens, at: number): FoundNumber | null {
  const word = tokens[at]?.word ?? '';
  if (word === 'half') {
    const end = tokens.findIndex((token, place) => place > at && token.word === 'dozen');
    return found(tokens, at, end + 1, DOZEN / 2, 'count', 'words');
  }
  const many = MANY.get(word);
  if (many !== undefined) return found(tokens, at, at + 1, many, 'count', 'other');
  if (word === 'dozen') return found(tokens, at, at + 1, DOZEN, 'count', 'words');
  const start = word === 'a' ? { value: 1, next: at + 1, ordinal: false } : readNumber(tokens, at);
  if (!start || start.ordinal) return null;
  const next = isHyphen(tokens[start.next]) ? start.next + 1 : start.next;
  const unit = tokens[next]?.word;
  if (unit === 'dozen') return found(tokens, at, next + 1, start.value * DOZEN, 'count', 'words');
  if (unit === 'score' && word !== 'a') {
    return found(tokens, at, next + 1, start.value * SCORE, 'count', 'words');
  }
  const few = MANY.get(unit ?? '');
  if (word === 'a' && few !== undefined) return found(tokens, at, next + 1, few, 'count', 'other');
  if ((unit === 'pairs' || unit === 'pair') && start.value > 1) {
    return found(tokens, at, next + 1, start.value * 2, 'count', 'other');
  }
  return null;
}

function plainAt(tokens: Tokens, at: number): FoundNumber | null {
  const token = tokens[at];
  if (!token) return null;
  const reading = readNumber(tokens, at);
  if (!reading) {
    return token.kind === 'figure'
      ? found(tokens, at, at + 1, Number(token.word), 'measure', 'other')
      : null;
  }
  const { value, next, ordinal } = reading;
  const figures = token.kind === 'figure';
  const kind = figures ? figureKind(tokens, at, next, ordinal) : ordinal ? 'ordinal' : 'count';
  return found(tokens, at, next, value, kind, figures ? 'figures' : 'words');
}

const MONEY = /^\p{Sc}$/u;

/** What a number in figures is by what touches it. */
function figureKind(tokens: Tokens, at: number, next: number, ordinal: boolean): NumberKind {
  const before = tokens[at - 1];
  const after = tokens[next];
  const touches = tokens[at]?.glued === true;
  if (before && (MONEY.test(before.word) || before.word === '©')) return 'measure';
  if (after && (after.word === '%' || MONEY.test(after.word))) return 'measure';
  if (before?.word === '#' || (touches && before?.kind === 'word')) return 'code';
  if (isOneOfOne(tokens, at, next)) return 'count';
  if (touches && isHyphen(before) && tokens[at - 2]?.kind === 'word' && before?.glued === true) {
    return 'code';
  }
  if (before?.word === '.' && /^(?:no|nos)$/.test(tokens[at - 2]?.word ?? '')) return 'code';
  if (after?.glued === true && after.kind === 'word') return 'measure';
  return ordinal ? 'ordinal' : 'count';
}

/** The second number of "1/1", "1/1s", "1-of-1" and "1-of-1s": its s is a plural, and no unit. */
function isOneOfOne(tokens: Tokens, at: number, next: number): boolean {
  const words = tokens.slice(at - Math.min(at, 4), at).map(({ word }) => word);
  const isSecond = /(?:^| )1 (?:\/|[-‐‑] of [-‐‑])$/.test(words.join(' '));
  const after = tokens[next];
  const isOver = after?.kind !== 'word' || !after.glued || after.word === 's';
  return tokens[at]?.word === '1' && isSecond && isOver;
}

function found(
  tokens: Tokens,
  at: number,
  next: number,
  value: number,
  kind: NumberKind,
  form: NumberForm,
): FoundNumber {
  const from = tokens[at]?.from ?? 0;
  return { value, kind, form, from, to: tokens[next - 1]?.to ?? from, at, next };
}
