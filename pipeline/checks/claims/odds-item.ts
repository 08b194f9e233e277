import type { FoundNumber } from '../../text/index.js';
import { wordIn, type OddsSentence } from './odds-rate.js';
import { thingAt, type FoundThing } from './odds-thing.js';

/** Something of which a sentence says how often it is found. */
export interface OddsItem {
  readonly thing: FoundThing;
  /** Things that are named with it by "or", or that may be meant with it. */
  readonly others: readonly FoundThing[];
  readonly isEither: boolean;
  readonly count: FoundNumber | null;
  readonly times: number;
  /** Tokens of its words, the rate among them. */
  readonly at: number;
  readonly next: number;
  /** Tokens to point at where there is no number. */
  readonly spot: { readonly at: number; readonly next: number };
}

/** How many are found, by a number, "a", "once" or "twice", and where that starts. */
export interface Counted {
  readonly count: FoundNumber | null;
  readonly times: number;
  readonly at: number;
}

/** "Once", "twice", or a count that ends at a token. */
export function timesAt(sentence: OddsSentence, at: number): Counted | null {
  const word = wordIn(sentence, at);
  if (word === 'once') return { count: null, times: 1, at };
  if (word === 'twice') return { count: null, times: 2, at };
  const count = sentence.numbers.find(({ next, kind }) => next === at + 1 && kind === 'count');
  return count ? { count, times: count.value, at: count.at } : null;
}

/** Words that no adjective is: what stands before them is no count of what stands behind. */
export const NO_ADJECTIVE =
  /^(?:in|on|at|to|from|by|for|with|and|or|but|is|are|was|were|has|have|the|every|each|per|that|which)$/;
/** Most words between a count and what it counts. */
export const MOST_ADJECTIVES = 3;

/** The count before a thing: "two (hand-drawn) sketch cards", "an autograph", "one of twelve relics". */
export function countBefore(sentence: OddsSentence, { at }: FoundThing): Counted | null {
  for (let place = at - 1; place >= Math.max(sentence.at, at - 1 - MOST_ADJECTIVES); place--) {
    const word = wordIn(sentence, place);
    const count = sentence.numbers.find(
      ({ next, kind }) => next === place + 1 && (kind === 'count' || kind === 'code'),
    );
    if (count) {
      const first =
        wordIn(sentence, count.at - 1) === 'of'
          ? sentence.numbers.find(({ next }) => next === count.at - 1)
          : undefined;
      const own = first ?? count;
      return { count: own, times: own.value, at: own.at };
    }
    if (word === 'a' || word === 'an' || word === 'another') {
      return { count: null, times: 1, at: place };
    }
    if (sentence.tokens[place]?.kind !== 'word' && !/^[-‐‑"“*]$/.test(word)) return null;
    if (NO_ADJECTIVE.test(word)) return null;
  }
  return null;
}

/** The longest thing that ends before a token. */
export function thingEnding(sentence: OddsSentence, next: number): FoundThing | null {
  for (let at = Math.max(sentence.at, next - 8); at < next; at++) {
    const inside = sentence.named.some((named) => named.at < at && at < named.next);
    const thing = inside ? null : thingAt(sentence, at);
    if (thing?.next === next) return thing;
  }
  return null;
}

/** A thing, with what goes with it. */
export function itemOf(
  thing: FoundThing,
  others: readonly FoundThing[],
  isEither: boolean,
  counted: Counted | null,
  span: OddsItem['spot'],
  spot = span,
): OddsItem {
  const { count = null, times = 1 } = counted ?? {};
  return { thing, others, isEither, count, times, ...span, spot };
}
