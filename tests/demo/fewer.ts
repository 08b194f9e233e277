import type { Card, Content } from '../../pipeline/model/index.js';

/**
 * Crew goes as far as the variation and the cards beside it, which tests name. A large card fills two
 * pages of its own.
 */
const MOST: ReadonlyMap<string, number> = new Map([
  ['crew', 20],
  ['toppers', 1],
]);
const OTHERS = 5;

/**
 * The demo with the first cards of each subset: every kind of card, back and hold that it has, in a
 * third of the time. For tests that draw each card and count none.
 */
export function fewerCards(content: Content): Content {
  return { ...content, sets: content.sets.map((set) => ({ ...set, cards: first(set.cards) })) };
}

function first(cards: readonly Card[]): readonly Card[] {
  const taken = new Map<string, number>();
  return cards.filter(({ subset }) => {
    const count = (taken.get(subset) ?? 0) + 1;
    taken.set(subset, count);
    return count <= (MOST.get(subset) ?? OTHERS);
  });
}
