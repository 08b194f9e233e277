import { grouped } from './counts.js';

/** What must be said wherever odds are, a sentence each. The pages of the site say the same. */
export const ODDS_CAUTIONS = [
  'Odds are averages over all the packs that are made, rounded up.',
  'A pack, a box or a case may hold more of something, fewer, or none.',
] as const;

/** What is to be settled before odds are printed on anything; it is no part of what is printed. */
export const BEFORE_ODDS_PRINT =
  'Before this is printed: whether “no purchase necessary” has to be said, and which rules for prizes apply, is for counsel and local law. Nothing here says so.';

/** "1:1,686": one in so many packs. */
export function oddsWords(packs: number): string {
  return `1:${grouped(packs)}`;
}
