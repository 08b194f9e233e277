import { ApprovedText } from '../../schema/index.js';
import { digestOf, sha256, type Json } from '../review/index.js';
import { ArtError, readArt } from './art.js';
import type { Folder } from './folder.js';
import { validate } from './validate.js';

const ART = /^review\/approved\/art\/([0-9a-f]{64})\.[a-z]+$/;

/** Paths of approved art below the content folder, by the SHA-256 that its name says it has. */
export function keptArtPaths(folder: Folder): ReadonlyMap<string, string> {
  return new Map(
    folder.list().flatMap(({ path, outside }): (readonly [string, string])[] => {
      const digest = outside ? undefined : ART.exec(path)?.[1];
      return digest === undefined ? [] : [[digest, path]];
    }),
  );
}

/**
 * The bytes of kept art.
 * @throws ArtError if they are not what its name says, besides what `readArt` throws.
 */
export function readKeptArt(folder: Folder, path: string): Uint8Array {
  const bytes = readArt(folder, path);
  if (sha256(bytes) === ART.exec(path)?.[1]) return bytes;
  throw new ArtError(
    `${path} is not the art that was approved: its digest does not come out again`,
  );
}

/** Where texts that were sent, and texts that were approved, are kept. */
export type KeptBelow = 'submitted' | 'approved';

/** What a kept text covers; null if it is not kept, or its digest does not come out again. */
export function readKeptText(folder: Folder, below: KeptBelow, digest: string): Json {
  const path = `review/${below}/${digest}.json`;
  try {
    return coversIn(new TextDecoder().decode(folder.read(path)), digest);
  } catch {
    return null;
  }
}

/** Null unless the text is whole and gives this digest. */
function coversIn(text: string, digest: string): Json {
  try {
    const valid = validate(ApprovedText, JSON.parse(text));
    if (!valid.ok || valid.value.digest !== digest) return null;
    const covers = jsonOf(valid.value.covers);
    return digestOf(covers) === digest ? covers : null;
  } catch {
    return null;
  }
}

/** A value that was parsed from JSON, as what it is. */
function jsonOf(value: unknown): Json {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value;
  if (typeof value === 'number') return value;
  if (Array.isArray(value)) return value.map(jsonOf);
  if (typeof value !== 'object') throw new TypeError('JSON has no such value');
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, jsonOf(inner)]));
}
