import { isHyphen, type FoundNumber, type NumberToken } from '../../text/index.js';
import { holderOf, type Holder } from './holder.js';
import { keyOf, type Named } from './things.js';

/** A sentence in which odds may be said. */
export interface OddsSentence {
  readonly tokens: readonly NumberToken[];
  readonly named: readonly Named[];
  readonly numbers: readonly FoundNumber[];
  /** Tokens: the first, and the one behind the last. */
  readonly at: number;
  readonly next: number;
}

/** "1:24 packs", "one in four", "every tenth pack", "a box": of how many packs something is said. */
export interface Rate {
  readonly at: number;
  readonly next: number;
  /** How many are found, where the words themselves say it: 1 of "1:24". */
  readonly count: number | null;
  /** In how many of the unit. */
  readonly per: number;
  readonly unit: Holder;
  /** Whether a pack, box or case is named: "1:24" alone is not sure to be of packs. */
  readonly isSaid: boolean;
  readonly product: string | null;
  /** The number that would be wrong; null where none is written. */
  readonly number: FoundNumber | null;
}

/** All rates of a sentence, in order. */
export function ratesIn(sentence: OddsSentence): readonly Rate[] {
  const rates: Rate[] = [];
  for (let at = sentence.at; at < sentence.next;) {
    const rate =
      ratioAt(sentence, at) ??
      holderRateAt(sentence, at) ??
      numberRateAt(sentence, at) ??
      everyAt(sentence, at, rates.at(-1) ?? null);
    if (rate && rate.next <= sentence.next) rates.push(rate);
    at = rate?.next ?? at + 1;
  }
  return rates;
}

/** The word at a token of the sentence; empty outside it. */
export function wordIn({ tokens, at: first, next }: OddsSentence, at: number): string {
  return at >= first && at < next ? (tokens[at]?.word ?? '') : '';
}

/** The count that starts at a token; "cards 1 in 24" has one too, that looks like a printed number. */
export function countAt({ numbers, tokens }: OddsSentence, at: number): FoundNumber | null {
  const isPlain = (number: FoundNumber): boolean =>
    number.kind === 'count' || (number.kind === 'code' && tokens[at - 1]?.kind === 'word');
  return numbers.find((number) => number.at === at && isPlain(number)) ?? null;
}

/** The product that is named from a token on. */
export function productAt({ named }: OddsSentence, at: number): Named | null {
  return named.find((each) => each.at === at && each.manner === 'product') ?? null;
}

interface Held {
  readonly unit: Holder;
  readonly product: string | null;
  readonly next: number;
}

/** "Packs", "hobby packs", "sealed 24-pack box". */
function heldAt(sentence: OddsSentence, at: number): Held | null {
  const sized = countAt(sentence, at);
  const isSize =
    sized !== null &&
    isHyphen(sentence.tokens[sized.next]) &&
    /^(?:pack|card|box)$/.test(wordIn(sentence, sized.next + 1));
  let next = isSize ? sized.next + 2 : at;
  if (/^(?:sealed|single|whole|full)$/.test(wordIn(sentence, next))) next += 1;
  const product = productAt(sentence, next);
  const end = product ? product.next : next;
  const unit = holderOf(wordIn(sentence, end));
  if (!unit) return null;
  const of = wordIn(sentence, end + 1) === 'of' ? productAt(sentence, end + 2) : null;
  const named = product ?? of;
  return { unit, product: named?.product ?? null, next: of ? of.next : end + 1 };
}

function rateOf(
  at: number,
  held: Held | null,
  said: Pick<Rate, 'count' | 'per' | 'number'> & { readonly next: number },
): Rate {
  return {
    at,
    next: held?.next ?? said.next,
    count: said.count,
    per: said.per,
    unit: held?.unit ?? 'pack',
    isSaid: held !== null,
    product: held?.product ?? null,
    number: said.number,
  };
}

/** "1:24", "1:24 packs", "1:24 Hobby". */
function ratioAt(sentence: OddsSentence, at: number): Rate | null {
  if (wordIn(sentence, at) !== '1' || wordIn(sentence, at + 1) !== ':') return null;
  const number = countAt(sentence, at + 2);
  if (!number || sentence.tokens[at + 2]?.kind !== 'figure' || number.value < 1) return null;
  const isTime = /^(?:am|pm|:)$/.test(wordIn(sentence, number.next));
  const isTimed = wordIn(sentence, at - 1) === ':' && sentence.tokens[at]?.glued === true;
  if (isTime || isTimed) return null;
  const isIn = /^(?:in|of)$/.test(wordIn(sentence, number.next));
  const held = heldAt(sentence, isIn ? number.next + 1 : number.next);
  const rate = rateOf(at, held, { count: 1, per: number.value, number, next: number.next });
  return held ? rate : withProduct(sentence, rate);
}

/** "1:24 Hobby", "1:24 in Hobby". */
function withProduct(sentence: OddsSentence, rate: Rate): Rate {
  const start = wordIn(sentence, rate.next) === 'in' ? rate.next + 1 : rate.next;
  const product = productAt(sentence, start);
  if (!product || wordIn(sentence, product.next) === ':') return rate;
  return { ...rate, product: product.product ?? null, next: product.next };
}

const NEARLY = /^(?:about|around|roughly|approximately|every|each|only|just)$/;

function pastNearly(sentence: OddsSentence, at: number): number {
  let next = at;
  while (NEARLY.test(wordIn(sentence, next))) next += 1;
  return next;
}

