import { editDistance } from './distance.js';
import { soundsOf } from './sound.js';

/** Words of at least so many letters may be found by two wrong letters. */
const TWO_SLIPS = 6;
/** Words longer than this are looked up by one wrong letter and by sound alone. */
const LONGEST_FOR_TWO = 22;

/** How far a word is from one that is known. */
export interface NearWord {
  readonly word: string;
  /** Edits between the two. */
  readonly distance: number;
  /** Whether they sound alike. */
  readonly alike: boolean;
}

/**
 * Words near to another: by at most two edits, found by what is left without some letters (symmetric
 * deletion), or by how they sound.
 */
export class NearWords {
  readonly #words = new Set<string>();
  readonly #shortened = new Map<string, string[]>();
  readonly #sounds = new Map<string, string[]>();
  readonly #known = new Map<string, readonly NearWord[]>();
  readonly #close = new Map<string, readonly NearWord[]>();

  add(word: string): void {
    if (this.#words.has(word)) return;
    this.#known.clear();
    this.#close.clear();
    this.#words.add(word);
    for (const short of shortenedOf(word)) push(this.#shortened, short, word);
    for (const sound of soundsOf(word)) push(this.#sounds, sound, word);
  }

  has(word: string): boolean {
    return this.#words.has(word);
  }

  /** The words that are just one letter away: quick, for words that are hardly ever meant. */
  close(word: string): readonly NearWord[] {
    const before = this.#close.get(word);
    if (before) return before;
    let found: NearWord[] | null = null;
    const seen = new Set([word]);
    for (const short of [word, ...withoutOne(word)]) {
      for (const each of this.#shortened.get(short) ?? NONE) {
        if (seen.has(each)) continue;
        seen.add(each);
        if (editDistance(each, word) > 1) continue;
        (found ??= []).push({ word: each, distance: 1, alike: false });
      }
    }
    this.#close.set(word, found ?? NONE_NEAR);
    return found ?? NONE_NEAR;
  }

  /** The words that are near, the nearest first, then as they were added. */
  near(word: string): readonly NearWord[] {
    const before = this.#known.get(word);
    if (before) return before;
    const found = this.#lookedUp(word);
    this.#known.set(word, found);
    return found;
  }

  #lookedUp(word: string): readonly NearWord[] {
    const found = new Map<string, NearWord>();
    const alike = new Set(soundsOf(word).flatMap((sound) => this.#sounds.get(sound) ?? NONE));
    const candidates = new Set(alike);
    for (const short of shortenedOf(word)) {
      for (const each of this.#shortened.get(short) ?? NONE) candidates.add(each);
    }
    for (const each of candidates) {
      if (each === word) continue;
      const distance = editDistance(each, word);
      if (distance > 2 && !(alike.has(each) && distance <= Math.ceil(each.length / 2))) continue;
      found.set(each, { word: each, distance, alike: alike.has(each) });
    }
    return found.size === 0
      ? NONE_NEAR
      : [...found.values()].sort((a, b) => a.distance - b.distance);
  }
}

const NONE: readonly string[] = [];
const NONE_NEAR: readonly NearWord[] = [];

function push(map: Map<string, string[]>, key: string, word: string): void {
  const known = map.get(key);
  if (known) known.push(word);
  else map.set(key, [word]);
}

/** A word, and the word without each of its letters; of a longer one without each two. */
function shortenedOf(word: string): ReadonlySet<string> {
  const once = withoutOne(word);
  const all = new Set([word, ...once]);
  if (word.length < TWO_SLIPS - 1 || word.length > LONGEST_FOR_TWO) return all;
  for (const short of once) for (const each of withoutOne(short)) all.add(each);
  return all;
}

function withoutOne(word: string): readonly string[] {
  return Array.from({ length: word.length }, (_, at) => word.slice(0, at) + word.slice(at + 1));
}
