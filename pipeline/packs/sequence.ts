import type { Fraction } from './fraction.js';

/** What a box holds of a set whose cards run in their order from pack to pack. */
export interface BoxOfSequence {
  /** Cards of the set that every box holds at least. */
  readonly cards: number;
  /** How many of them are different: that many it guarantees. */
  readonly different: number;
  /** How many it holds besides as doubles. */
  readonly doubles: number;
  /** Whole sets that a box guarantees. */
  readonly sets: number;
  /** Boxes that follow each other on the line and hold the whole set; null if a box may hold none. */
  readonly boxesForSet: number | null;
}

/** @param aBox cards of the set in a box, on average: a fraction is not guaranteed. */
export function boxOfSequence(cards: number, aBox: Fraction): BoxOfSequence {
  const inBox = Number(aBox.over / aBox.under);
  const different = Math.min(inBox, cards);
  return {
    cards: inBox,
    different,
    doubles: inBox - different,
    sets: Math.floor(inBox / cards),
    boxesForSet: boxesForSet(cards, aBox),
  };
}

/** So many cards in a row are in every run of so many boxes, whatever box it starts with. */
function boxesForSet(cards: number, { over, under }: Fraction): number | null {
  if (over <= 0n) return null;
  return Number((BigInt(cards) * under + over - 1n) / over);
}
