import type { Fit } from './types.js';

/** How full the zones of many texts are. */
export interface FitTally {
  readonly texts: number;
  /**
   * Texts that fit, by how full their zones are: the first figure counts those up to 5 %, the
   * second those up to 10 %, the last of twenty those up to 100 %.
   */
  readonly filled: number[];
  /** Texts that fit and leave no line free. */
  readonly tight: number;
  /** Texts that have a line over, or a word that is wider than the zone. */
  readonly overset: number;
}

const STEPS = 20;

/** Counts texts by how full their zones are. */
export function tallyFits(fits: readonly Fit[]): FitTally {
  const filled = Array.from({ length: STEPS }, () => 0);
  const fitting = fits.filter((fit) => fit.fits);
  for (const fit of fitting) {
    const step = Math.min(STEPS - 1, Math.max(0, Math.ceil(fullness(fit) * STEPS) - 1));
    filled[step] = (filled[step] ?? 0) + 1;
  }
  return {
    texts: fits.length,
    filled,
    tight: fitting.filter(({ tight }) => tight).length,
    overset: fits.length - fitting.length,
  };
}

/**
 * How much of a zone its text takes, from 0 (no text) to 1 (no line is free). Lines are counted, not
 * points: a last line of one word takes its line.
 */
function fullness({ capacity, free }: Fit): number {
  return capacity > 0 ? Math.max(0, (capacity - free) / capacity) : 1;
}
