import {
  numberTokens,
  numbersAmong,
  sentences,
  type FoundNumber,
  type NumberToken,
} from '../../text/index.js';
import { bareClaim } from './bare.js';
import { nounClaim } from './noun.js';
import { maySayOdds, readOdds } from './odds.js';
import type { SaidOdds } from './odds-read.js';
import { ownNumber } from './own.js';
import { isOdds, packClaim } from './pack.js';
import type { Place, Stretch, Taken } from './place.js';
import { between, numbersClaim, upperEnd } from './range.js';
import { runClaim, startsOneOfOne } from './run.js';
import { isOfOtherCards, speaksToCollectors } from './speech.js';
import { namedIn, type Vocabulary } from './things.js';

/** A number of a text and what it is taken for. */
export interface Mention {
  readonly number: FoundNumber;
  readonly taken: Taken;
  /** UTF-16 units of the words of a claim: the number and what it counts. */
  readonly from: number;
  readonly to: number;
  /** Which sentence of the text it stands in. */
  readonly sentence: number;
  readonly clause: Stretch;
}

/** What numbers of a set's texts are read by. */
export interface ReadBy {
  readonly vocabulary: Vocabulary;
  readonly prefixes: ReadonlyMap<string, string>;
}

/** A text that was read: its tokens and every number. */
export interface ClaimReading {
  readonly tokens: readonly NumberToken[];
  readonly mentions: readonly Mention[];
  /** How often the text says that something is found. */
  readonly odds: readonly SaidOdds[];
}

/** Every number of a text, with what it is taken for. */
export function readClaims(text: string, sells: boolean, by: ReadBy): ClaimReading {
  const tokens = numberTokens(text);
  const named = namedIn(tokens, by.vocabulary);
  // A number inside a title is part of a name.
  const numbers = numbersAmong(tokens).filter(
    ({ at, next }) =>
      !named.some((each) => each.at <= at && next <= each.next && next - at < each.next - each.at),
  );
  const parts = stretchesOf(text, tokens);
  const stretches = parts.map(({ sentence }) => sentence);
  const odds = maySayOdds(text)
    ? readOdds({ tokens, named, numbers, sells, sentences: stretches })
    : [];
  const mentions: Mention[] = [];
  // The upper end of a range whose lower end has been read.
  let upper: FoundNumber | null = null;
  for (const number of numbers) {
    const at = parts.findIndex(({ sentence }) => number.at < sentence.next);
    const part = parts[at];
    if (!part) continue;
    const { sentence } = part;
    const clause = clauseOf(tokens, sentence, number);
    const { speaks, otherCards } = part;
    const place = {
      tokens,
      named,
      numbers,
      number,
      sentence,
      clause,
      sells,
      speaks,
      otherCards,
      prefixes: by.prefixes,
    };
    const isUpper: boolean = upper === number;
    const high: FoundNumber | null = isUpper ? null : upperEnd(place);
    const taken: Taken = isUpper
      ? { as: 'number' }
      : isInOdds(number, odds)
        ? { as: 'odds' }
        : takenFor(place, high);
    upper = taken.as === 'claim' ? taken.high : null;
    const end = taken.as === 'claim' ? taken.end : number.next;
    const to = Math.max(number.to, tokens[end - 1]?.to ?? number.to);
    const coded = number.kind === 'code' && taken.as === 'claim';
    const from = (coded ? tokens[number.at - 2]?.from : undefined) ?? number.from;
    mentions.push({ number, taken, from, to, sentence: at, clause });
  }
  return { tokens, mentions, odds };
}

/** Whether a number is one by which odds are said. */
function isInOdds({ at }: FoundNumber, odds: readonly SaidOdds[]): boolean {
  return odds.some(({ rate, number }) => number?.at === at || (rate.at <= at && at < rate.next));
}

/** What one number is, the surest reading first. */
function takenFor(place: Place, high: FoundNumber | null): Taken {
  const { number } = place;
  if (high) {
    const numbers = numbersClaim(place, high);
    if (numbers) return numbers;
  }
  if (number.kind === 'measure') return { as: 'story' };
  const own = ownNumber(place);
  if (own) return own;
  if (number.kind === 'code') return { as: 'number' };
  if (number.kind === 'fraction') return { as: isShare(place) ? 'share' : 'story' };
  if (startsOneOfOne(place)) return { as: 'number' };
  if (isOdds(place)) return { as: 'odds' };
  if (high) {
    const taken = plainTaken({ ...place, number: high });
    return taken.as === 'claim' ? between(place, taken, high) : taken;
  }
  return plainTaken(place);
}

function plainTaken(place: Place): Taken {
  return (
    packClaim(place) ?? runClaim(place) ?? nounClaim(place) ?? bareClaim(place) ?? { as: 'story' }
  );
}

/** "Half of the set", "a third of the cards": a part of the cards, which nothing is compared with. */
function isShare({ tokens, number, sells, speaks }: Place): boolean {
  const words = tokens.slice(number.next, number.next + 4).map(({ word }) => word);
  return (sells || speaks) && words.some((word) => /^(?:set|cards?|inserts?)$/.test(word));
}

interface Part {
  readonly sentence: Stretch;
  readonly speaks: boolean;
  readonly otherCards: boolean;
}

/** The sentences of a text as tokens. */
function stretchesOf(text: string, tokens: readonly NumberToken[]): readonly Part[] {
  let at = 0;
  return sentences(text).map(({ to }) => {
    const start = at;
    while ((tokens[at]?.from ?? Infinity) < to) at += 1;
    const words = tokens.slice(start, at);
    const sentence = { at: start, next: at };
    return { sentence, speaks: speaksToCollectors(words), otherCards: isOfOtherCards(words) };
  });
}

const EDGE = /^[:;()–—]$/;

/** The part of a sentence around a number: a dash that joins a range is no edge. */
function clauseOf(tokens: readonly NumberToken[], sentence: Stretch, number: FoundNumber): Stretch {
  const isEdge = (at: number): boolean => {
    const token = tokens[at];
    if (!token || !EDGE.test(token.word)) return false;
    return !(token.glued && tokens[at + 1]?.glued === true && /[–—]/.test(token.word));
  };
  let at = number.at;
  while (at > sentence.at && !isEdge(at - 1)) at -= 1;
  let next = number.next;
  while (next < sentence.next && !isEdge(next)) next += 1;
  return { at, next };
}
