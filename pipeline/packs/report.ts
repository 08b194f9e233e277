import type { Fraction } from './fraction.js';
import type { Odds } from './odds.js';
import type { Amount, Entry, Product } from './plan.js';
import type { Problem } from './problem.js';
import type { PressSheets } from './sheets.js';

/** What a release plan comes to. Empty, but for its problems, if its figures are no counts. */
export interface PackReport {
  /** Products of which it is known how many cases are made, in the order of the plan. */
  readonly products: readonly ProductReport[];
  /** Products of which that is unset: nothing below counts them. */
  readonly unset: readonly string[];
  readonly totals: Totals;
  /** Kinds of cards over all products, in the order of the plan, decoys not among them. */
  readonly kinds: readonly KindReport[];
  readonly problems: readonly Problem[];
}

export interface Totals {
  readonly cases: number;
  readonly boxes: number;
  readonly packs: number;
  readonly places: number;
  /** Places that something else than base cards takes. */
  readonly taken: number;
  /** Base cards packed. */
  readonly base: number;
  /** Cards packed, decoys not among them. */
  readonly cards: number;
}

export interface ProductReport extends Totals {
  readonly id: string;
  readonly title: string;
  readonly collation: Product['collation'];
  readonly cardsAPack: number;
  readonly packsABox: number;
  readonly boxesACase: number;
  /** Places that no line takes, filled with base cards or nothing; below 0 if lines take too many. */
  readonly left: number;
  /** One for each entry of the plan, in its order; then one of all base cards, if there are some. */
  readonly lines: readonly LineReport[];
}

export interface LineReport extends Odds {
  /** Null for the base cards, which may be of several kinds. */
  readonly kind: string | null;
  readonly title: string;
  readonly what: 'subset' | 'parallel' | 'decoy' | 'base';
  readonly copies: number;
  /** Places that one takes, and that all of them take. */
  readonly placesEach: number;
  readonly places: number;
  /** On average. */
  readonly aBox: Fraction;
  readonly aCase: Fraction;
  /** How the plan says it; null for base cards. */
  readonly amount: Amount | null;
  /** Whether each box or case gets the same number. */
  readonly even: Entry['even'] | null;
  readonly cards: readonly CardsReport[];
}

/** Cards of one kind of which equally many copies go in a product, or over all. */
export interface CardsReport extends Odds {
  readonly kind: string;
  /** Their identities. */
  readonly cards: readonly string[];
  /** Copies of each that are packed: on average, where copies of a card are shared by products. */
  readonly copies: Fraction;
  /** Copies of each with its variations: what fills its place in a set; 0 of a variation. */
  readonly filling: Fraction;
}

export interface KindReport extends Odds {
  readonly kind: string;
  readonly title: string;
  readonly what: 'subset' | 'parallel';
  readonly base: boolean;
  /** Copies packed, of all its cards; of base kinds it may be a fraction, which is a problem. */
  readonly packed: Fraction;
  /** Copies kept in reserve, of all its cards. */
  readonly reserve: number;
  /** Whether all products that hold some are worked out. */
  readonly complete: boolean;
  readonly cards: readonly CardsMade[];
  /** On sheets, if the plan says which. */
  readonly sheets: PressSheets | null;
}

export interface CardsMade extends CardsReport {
  /** Copies of each that are made: packed, and kept in reserve. */
  readonly made: Fraction;
}
