import { createHash } from 'node:crypto';

import type { Content } from '../model/index.js';
import type { Digests } from '../review/index.js';
import type { Face, FontShelf } from '../typeset/index.js';
import type { Folder } from './folder.js';

/** The digests of all art and fonts that cards lean on. Each file is read once. */
export function readDigests(folder: Folder, content: Content, fonts: FontShelf): Digests {
  const art = content.sets.flatMap((set) =>
    set.cards.flatMap(({ front: { image } }) =>
      image !== undefined && set.art.has(image.file) ? [`${set.id}/${image.file}`] : [],
    ),
  );
  return {
    art: new Map([...new Set(art)].map((path) => [path, digestOf(folder.read(path))])),
    fonts: new Map([...fonts].map(([layout, families]) => [layout, faceDigests(families)])),
  };
}

function faceDigests(
  families: FontShelf extends ReadonlyMap<string, infer F> ? F : never,
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    [...families].flatMap(([font, faces]) =>
      Object.entries(faces).map(([face, { bytes }]: [string, Face]) => [
        `${font}.${face}`,
        faceDigest(bytes),
      ]),
    ),
  );
}

/** Faces of packages are opened once for all readings: so are their digests made. */
const known = new WeakMap<Uint8Array, string>();

function faceDigest(bytes: Uint8Array): string {
  const digest = known.get(bytes) ?? digestOf(bytes);
  known.set(bytes, digest);
  return digest;
}

function digestOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
