import { createHash } from 'node:crypto';

import type { PictureFiles } from './public-data.js';

/** Draws art at a width in pixels: given by the caller, so that a test can do without pictures. */
export type Encode = (
  art: Uint8Array,
  width: number,
) => Promise<{ readonly bytes: Uint8Array; readonly width: number; readonly height: number }>;

/** What draws for a site: given by the caller, since drawing is no work of this room. */
export interface Draw {
  readonly picture: Encode;
  /** Draws an SVG as PNG at its own size. */
  readonly share: (svg: Uint8Array) => Promise<Uint8Array>;
  /** What draws, by version: other bytes may come of the same art from another. */
  readonly by: () => Promise<string>;
}

/** Widths in pixels at which the site shows art. */
export const WIDTHS = [240, 560] as const;

/** The pictures of a site: their files by name, and which files belong to which art. */
export interface Pictures {
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly bySource: PictureFiles;
}

/** So many pieces of art are drawn at a time, where there are as many processors. */
const AT_ONCE = 4;

/** Draws each piece of art at the site's widths and names each file by the digest of its bytes. */
export async function drawPictures(
  sources: readonly string[],
  read: (source: string) => Uint8Array,
  encode: Encode,
): Promise<Pictures> {
  const files = new Map<string, Uint8Array>();
  const bySource = new Map<string, { file: string; width: number; height: number }[]>();
  const sizesOf = async (source: string) => {
    const art = read(source);
    return allDone(WIDTHS.map(async (width) => encode(art, width)));
  };
  const drawn: (readonly [string, Awaited<ReturnType<typeof sizesOf>>])[] = [];
  for (let from = 0; from < sources.length; from += AT_ONCE) {
    const some = sources.slice(from, from + AT_ONCE);
    drawn.push(...(await allDone(some.map(async (each) => [each, await sizesOf(each)] as const))));
  }
  for (const [source, sizes] of drawn) {
    const named = sizes.map(({ bytes, width, height }) => {
      const file = `assets/${digestOf(bytes)}.webp`;
      files.set(file, bytes);
      return { file, width, height };
    });
    bySource.set(source, named);
  }
  return { files, bySource };
}

/** As `Promise.all`, but nothing goes on any more when it throws. */
async function allDone<T>(jobs: readonly Promise<T>[]): Promise<readonly T[]> {
  await Promise.allSettled(jobs);
  return Promise.all(jobs);
}

function digestOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex').slice(0, 24);
}
