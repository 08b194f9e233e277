import type { PublicSubset } from '../../../schema/index.js';

/** "12,500". */
export function grouped(count: number): string {
  return String(count).replace(/\B(?=(?:\d{3})+$)/g, ',');
}

/** "38 cards". */
export function cardCount(count: number): string {
  return count === 1 ? '1 card' : `${grouped(count)} cards`;
}

/** "38 cards listed". */
export function listed(count: number): string {
  return `${cardCount(count)} listed`;
}

/** "38 cards listed"; of a roster without cards of its own "21 artists". */
export function subsetCount({ cards, artists, listed: count }: PublicSubset): string {
  if (cards.length > 0 || artists.length === 0) return listed(count);
  return artists.length === 1 ? '1 artist' : `${grouped(artists.length)} artists`;
}

/** "one of one", "250 copies". */
export function runWords(run: number): string {
  return run === 1 ? 'one of one' : `${grouped(run)} copies`;
}

/** "a, b and c". */
export function series(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1) ?? ''}`;
}