/** Behind "in", "out of", "per" and what may stand before the second number; null without them. */
function behindIn(sentence: OddsSentence, at: number): number | null {
  const start = isHyphen(sentence.tokens[at]) ? at + 1 : at;
  const word = wordIn(sentence, start);
  const next = wordIn(sentence, start + 1);
  if (word === 'out' && next === 'of') return pastNearly(sentence, start + 2);
  if (word === 'of' && next === 'every') return start + 2;
  if (word === 'of' && isOfHolders(sentence, start + 1)) return start + 1;
  if (word !== 'in' && word !== 'per') return null;
  const end = start + 1;
  return isHyphen(sentence.tokens[end]) ? end + 1 : pastNearly(sentence, end);
}

/** "(One of) 58 packs". */
function isOfHolders(sentence: OddsSentence, at: number): boolean {
  const number = countAt(sentence, at);
  return number !== null && heldAt(sentence, number.next) !== null;
}

/** A count, "once" or "twice". */
function timesAt(sentence: OddsSentence, at: number): Pick<FoundNumber, 'value' | 'next'> | null {
  const word = wordIn(sentence, at);
  if (word === 'once' || word === 'twice') return { value: word === 'once' ? 1 : 2, next: at + 1 };
  return countAt(sentence, at);
}

/** "One in (every) 24 (packs)", "two in every five packs", "1-in-24". */
function numberRateAt(sentence: OddsSentence, at: number): Rate | null {
  const count = timesAt(sentence, at);
  const start = count && behindIn(sentence, count.next);
  const number = sentence.numbers.find(
    ({ at: first, kind }) => first === start && (kind === 'count' || kind === 'code'),
  );
  if (!count || !number || number.value < count.value) return null;
  const held = heldAt(sentence, number.next);
  const said = { count: count.value, per: number.value, number, next: number.next };
  const rate = rateOf(at, held, said);
  return held ? rate : withProduct(sentence, rate);
}

/** "One pack in four", "one box out of ten", "one pack of four" that is no pack of four cards. */
function holderRateAt(sentence: OddsSentence, at: number): Rate | null {
  const count = countAt(sentence, at);
  const first = count && heldAt(sentence, count.next);
  if (!count || !first) return null;
  const isOf = wordIn(sentence, first.next) === 'of';
  const start = isOf ? pastNearly(sentence, first.next + 1) : behindIn(sentence, first.next);
  const number = start === null ? null : countAt(sentence, start);
  if (!number || number.value < count.value) return null;
  const key = keyOf(wordIn(sentence, number.next));
  if (key === 'card' || isHyphen(sentence.tokens[number.next])) return null;
  const again = heldAt(sentence, number.next);
  if (again && again.unit !== first.unit) return null;
  const said = { count: count.value, per: number.value, number, next: number.next };
  const product = first.product ?? again?.product ?? null;
  return rateOf(at, { ...first, product, next: again?.next ?? number.next }, said);
}

/** "Every 24 packs", "every tenth pack", "every other box", "each hobby box", "a case", "per pack". */
function everyAt(sentence: OddsSentence, at: number, before: Rate | null): Rate | null {
  const word = wordIn(sentence, at);
  const toThe = word === 'the' && wordIn(sentence, at - 1) === 'to';
  if (!toThe && !/^(?:every|each|per|a|an|any)$/.test(word)) return null;
  const single = heldAt(sentence, at + 1);
  if (single) {
    const isMeasure = /^(?:a|an)$/.test(word) && wordIn(sentence, single.next) === 'of';
    if (isMeasure) return null;
    return rateOf(at, pastSize(sentence, single), { count: null, per: 1, number: null, next: at });
  }
  if (word !== 'every' && word !== 'each' && word !== 'per') return null;
  return severalAt(sentence, at, before);
}

/** "Every box of 24 packs": the size says nothing of what is found. */
function pastSize(sentence: OddsSentence, held: Held): Held {
  if (wordIn(sentence, held.next) !== 'of') return held;
  const size = countAt(sentence, held.next + 1);
  return size ? { ...held, next: size.next + 1 } : held;
}

function severalAt(sentence: OddsSentence, at: number, before: Rate | null): Rate | null {
  const start = pastNearly(sentence, at);
  if (wordIn(sentence, start) === 'other') {
    const held = heldAt(sentence, start + 1);
    return held && rateOf(at, held, { count: null, per: 2, number: null, next: at });
  }
  const number = sentence.numbers.find((each) => each.at === start);
  if (!number || (number.kind !== 'count' && number.kind !== 'ordinal')) return null;
  const named = number.value < 1 ? null : heldAt(sentence, number.next);
  const held = named ?? heldAgain(sentence, number, before);
  return held && rateOf(at, held, { count: null, per: number.value, number, next: at });
}

/** "(A chart in every fourth pack, a signal in every) eighth": the pack that was said before. */
function heldAgain(sentence: OddsSentence, number: FoundNumber, before: Rate | null): Held | null {
  const { kind, next } = number;
  if (kind !== 'ordinal' || before?.number?.kind !== 'ordinal' || !before.isSaid) return null;
  const isSign = next >= sentence.next || sentence.tokens[next]?.kind === 'sign';
  const goesOn = /^(?:and|or|but|has|holds|hides)$/.test(wordIn(sentence, next));
  const isAlone = (isSign && !isHyphen(sentence.tokens[next])) || goesOn;
  return isAlone ? { unit: before.unit, product: before.product, next } : null;
}
