import type { ApprovedText } from '../../schema/index.js';
import { readKeptText, type KeptBelow } from '../read/index.js';
import { canonicalText, digestOf, sha256, type Json, type Part } from '../review/index.js';
import { cardAt, type Ground } from './ground.js';

/** Files to be written, by their path below the content folder. */
export type Files = ReadonlyMap<string, Uint8Array>;

/** The file of a text that is kept, unless it is there already. */
export function keptText(
  { folder }: Ground,
  below: KeptBelow,
  { card, part, covers }: { readonly card: string; readonly part: Part; readonly covers: Json },
): Files {
  const digest = digestOf(covers);
  if (readKeptText(folder, below, digest) !== null) return new Map();
  const kept: ApprovedText = { format: 1, card, part, digest, covers };
  return new Map([[`review/${below}/${digest}.json`, octetsOf(`${canonicalText(kept)}\n`)]]);
}

/** The art of an approved picture, if it still is what was approved, and not kept already. */
export function keptArt(ground: Ground, key: string, covers: Json): Files {
  const found = cardAt(ground, key);
  const file = found?.card.front.image?.file;
  if (!found || file === undefined || covers === null || typeof covers !== 'object') {
    return new Map();
  }
  const path = `${found.set.id}/${file}`;
  const digest = ground.digests.art.get(path);
  if (digest === undefined || !('art' in covers) || covers.art !== digest) return new Map();
  const ending = /\.([a-z]+)$/.exec(file.toLowerCase())?.[1] ?? 'bin';
  const place = `review/approved/art/${digest}.${ending}`;
  if (ground.folder.list().some((entry) => entry.path === place)) return new Map();
  const bytes = ground.folder.read(path);
  return sha256(bytes) === digest ? new Map([[place, bytes]]) : new Map();
}

export function octetsOf(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
