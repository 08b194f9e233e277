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

/** A run of letters that a searched text shares with a known one: places in the known one. */
export interface SharedRun {
  /** Which of the known texts. */
  readonly text: number;
  readonly from: number;
  readonly to: number;
}

/** Finds the runs of at least RUN letters that a text shares with the known ones, each longest. */
export type RunSearch = (letters: string) => readonly SharedRun[];

/**
 * What of a text is compared: letters and digits, small, without marks; compatibility forms (joined
 * or wide letters) as the letters they stand for. Spaces, punctuation, soft hyphens and everything
 * else that Unicode calls default ignorable is left out.
 */
export function letters(text: string): string {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+|\p{Default_Ignorable_Code_Point}+/gu, '')
    .replace(/ς/g, 'σ');
}

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
  const places = placesOf([left]);
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

function placesOf(texts: readonly string[]): Map<number, Place[]> {
  const places = new Map<number, Place[]>();
  for (const [text, known] of texts.entries()) {
    for (const { hash, at } of fingerprints(known)) {
      const there = places.get(hash);
      if (there) there.push({ text, at });
      else places.set(hash, [{ text, at }]);
    }
  }
  return places;
}

function sameGram(left: string, at: number, right: string, other: number): boolean {
  return left.slice(at, at + GRAM) === right.slice(other, other + GRAM);
}

/** A search for runs of the known texts, which are letters already. */
export function searchRuns(known: readonly string[]): RunSearch {
  const places = placesOf(known);
  return (searched) => {
    const runs: SharedRun[] = [];
    // How far the text is known to run along each known text, by the distance of their places.
    const seenTo = new Map<string, number>();
    for (const { hash, at } of fingerprints(searched)) {
      for (const place of places.get(hash) ?? []) {
        const text = known[place.text] ?? '';
        const along = `${String(place.text)} ${String(place.at - at)}`;
        if (at < (seenTo.get(along) ?? 0) || !sameGram(text, place.at, searched, at)) continue;
        const run = longest(text, place.at, searched, at);
        seenTo.set(along, at + run.to - place.at);
        if (run.to - run.from >= RUN) runs.push({ text: place.text, ...run });
      }
    }
    return runs;
  };
}

/** How far what is alike at two places goes to both sides: places in the known text. */
function longest(
  known: string,
  at: number,
  searched: string,
  other: number,
): { from: number; to: number } {
  const apart = other - at;
  let from = at;
  let to = at + GRAM;
  while (from > 0 && from + apart > 0 && known[from - 1] === searched[from - 1 + apart]) from -= 1;
  while (to < known.length && known[to] === searched[to + apart]) to += 1;
  return { from, to };
}
