import { fraction, subtract, whole, type Fraction } from './fraction.js';
import type { Kind, PlannedCard } from './plan.js';

/** How the copies of some cards are divided among them. */
export interface Sharing {
  /** Cards that are no variations of others. */
  readonly cards: number;
  /** What the weights of those that share add up to. */
  readonly weights: number;
  /** Copies of those that have a number of their own. */
  readonly fixed: number;
}

export function sharingOf(kinds: readonly Kind[]): Sharing {
  let cards = 0;
  let weights = 0;
  let fixed = 0;
  for (const kind of kinds) {
    for (const { variationOf, copies, weight = 1 } of kind.cards) {
      if (variationOf !== undefined) continue;
      cards += 1;
      if (copies === undefined) weights += weight;
      else fixed += copies;
    }
  }
  return { cards, weights, fixed };
}

/** Copies of a card of weight 1, of so many in all; null if none shares. */
export function shareOf(copies: number, { weights, fixed }: Sharing): Fraction | null {
  return weights === 0 ? null : fraction(BigInt(copies - fixed), BigInt(weights));
}

/** Cards of which equally many are packed. */
export interface Alike {
  readonly cards: readonly PlannedCard[];
  /** Copies of each. */
  readonly copies: Fraction;
  /** Copies of each with its variations: what fills its place in a set; 0 of a variation. */
  readonly filling: Fraction;
}

/**
 * How many copies of each card are packed, if a card of weight 1 has this share; those with equally
 * many together, in the order of the first of each. A variation's copies come out of its parent's.
 */
export function copiesOfCards(kind: Kind, share: Fraction | null): readonly Alike[] {
  const varied = copiesOfVariations(kind);
  const groups = new Map<string, Alike & { readonly cards: PlannedCard[] }>();
  for (const card of kind.cards) {
    const { copies, weight = 1, id } = card;
    const isParent = card.variationOf === undefined;
    const less = isParent ? (varied.get(id) ?? 0) : 0;
    const key = `${String(copies ?? '')} ${String(weight)} ${String(less)} ${String(isParent)}`;
    const group = groups.get(key);
    if (group !== undefined) {
      group.cards.push(card);
      continue;
    }
    const all = copies === undefined ? weighted(share, weight) : whole(copies);
    const filling = isParent ? all : whole(0);
    groups.set(key, { cards: [card], copies: subtract(all, whole(less)), filling });
  }
  return [...groups.values()];
}

/** By parent, what all its variations take. */
export function copiesOfVariations({ cards }: Kind): ReadonlyMap<string, number> {
  const taken = new Map<string, number>();
  for (const { variationOf, copies = 0 } of cards) {
    if (variationOf === undefined) continue;
    taken.set(variationOf, (taken.get(variationOf) ?? 0) + copies);
  }
  return taken;
}

function weighted(share: Fraction | null, weight: number): Fraction {
  if (share === null) return whole(0);
  return fraction(share.over * BigInt(weight), share.under);
}
