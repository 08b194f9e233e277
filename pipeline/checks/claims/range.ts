import { isDash, type FoundNumber } from '../../text/index.js';
import { hedgeOf } from './hedge.js';
import { isCards, nearestNamed, wordAt, type Place, type Taken } from './place.js';
import type { Thing } from './things.js';

/** A range that starts with the number: its upper end. */
export function upperEnd(place: Place): FoundNumber | null {
  const { number, numbers, tokens } = place;
  const between = wordAt(place, number.at - 1) === 'between';
  const link = tokens[number.next];
  const joins = isDash(link) || /^(?:to|through|until)$/.test(link?.word ?? '');
  if (!joins && !(between && link?.word === 'and')) return null;
  const at = number.next + 1;
  const coded = numbers.find(
    (other) => other.kind === 'code' && other.at > at && other.at <= at + 3,
  );
  const upper = numbers.find((other) => other.at === at) ?? coded;
  return upper && upper.value > number.value ? upper : null;
}

/** "LC-1 to LC-8", "cards 1–48", "numbered 1 to 48": numbers as they are printed. */
export function numbersClaim(place: Place, high: FoundNumber): Taken | null {
  const { number } = place;
  const prefix = prefixOf(place);
  const things = prefix === null ? plainRange(place) : codedRange(place, prefix);
  if (!things) return null;
  const before = wordAt(place, number.at - (prefix === null ? 1 : 3));
  const whole =
    /^(?:numbered|from|\(|,|:)$/.test(before) && (before === 'numbered' || titled(place));
  return { as: 'claim', things, relation: 'numbers', hedge: null, high, whole, end: high.next };
}

function prefixOf({ number, tokens }: Place): string | null {
  if (number.kind !== 'code') return null;
  const before = tokens[number.at - 1];
  if (before?.kind === 'word') return before.word;
  return isDash(before) ? (tokens[number.at - 2]?.word ?? null) : null;
}

function codedRange({ prefixes }: Place, prefix: string): readonly Thing[] | null {
  const id = prefixes.get(prefix);
  return id === undefined ? null : [{ kind: 'part', id }];
}

function plainRange(place: Place): readonly Thing[] | null {
  const { at } = place.number;
  const before = wordAt(place, at - 1);
  const runs = before === 'from' && /^(?:runs?|goes|go|numbered)$/.test(wordAt(place, at - 2));
  if (!runs && !/^(?:cards|numbers|nos|numbered|number)$/.test(before)) return null;
  if (runs && !place.named.some((named) => named.next === at - 2 && isCards(named))) return null;
  if (!place.sells && !place.speaks) return null;
  return nearestNamed(place, isCards)?.things ?? [{ kind: 'any', group: null }];
}

function titled(place: Place): boolean {
  return place.named.some(({ next }) => next < place.number.at && next >= place.number.at - 5);
}

/** Of "20 to 24 artists": the claim of its upper end, from its lower. */
export function between(place: Place, upper: Taken, high: FoundNumber): Taken {
  if (upper.as !== 'claim') return upper;
  const hedge = hedgeOf(place.tokens, place.number, place.clause.next);
  return { ...upper, hedge, high };
}
