import { editDistance } from './distance.js';

/**
 * The candidate nearest to what was typed, or null if none is near: at most one edit for each
 * three letters. Capitals do not count. The first of equals wins.
 */
export function nearest(typed: string, candidates: Iterable<string>): string | null {
  const folded = typed.toLowerCase();
  let best: string | null = null;
  let least = Math.max(1, Math.floor(typed.length / 3)) + 1;
  for (const candidate of candidates) {
    const distance = editDistance(folded, candidate.toLowerCase());
    if (distance < least) {
      least = distance;
      best = candidate;
    }
  }
  return best;
}
