import type { Folded } from './fold.js';

/**
 * Winnowing after S. Schleimer, D. Wilkerson and A. Aiken, "Winnowing: Local Algorithms for
 * Document Fingerprinting", SIGMOD 2003: of every WINDOW hashes in a row, the rightmost least one
 * is kept. Two texts that share a run of WINDOW + GRAM - 1 = 40 letters share a whole window of
 * hashes, so both keep the same one of it: such a run is always found. Nothing that shares fewer
 * than GRAM letters is ever met.
 */

/** Letters that are hashed together. */
const GRAM = 25;
/** Neighbouring hashes of which at least one is kept. */
const WINDOW = 16;
/** Every shared run of this many letters is found: the guarantee. In UTF-16 units of `letters`. */
export const RUN = WINDOW + GRAM - 1;

/** A hash that winnowing kept, and the place of its k letters. */
export interface Mark {
  readonly hash: number;
  readonly at: number;
}

/** A run of letters that a searched text shares with a known one. */
export interface SharedRun {
  /** Which of the known texts. */
  readonly text: number;
  /** Places of letters in the known text; `to` is not part of the run. */
  readonly from: number;
  readonly to: number;
  /** Where in the letters of the searched text it begins. */
  readonly at: number;
}

/** Finds the runs of at least RUN letters that a text shares with the known ones, each longest. */
export type RunSearch = (searched: Folded) => readonly SharedRun[];

const BASE = 0x01000193;

/** The hashes of all runs of `size` letters, modulo 2^32: Karp and Rabin, 1987. */
export function rollingHashes(text: string, size: number): number[] {
  let leaving = 1;
  for (let power = 0; power < size; power += 1) leaving = Math.imul(leaving, BASE);
  const hashes: number[] = [];
  let hash = 0;
  for (let at = 0; at < text.length; at += 1) {
    const gone = at < size ? 0 : Math.imul(text.charCodeAt(at - size) + 1, leaving);
    hash = (Math.imul(hash, BASE) + text.charCodeAt(at) + 1 - gone) | 0;
    if (at + 1 >= size) hashes.push(scattered(hash));
  }
  return hashes;
}

/** Spreads a hash over all 32 bits, one to one (finisher of MurmurHash3, A. Appleby). */
function scattered(hash: number): number {
  const first = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  const second = Math.imul(first ^ (first >>> 13), 0xc2b2ae35);
  return (second ^ (second >>> 16)) >>> 0;
}

/**
 * The rightmost least hash of every window, each place once, in order. Fewer hashes than a window
 * count as one window.
 */
export function winnow(hashes: readonly number[], window: number): Mark[] {
  const marks: Mark[] = [];
  let least = -1;
  for (let end = 0; end < hashes.length; end += 1) {
    const start = Math.max(0, end - window + 1);
    const from = least < start ? start : end;
    if (least < start) least = start;
    for (let at = from; at <= end; at += 1) {
      if ((hashes[at] ?? Infinity) <= (hashes[least] ?? Infinity)) least = at;
    }
    const whole = end + 1 >= Math.min(window, hashes.length);
    if (whole && marks.at(-1)?.at !== least) marks.push({ hash: hashes[least] ?? 0, at: least });
  }
  return marks;
}

/** The fingerprints of letters, with the sizes that give the guarantee. */
export function fingerprints(text: string): Mark[] {
  return winnow(rollingHashes(text, GRAM), WINDOW);
}

/** Fingerprints that two texts share, each seen to be true by its letters: places in both. */
export function sharedMarks(left: string, right: string): { left: number; right: number }[] {
  const places = placesOf(marksOf([left]));
  return fingerprints(right).flatMap(({ hash, at }) =>
    (places.get(hash) ?? [])
      .filter((place) => sameGram(left, place.at, right, at))
      .map((place) => ({ left: place.at, right: at })),
  );
}

interface Place {
  readonly text: number;
  readonly at: number;
}

/** A fingerprint of a known text. */
export interface KnownMark extends Place {
  readonly hash: number;
}

