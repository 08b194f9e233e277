import { commonMeasure, fraction, whole, type Fraction } from './fraction.js';

/** What a box holds of a set whose cards run in their order from pack to pack. */
export interface BoxOfSequence {
  /** Cards of the set that every box holds at least; where it is no whole number, some hold one more. */
  readonly cards: number;
  /** How many of them are different: that many it guarantees. */
  readonly different: number;
  /** How many of them are doubles, at most. */
  readonly doubles: number;
  /** Whole sets that a box guarantees. */
  readonly sets: number;
  /** Boxes that follow each other on the line and hold the whole set; null if all that are made may not. */
  readonly boxesForSet: number | null;
}

/** Cards of a set of which equally many copies come. */
export interface InOrder {
  readonly cards: number;
  /** Copies of each, above 0. */
  readonly copies: Fraction;
}

/**
 * What any box holds. The order begins anew when each card has stood in it as often as its copies are a
 * multiple of what all copies have in common. Where they are alike that is once, and all that is said
 * is exact; where some come more often nothing is known of where, so that it holds for any order: those
 * that come most often may stand together.
 * @param aBox cards of the set in a box, on average: a fraction is not guaranteed.
 */
export function boxOfSequence(set: readonly InOrder[], aBox: Fraction): BoxOfSequence {
  const inBox = Number(aBox.over / aBox.under);
  const often = timesInOrder(set);
  const order = often.reduce((sum, { cards, times }) => sum + cards * times, 0);
  const different = fewestDifferent(often, inBox);
  return {
    cards: inBox,
    different,
    doubles: inBox - different,
    sets: Math.floor(inBox / order),
    boxesForSet: boxesFor(order, aBox),
  };
}

interface Often {
  readonly cards: number;
  readonly times: number;
}

/** How often each card stands in the order until it begins anew. */
function timesInOrder(set: readonly InOrder[]): readonly Often[] {
  const shared = set.reduce((measure, { copies }) => commonMeasure(measure, copies), whole(0));
  return set.map(({ cards, copies }) => {
    const times = fraction(copies.over * shared.under, copies.under * shared.over);
    return { cards, times: Number(times.over) };
  });
}

/** So many in a row are at least so many different ones, whatever the order. */
function fewestDifferent(often: readonly Often[], inRow: number): number {
  let different = 0;
  let left = inRow;
  for (const { cards, times } of often.toSorted((a, b) => b.times - a.times)) {
    const taken = Math.min(cards, Math.ceil(left / times));
    different += taken;
    left = Math.max(0, left - taken * times);
  }
  return different;
}

/** So many cards in a row are in every run of so many boxes, whatever box it starts with. */
function boxesFor(inRow: number, { over, under }: Fraction): number | null {
  if (over <= 0n) return null;
  return Number((BigInt(inRow) * under + over - 1n) / over);
}
