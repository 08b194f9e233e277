import { readFileSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { join, relative } from 'node:path';

import type { PublicData } from '../../schema/index.js';
import { PublicData as Shape } from '../../schema/index.js';
import type { Draw, Encode } from '../../pipeline/out/site/index.js';
import { diskFolder, validate } from '../../pipeline/read/index.js';
import { publish, type PublishOrder, type PublishOutcome } from '../../pipeline/release/index.js';
import type { Placed } from '../demo/copy.js';

/** A picture that is nothing but the digest of its art: quick, and easy to search for. */
export function stubPicture(art: Uint8Array, width: number): Uint8Array {
  const digest = createHash('sha256').update(art).digest('hex');
  return new TextEncoder().encode(`picture ${digest} at ${String(width)}`);
}

export const encodeStub: Encode = (art, width) =>
  Promise.resolve({ bytes: stubPicture(art, width), width, height: Math.round(width * 1.4) });

/** Publishes a placed content at an instant in ms, with quick pictures. */
export function publishAt(
  placed: Placed,
  at: number,
  options: { readonly out?: string; readonly now?: number; readonly preview?: boolean } & Pick<
    PublishOrder,
    'disk' | 'asker' | 'earlier' | 'takeBack'
  > = {},
): Promise<PublishOutcome> {
  return publish({
    policy: 'refuse',
    ...options,
    contentPath: placed.content,
    folder: diskFolder(placed.content),
    at,
    now: options.now ?? at,
    preview: options.preview ?? false,
    out: join(placed.root, options.out ?? 'site'),
    plain: false,
    draw: drawStub,
  });
}

/** Every file below a folder, links followed: path to bytes. */
export function filesBelow(folder: string): Map<string, Uint8Array> {
  const root = realpathSync(folder);
  const walk = (at: string): string[] =>
    readdirSync(at)
      .map((name) => join(at, name))
      .flatMap((path) => (statSync(path).isDirectory() ? walk(path) : [path]));
  return new Map(walk(root).map((path) => [relative(root, path), readFileSync(path)]));
}

/** SHA-256 of every file below a folder by its path: quick to compare, and as sure. */
export function digestsBelow(folder: string): Record<string, string> {
  return Object.fromEntries(
    [...filesBelow(folder)].map(([path, bytes]) => [
      path,
      createHash('sha256').update(bytes).digest('hex'),
    ]),
  );
}

/** The public data of a published site, held to their schema. */
export function dataOf(files: ReadonlyMap<string, Uint8Array>): PublicData {
  const bytes = files.get('data.json');
  const valid = validate(Shape, JSON.parse(new TextDecoder().decode(bytes)));
  if (!valid.ok) throw new Error(JSON.stringify(valid.faults));
  return valid.value;
}

/** Quick pictures of all kinds. */
export const drawStub: Draw = {
  picture: encodeStub,
  share: (svg) => Promise.resolve(stubPicture(svg, 1200)),
  by: () => Promise.resolve('stub'),
};