/** The fingerprints of known texts, which are letters already. */
export function marksOf(known: readonly string[]): readonly KnownMark[] {
  return known.flatMap((each, text) =>
    fingerprints(each).map(({ hash, at }) => ({ hash, text, at })),
  );
}

function placesOf(marks: readonly KnownMark[]): Map<number, Place[]> {
  const places = new Map<number, Place[]>();
  for (const mark of marks) {
    const there = places.get(mark.hash);
    if (there) there.push(mark);
    else places.set(mark.hash, [mark]);
  }
  return places;
}

function sameGram(left: string, at: number, right: string, other: number): boolean {
  return left.slice(at, at + GRAM) === right.slice(other, other + GRAM);
}

/** Two places are never as far apart as this. */
const FARTHEST = 2 ** 32;

/** Bits of a hash that are looked at before the places themselves. */
const SIFTED = 20;

/** One bit for each way in which the first bits of a hash can be: set if some hash has them. */
function sieveOf(hashes: Iterable<number>): Uint8Array {
  const sieve = new Uint8Array(2 ** (SIFTED - 3));
  for (const hash of hashes) {
    const bits = hash >>> (32 - SIFTED);
    sieve[bits >>> 3] = (sieve[bits >>> 3] ?? 0) | (1 << (bits & 7));
  }
  return sieve;
}

/**
 * A search for runs of the known texts, which are letters already. Of a known text the fingerprints
 * are kept; of a searched one every gram is looked up, so that nothing is lost by it.
 *
 * @param marks the fingerprints to look for: all, if they are not given. Runs in which none of them
 *   stands are not found.
 */
export function searchRuns(
  known: readonly string[],
  marks: readonly KnownMark[] = marksOf(known),
): RunSearch {
  const places = placesOf(marks);
  const sieve = sieveOf(places.keys());
  return (searched) => {
    const runs: SharedRun[] = [];
    // How far the text is known to run along each known text, by the distance of their places.
    const seenTo = new Map<number, number>();
    const look = (hash: number, at: number): void => {
      for (const place of places.get(hash) ?? []) {
        const text = known[place.text] ?? '';
        const along = place.text * FARTHEST + place.at - at;
        if (at < (seenTo.get(along) ?? 0)) continue;
        const run = longest(text, place.at, searched, at);
        if (run.to - place.at < GRAM) continue;
        seenTo.set(along, at + run.to - place.at);
        if (run.to - run.from >= RUN) {
          runs.push({ text: place.text, ...run, at: at - (place.at - run.from) });
        }
      }
    };
    sift(searched, sieve, look);
    return runs;
  };
}

/** Hashes all grams, as `rollingHashes` does, and looks at those that the sieve lets through. */
function sift(
  { units, length }: Folded,
  sieve: Uint8Array,
  look: (hash: number, at: number) => void,
): void {
  let leaving = 1;
  for (let power = 0; power < GRAM; power += 1) leaving = Math.imul(leaving, BASE);
  let hash = 0;
  for (let at = 0; at < length; at += 1) {
    const gone = at < GRAM ? 0 : Math.imul((units[at - GRAM] ?? 0) + 1, leaving);
    hash = (Math.imul(hash, BASE) + (units[at] ?? 0) + 1 - gone) | 0;
    const bits = scattered(hash) >>> (32 - SIFTED);
    if (((sieve[bits >>> 3] ?? 0) & (1 << (bits & 7))) === 0) continue;
    if (at + 1 >= GRAM) look(scattered(hash), at + 1 - GRAM);
  }
}

/** How far what is alike at two places goes to both sides: places in the known text. */
function longest(
  known: string,
  at: number,
  { units, length }: Folded,
  other: number,
): { from: number; to: number } {
  const apart = other - at;
  let from = at;
  let to = at;
  while (to < known.length && to + apart < length && known.charCodeAt(to) === units[to + apart]) {
    to += 1;
  }
  while (from > 0 && from + apart > 0 && known.charCodeAt(from - 1) === units[from - 1 + apart]) {
    from -= 1;
  }
  return { from, to };
}
