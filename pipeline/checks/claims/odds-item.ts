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

/** "Once", "twice", "six times", or a count that ends at a token. */
export function timesAt(sentence: OddsSentence, at: number): Counted | null {
  const word = wordIn(sentence, at);
  if (word === 'once') return { count: null, times: 1, at };
  if (word === 'twice') return { count: null, times: 2, at };
  const end = word === 'times' ? at : at + 1;
  const count = sentence.numbers.find(({ next, kind }) => next === end && kind === 'count');
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
      const own = countOf(sentence, count.at) ?? count;
      return { count: own, times: own.value, at: own.at };
    }
    const some = word === 'the' ? countOf(sentence, place + 1) : null;
    if (some) return { count: some, times: some.value, at: some.at };
    if (word === 'a' || word === 'an' || word === 'another') {
      return { count: null, times: 1, at: place };
    }
    if (sentence.tokens[place]?.kind !== 'word' && !/^[-‐‑"“*]$/.test(word)) return null;
    if (NO_ADJECTIVE.test(word)) return null;
  }
  return null;
}

/** The count of "one of (twelve)", "three of the (twelve)", where what is in brackets starts. */
function countOf(sentence: OddsSentence, at: number): FoundNumber | null {
  const of = wordIn(sentence, at - 1) === 'the' ? at - 2 : at - 1;
  if (wordIn(sentence, of) !== 'of') return null;
  return sentence.numbers.find(({ next, kind }) => next === of && kind === 'count') ?? null;
}

/** Most tokens of a thing: "Brass-Nailed 1-of-1s" has nine. */
const LONGEST = 10;

/** The longest thing that ends before a token. */
export function thingEnding(sentence: OddsSentence, next: number): FoundThing | null {
  for (let at = Math.max(sentence.at, next - LONGEST); at < next; at++) {
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
