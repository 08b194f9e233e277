import type { FoundNumber } from '../../text/index.js';
import { hedgeOf, type Hedge } from './hedge.js';
import { ahead, HOLDING } from './odds-ahead.js';
import { behind } from './odds-behind.js';
import { timesAt, type OddsItem } from './odds-item.js';
import { ratesIn, wordIn, type OddsSentence, type Rate } from './odds-rate.js';
import type { Findable } from './odds-thing.js';

/** What a text says of how often something is found. */
export interface SaidOdds {
  readonly rate: Rate;
  /** How many are found in so many packs, boxes or cases. */
  readonly count: number;
  /** How they are not meant exactly; `average` makes a promise a rate. */
  readonly hedge: Hedge | null;
  /** What is found: each list is one reading, of all its kinds together. */
  readonly readings: readonly (readonly Findable[])[];
  /** Whether all of that is named by a title or as cards, as no story does. */
  readonly isNamed: boolean;
  readonly product: string | null;
  /** The number that would be wrong; null where it is said without one. */
  readonly number: FoundNumber | null;
  /** Tokens of its words: the first, and the one behind the last. */
  readonly at: number;
  readonly next: number;
  /** Tokens to point at where there is no number. */
  readonly spot: OddsItem['spot'];
}

/** All odds that a sentence says, in order. */
export function oddsIn(sentence: OddsSentence): readonly SaidOdds[] {
  const rates = ratesIn(sentence);
  if (rates.length === 0) return [];
  const used = new Set<number>();
  return rates.flatMap((rate, at) => {
    const items = itemsOf(sentence, rate, rates.slice(0, at), used, rates[at + 1] ?? null);
    for (const { thing } of items) {
      if (rate.count === null || thing.at > rate.at) used.add(thing.at);
    }
    return items
      .map((item) => saidOf(sentence, rate, item, rates, at))
      .toSorted((a, b) => a.at - b.at);
  });
}

function itemsOf(
  sentence: OddsSentence,
  rate: Rate,
  earlier: readonly Rate[],
  used: ReadonlySet<number>,
  later: Rate | null,
): readonly OddsItem[] {
  const isAhead = /^(?:a|an|per|the)$/.test(wordIn(sentence, rate.at)) && rate.count === null;
  const right = (): readonly OddsItem[] => ahead(sentence, rate, later);
  const left = (): readonly OddsItem[] => behind(sentence, rate, earlier, used);
  const holds = HOLDING.test(wordIn(sentence, rate.next));
  if (isAhead && !holds) {
    const before = left();
    return before.length > 0 ? before : timesAhead(sentence, rate, right);
  }
  const [first, second] = holds ? [right, left] : [left, right];
  const found = first();
  return found.length > 0 ? found : second();
}

/** "Twice a box there is a Lake Chart", "six times a case you find a relic". */
function timesAhead(
  sentence: OddsSentence,
  rate: Rate,
  right: () => readonly OddsItem[],
): readonly OddsItem[] {
  const said = timesAt(sentence, rate.at - 1);
  const isNumber = said?.count != null && wordIn(sentence, rate.at - 1) !== 'times';
  if (!said || isNumber || !/^(?:there|you)$/.test(wordIn(sentence, rate.next))) return [];
  const { at, count, times } = said;
  const spot = { at, next: rate.next };
  return right().map((item) => ({ ...item, count, times: item.times * times, at, spot }));
}

function saidOf(
  sentence: OddsSentence,
  rate: Rate,
  item: OddsItem,
  rates: readonly Rate[],
  place: number,
): SaidOdds {
  const { thing, others, isEither } = item;
  const all = [thing, ...others].flatMap(({ whats }) => whats);
  const last = others[0] ?? thing;
  const readings = others.length > 0 && !isEither ? [all, last.whats] : [all];
  const number = rate.number ?? item.count;
  const at = Math.min(item.at, rate.at);
  const next = Math.max(item.next, rate.next);
  return {
    rate,
    count: rate.count ?? item.times,
    hedge: hedgeAround(sentence, { rate, item, at, next }, rates, place),
    readings,
    isNamed: [thing, ...others].every(({ isSure }) => isSure),
    product: rate.product ?? productNear(sentence, { at, next }, rates, place),
    number,
    at,
    next,
    spot: item.spot,
  };
}

interface Said {
  readonly rate: Rate;
  readonly item: OddsItem;
  readonly at: number;
  readonly next: number;
}

/** Most tokens behind the words of a claim in which "on average" is said of it. */
const BEHIND = 4;

function hedgeAround(
  sentence: OddsSentence,
  { rate, item, at, next }: Said,
  rates: readonly Rate[],
  place: number,
): Hedge | null {
  const { tokens } = sentence;
  const before = rates[place - 1]?.next ?? sentence.at;
  let end = next;
  while (end < Math.min(sentence.next, next + BEHIND) && !STOPS.test(wordIn(sentence, end)))
    end += 1;
  let start = at;
  const first = Math.max(before, at - BEHIND);
  while (start > first && !STOPS.test(wordIn(sentence, start - 1))) start -= 1;
  const words = tokens.slice(start, end).map(({ word }) => word);
  if (words.some((word) => /^averag(?:e|es|ing)$/.test(word))) return 'average';
  for (const number of [item.count, rate.number, { at: rate.at, next: rate.at }]) {
    const hedge = number && hedgeOf(tokens, number, 0);
    if (hedge) return hedge;
  }
  return null;
}

const STOPS = /^(?:and|but|while|;|\.)$/;

/** The product of which a sentence speaks where its odds stand. */
function productNear(
  sentence: OddsSentence,
  { at, next }: { readonly at: number; readonly next: number },
  rates: readonly Rate[],
  place: number,
): string | null {
  const inside = sentence.named.filter(
    (each) => each.manner === 'product' && isWithin(each, sentence),
  );
  const own = inside.filter(
    (each) => !rates.some((rate) => isWithin(each, rate)) && !isExcepted(sentence, each),
  );
  const nearest = own.findLast((each) => each.next <= next);
  if (nearest) return nearest.product ?? null;
  const later = rates[place + 1];
  const after = own.find((each) => each.at >= at && (!later || each.next < later.at));
  return after?.product ?? null;
}

/** "Not in Retail", "except Hobby". */
function isExcepted(sentence: OddsSentence, { at }: Span): boolean {
  return [at - 1, at - 2].some((place) =>
    /^(?:not|no|never|except|without|outside|than)$/.test(wordIn(sentence, place)),
  );
}

interface Span {
  readonly at: number;
  readonly next: number;
}

function isWithin({ at }: Pick<Span, 'at'>, span: Span): boolean {
  return span.at <= at && at < span.next;
}
