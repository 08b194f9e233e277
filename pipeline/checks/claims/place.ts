import type { FoundNumber, NumberToken } from '../../text/index.js';
import { hedgeOf, type Hedge } from './hedge.js';
import type { Named, Thing } from './things.js';

/** Tokens: the first, and the one behind the last. */
export interface Stretch {
  readonly at: number;
  readonly next: number;
}

/** A number of a text with all that stands around it. */
export interface Place {
  readonly tokens: readonly NumberToken[];
  readonly named: readonly Named[];
  readonly numbers: readonly FoundNumber[];
  readonly number: FoundNumber;
  readonly sentence: Stretch;
  /** What lies between colons, semicolons, dashes and brackets. */
  readonly clause: Stretch;
  /** Whether the text speaks of the cards themselves, as sales texts do. */
  readonly sells: boolean;
  /** Whether the sentence speaks to collectors. */
  readonly speaks: boolean;
  /** Whether it is of cards that are played with. */
  readonly otherCards: boolean;
  /** The prefixes of the set's numbers, with their subsets. */
  readonly prefixes: ReadonlyMap<string, string>;
}

/** How the number and the real count must stand to each other. */
export type Relation =
  | 'exact'
  /** A part of them: no more than there are. */
  | 'part'
  /** All of them, or, fewer than half, some of which a story tells. */
  | 'some'
  /** All of them, or, more than there are, copies of them. */
  | 'copies'
  /** All but the one that speaks. */
  | 'others'
  /** A range of numbers as printed. */
  | 'numbers';

/** What a number is taken for. */
export type Taken =
  | {
      readonly as: 'claim';
      readonly things: readonly Thing[];
      readonly relation: Relation;
      readonly hedge: Hedge | null;
      /** The upper end of "20 to 24", whose lower end is the number. */
      readonly high: FoundNumber | null;
      /** Whether a range of numbers is said to be the whole one. */
      readonly whole?: boolean;
      /** Token behind the last word of the claim. */
      readonly end: number;
    }
  | { readonly as: 'story' | 'odds' | 'number' | 'share' };

/** The word at a token; empty where there is none. */
export function wordAt({ tokens }: Pick<Place, 'tokens'>, at: number): string {
  return tokens[at]?.word ?? '';
}

/** What comes before a number that is not meant exactly: the hedge and filling words passed over. */
export function startOf(place: Place): number {
  let at = place.number.at;
  while (at > place.sentence.at && isPassed(place, at - 1)) at -= 1;
  return at;
}

function isPassed(place: Place, at: number): boolean {
  const word = wordAt(place, at);
  if (word === 'to') return wordAt(place, at - 1) === 'up';
  return PASSED.has(word);
}

const PASSED: ReadonlySet<string> = new Set(
  'more than fewer less over at least most up nearly almost about around roughly approximately some just only under the all no'.split(
    ' ',
  ),
);

/** A claim about things, exactly so many. */
export function claimOf(
  place: Place,
  things: readonly Thing[],
  end: number,
  relation: Relation = 'exact',
): Taken {
  const hedge = hedgeOf(place.tokens, place.number, place.clause.next);
  return { as: 'claim', things, relation, hedge, high: null, end };
}

/** Whether a clause ends at a token: at a sign, or nothing more. */
export function endsAt({ tokens, sentence }: Place, at: number): boolean {
  if (at >= sentence.next) return true;
  const token = tokens[at];
  return token === undefined || (token.kind === 'sign' && !/^[-‐‑&'"“‘*/]$/.test(token.word));
}

/** The things that a text names nearest to a number: before it, else behind it, in its clause. */
export function nearestNamed(
  place: Place,
  fits: (named: Named) => boolean,
  { at, next }: Stretch = place.clause,
): Named | null {
  const inside = place.named.filter((each) => each.at >= at && each.next <= next && fits(each));
  const before = inside.filter((each) => each.next <= place.number.at).at(-1);
  return before ?? inside.find((each) => each.at >= place.number.next) ?? null;
}

/** Whether something named has a number of its own: "42 inserts" in "42 inserts make 126". */
export function isCounted({ tokens, numbers, number }: Place, named: Named): boolean {
  return numbers.some(
    (other) =>
      other !== number &&
      other.next <= named.at &&
      named.at - other.next <= 3 &&
      !tokens.slice(other.next, named.at).some(({ kind }) => kind === 'sign'),
  );
}

/** Whether something named is cards of the set, all or some. */
export function isCards({ things }: Named): boolean {
  return things.some(({ kind }) => kind === 'part' || kind === 'whole');
}

/** Whether a thing may be claimed to be so many of here, by how it is named. */
export function isClear(place: Place, { manner, things }: Named): boolean {
  if (manner === 'title' || manner === 'trade') return true;
  if (manner === 'group' && place.sells) return true;
  if (manner === 'group' && things.some(({ kind }) => kind === 'artists')) {
    return place.speaks || hasWord(place, /^(?:sketch|sketched|cards?)$/);
  }
  return place.speaks && !place.otherCards;
}

/** Whether a word of the sentence is such. */
export function hasWord({ tokens, sentence }: Place, word: RegExp): boolean {
  for (let at = sentence.at; at < sentence.next; at++) {
    if (word.test(tokens[at]?.word ?? '')) return true;
  }
  return false;
}

/** Whether certain words stand from a token on. */
export function saysAt(place: Place, at: number, words: string): boolean {
  return words.split(' ').every((word, offset) => wordAt(place, at + offset) === word);
}
