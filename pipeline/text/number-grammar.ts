import { isHyphen, type NumberToken } from './number-tokens.js';

const SMALL = words(
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen',
);
const TENS = new Map(
  'twenty thirty forty fifty sixty seventy eighty ninety'
    .split(' ')
    .map((word, at) => [word, (at + 2) * 10]),
);
const SMALL_ORDINALS = words(
  'zeroth first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth',
);
const TENS_ORDINALS = new Map(
  'twentieth thirtieth fortieth fiftieth sixtieth seventieth eightieth ninetieth'
    .split(' ')
    .map((word, at) => [word, (at + 2) * 10]),
);
const POWERS = new Map([
  ['hundred', 100],
  ['thousand', 1000],
  ['million', 1_000_000],
]);

function words(list: string): ReadonlyMap<string, number> {
  return new Map(list.split(' ').map((word, value) => [word, value]));
}

/** A whole number in words or figures: `next` is the token behind it. */
export interface Reading {
  readonly value: number;
  readonly next: number;
  readonly ordinal: boolean;
}

type Tokens = readonly NumberToken[];

/**
 * The number that starts at a token: "forty-two", "a hundred and six", "1,200", "12 thousand",
 * "sixteenth". British and American forms (with and without "and"), from memory.
 */
export function readNumber(tokens: Tokens, at: number): Reading | null {
  const token = tokens[at];
  if (!token) return null;
  if (token.kind === 'figure') return figure(tokens, at);
  const first = leading(tokens, at);
  if (!first || first.ordinal) return first;
  return magnified(tokens, first);
}

/** A first part: below a hundred, or "a" and "one" before a power. */
function leading(tokens: Tokens, at: number): Reading | null {
  const token = tokens[at];
  const powerNext = POWERS.has(tokens[skipHyphen(tokens, at + 1)]?.word ?? '');
  if (token?.word === 'a') return powerNext ? plain(1, at + 1) : null;
  return belowHundred(tokens, at);
}

function belowHundred(tokens: Tokens, at: number): Reading | null {
  const word = tokens[at]?.word ?? '';
  const small = SMALL.get(word);
  if (small !== undefined) return plain(small, at + 1);
  const ordinal = SMALL_ORDINALS.get(word) ?? TENS_ORDINALS.get(word);
  if (ordinal !== undefined) return { value: ordinal, next: at + 1, ordinal: true };
  const tens = TENS.get(word);
  if (tens === undefined) return null;
  const next = skipHyphen(tokens, at + 1);
  const unit = unitAt(tokens[next]?.word ?? '', next > at + 1);
  if (!unit) return plain(tens, at + 1);
  return { value: tens + unit.value, next: next + 1, ordinal: unit.ordinal };
}

/** One to nine behind a ten; "twenty second" without a hyphen is two words. */
function unitAt(word: string, joined: boolean): { value: number; ordinal: boolean } | null {
  const small = SMALL.get(word);
  if (small !== undefined) return small > 0 && small < 10 ? { value: small, ordinal: false } : null;
  const ordinal = SMALL_ORDINALS.get(word);
  if (ordinal === undefined || ordinal < 1 || ordinal > 9 || !joined) return null;
  return { value: ordinal, ordinal: true };
}

/** Hundreds, thousands and what is added to them. */
function magnified(tokens: Tokens, first: Reading): Reading {
  const below = hundreds(tokens, first);
  const at = skipHyphen(tokens, below.next);
  const word = tokens[at]?.word ?? '';
  if (below.ordinal) return below;
  if (word === 'thousandth') return { value: below.value * 1000, next: at + 1, ordinal: true };
  if (word === 'million') return plain(below.value * 1_000_000, at + 1);
  if (word !== 'thousand') return below;
  const value = below.value * 1000;
  const rest = addedToThousands(tokens, at + 1);
  return rest ? { ...rest, value: value + rest.value } : plain(value, at + 1);
}

/** "and six", "two hundred and six"; behind a comma only hundreds: "two thousand, four hundred". */
function addedToThousands(tokens: Tokens, at: number): Reading | null {
  const comma = tokens[at]?.word === ',';
  const and = tokens[comma ? at + 1 : at]?.word === 'and';
  const small = belowHundred(tokens, skipHyphen(tokens, at + (comma ? 1 : 0) + (and ? 1 : 0)));
  if (!small || small.value === 0) return null;
  const whole = small.ordinal ? small : hundreds(tokens, small);
  return comma && whole === small ? null : whole;
}

/** "and six", "six", behind hundreds. */
function addedToHundreds(tokens: Tokens, at: number): Reading | null {
  const start = skipHyphen(tokens, at);
  const from = tokens[start]?.word === 'and' ? skipHyphen(tokens, start + 1) : start;
  const small = belowHundred(tokens, from);
  return small && small.value > 0 ? small : null;
}

function hundreds(tokens: Tokens, first: Reading): Reading {
  const at = skipHyphen(tokens, first.next);
  if (tokens[at]?.word === 'hundredth') {
    return { value: first.value * 100, next: at + 1, ordinal: true };
  }
  if (tokens[at]?.word !== 'hundred') return first;
  const rest = addedToHundreds(tokens, at + 1);
  const value = first.value * 100;
  return rest ? { ...rest, value: value + rest.value } : plain(value, at + 1);
}

function figure(tokens: Tokens, at: number): Reading | null {
  const token = tokens[at];
  if (!token || /\./.test(token.word)) return null;
  const value = Number(token.word.replace(/\D/g, ''));
  const end = tokens[at + 1];
  if (end?.glued === true && /^(?:st|nd|rd|th)$/.test(end.word)) {
    return { value, next: at + 2, ordinal: true };
  }
  const power = POWERS.get(end?.word ?? '');
  return power === undefined ? plain(value, at + 1) : plain(value * power, at + 2);
}

function plain(value: number, next: number): Reading {
  return { value, next, ordinal: false };
}

/** Past a hyphen that joins two words. */
function skipHyphen(tokens: Tokens, at: number): number {
  return isHyphen(tokens[at]) && tokens[at]?.glued === true && tokens[at + 1]?.glued === true
    ? at + 1
    : at;
}
