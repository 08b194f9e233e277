import type { Collecting } from '../../pipeline/packs/index.js';

/**
 * How many packs each of some collectors opens until nothing is missing: packs are filled by
 * chance, no two cards alike in one. The same seed gives the same packs.
 */
export function openPacks(
  { cards, inPack, chance = 1 }: Collecting,
  { collectors, seed }: { readonly collectors: number; readonly seed: number },
): readonly number[] {
  const random = randomFrom(seed);
  return Array.from({ length: collectors }, () => {
    const had = new Set<number>();
    let packs = 0;
    while (had.size < cards) {
      packs += 1;
      if (random() >= chance) continue;
      const pack = new Set<number>();
      while (pack.size < inPack) pack.add(Math.floor(random() * cards));
      for (const card of pack) had.add(card);
    }
    return packs;
  });
}

/** Numbers from 0 to 1 by the generator of Park and Miller (1988): 16807 modulo 2^31 - 1. */
export function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 16807) % 2147483647;
    return (state - 1) / 2147483646;
  };
}
