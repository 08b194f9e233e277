import type { LineReport } from './report.js';

/** Numbers from 0 to below 1, each as likely as the other. */
export type Random = () => number;

/** A whole number from 0 to below `count`. */
export function within(count: number, random: Random): number {
  return Math.min(Math.floor(random() * count), count - 1);
}

/** The same list in an order by chance, each as likely (Fisher and Yates; Durstenfeld, CACM 7, 1964, 420). */
export function shuffle(list: number[], random: Random): number[] {
  for (let last = list.length - 1; last > 0; last -= 1) {
    const other = within(last + 1, random);
    const kept = list[last] ?? 0;
    list[last] = list[other] ?? 0;
    list[other] = kept;
  }
  return list;
}

/**
 * The copies of a line in an order by chance, as indices of its cards. Where each card has a part of a
 * copy more, since products share its copies, chance says which cards have the whole one.
 */
export function deckOf({ what, copies, cards }: LineReport, random: Random): readonly number[] {
  if (what === 'decoy') return Array.from({ length: copies }, () => -1);
  const deck: number[] = [];
  const partly: number[] = [];
  let first = 0;
  for (const group of cards) {
    const whole = Number(group.copies.over / group.copies.under);
    const isWhole = group.copies.under === 1n;
    for (let card = first; card < first + group.cards.length; card += 1) {
      for (let copy = 0; copy < whole; copy += 1) deck.push(card);
      if (!isWhole) partly.push(card);
    }
    first += group.cards.length;
  }
  shuffle(partly, random);
  for (let more = 0; deck.length < copies && partly.length > 0; more += 1) {
    deck.push(partly[more % partly.length] ?? 0);
  }
  return shuffle(deck, random);
}
