import type { Subset } from '../../schema/index.js';
import { fenceOf, isIssued, startOf, type Card, type Copy, type Spot } from '../model/index.js';
import type { Subject } from './subject.js';

/** Whether a bio is asked for: neither the subset nor the card says `bio: none`. */
export function wantsBio(plan: Subset, card: Card): boolean {
  return plan.bio !== 'none' && card.front.bio !== 'none';
}

/** A card that is printed, with the plan of its subset. */
export interface PrintedCard {
  readonly card: Card;
  readonly plan: Subset;
}

/** Cards that are printed. */
export function printedCards({ subsets }: Subject): PrintedCard[] {
  return subsets.flatMap(({ cards, plan }) =>
    cards.filter(isIssued).map((card) => ({ card, plan })),
  );
}

/** All of a bio, from its first word to its last. */
export function bioSpot(card: Card): Spot {
  const { source, bio } = card;
  const [first] = bio.flat();
  if (!first) return endOfFront(card);
  return { source, from: first.from, to: endOf(bio) };
}

/** Where a bio would begin. */
export function endOfFront({ source }: Card): Spot {
  const from = fenceOf(source.text)?.bodyFrom;
  return from === undefined ? startOf(source) : { source, from, to: from };
}

function endOf(bio: Copy): number {
  return bio.at(-1)?.at(-1)?.to ?? 0;
}

/** "35 to 60 words": the bounds for a bio, in words. */
export function sayWordBounds(min: number | undefined, max: number | undefined): string {
  if (min !== undefined && max !== undefined) return `${min} to ${max} words`;
  return max === undefined ? `at least ${min ?? 0} words` : `at most ${max} words`;
}
