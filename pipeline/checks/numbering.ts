import type { Subset } from '../../schema/index.js';
import {
  isVariation,
  numberOf,
  plannedNumbers,
  runningNumber,
  type Card,
  type CardSet,
} from '../model/index.js';

/** Most numbers that the plan may give to one subset. */
export const MOST_NUMBERS = 100_000;

/** How a card's number stands to the plan of its subset. */
export type Standing = 'planned' | 'malformed' | 'outside';

/** The numbers of a subset's cards against its plan. Variations bear their parent's number and are left out. */
export interface Numbering {
  /** Null for a subset without numbers, and for a plan whose range is none. */
  readonly planned: readonly string[] | null;
  /** Planned numbers that no card of this subset bears. */
  readonly missing: readonly string[];
  /** Of those, the ones that nothing else wrong explains. */
  readonly gap: readonly string[];
  readonly malformed: readonly Card[];
  readonly outside: readonly Card[];
  /** A card could not be read, or stands in a wrong place: nothing can be said of what is missing. */
  readonly unread: boolean;
  /** Every number is there and in its place, so that counts of this subset can be believed. */
  readonly clean: boolean;
}

/**
 * Compares cards with the plan of their subset.
 * @param bearers how many cards of the whole set bear a number, variations too.
 * @param misplaced whether cards of the set stand where no card may, so that they are missing here.
 */
export function numberingOf(
  set: CardSet,
  plan: Subset,
  cards: readonly Card[],
  bearers: ReadonlyMap<string, number>,
  misplaced: boolean,
): Numbering {
  const planned = isSoundRange(plan.numbers) ? plannedNumbers(plan.numbers) : null;
  const standing = standingIn(plan.numbers);
  const own = cards.filter((card) => !isVariation(card));
  const sound = isSoundRange(plan.numbers);
  const malformed = sound ? own.filter((card) => standing(card) === 'malformed') : [];
  const outside = sound ? own.filter((card) => standing(card) === 'outside') : [];
  const borne = new Set(own.map((card) => card.front.number));
  const missing = (planned ?? []).filter((number) => !borne.has(number));
  const unplanned = own.length - ((planned?.length ?? 0) - missing.length);
  const elsewhere = missing.filter((number) => !bearers.has(number));
  const short = missing.length > 0 || cards.length === 0;
  const unread = set.unread.has(plan.id) || (misplaced && short);
  const wellNumbered = planned === null ? malformed.length === 0 : unplanned === 0;
  const explained = unread || elsewhere.length <= unplanned;
  return {
    planned,
    missing,
    gap: explained ? [] : elsewhere,
    malformed,
    outside,
    unread,
    clean: sound && !unread && missing.length === 0 && wellNumbered,
  };
}

/** Whether a plan's range runs forwards and is not absurdly long. Codes and `none` always are. */
export function isSoundRange(numbers: Subset['numbers']): boolean {
  if (numbers === 'none' || 'codes' in numbers) return true;
  return numbers.from <= numbers.to && numbers.to - numbers.from < MOST_NUMBERS;
}

/** How the number of a card stands to the plan. */
export function standingIn(numbers: Subset['numbers']): (card: Card) => Standing {
  if (numbers === 'none') return (card) => (numberOf(card) === null ? 'planned' : 'malformed');
  if ('codes' in numbers) return standingAmong(numbers.codes);
  const { prefix = '', from, to } = numbers;
  return (card) => {
    const running = numberOf(card) === null ? null : runningNumber(card.front.number, prefix);
    if (running === null) return 'malformed';
    return running >= from && running <= to ? 'planned' : 'outside';
  };
}

function standingAmong(codes: readonly string[]): (card: Card) => Standing {
  const exact = new Set(codes);
  const loose = new Set(codes.map(looseForm));
  return (card) => {
    const number = card.front.number;
    if (exact.has(number)) return 'planned';
    return number === 'none' || loose.has(looseForm(number)) ? 'malformed' : 'outside';
  };
}

/** A code without what is easily mistyped: capitals, spaces, zeros in front of digits. */
export function looseForm(code: string): string {
  return code
    .replace(/\s+/gu, '')
    .replace(/(?<!\d)0+(?=\d)/g, '')
    .toLowerCase();
}
