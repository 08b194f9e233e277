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

/** Draws each piece of art at the site's widths and names each file by the digest of its bytes. */
export async function drawPictures(
  sources: readonly string[],
  read: (source: string) => Uint8Array,
  encode: Encode,
): Promise<Pictures> {
  const files = new Map<string, Uint8Array>();
  const bySource = new Map<string, { file: string; width: number; height: number }[]>();
  for (const source of sources) {
    const art = read(source);
    const sizes = await Promise.all(WIDTHS.map((width) => encode(art, width)));
    const named = sizes.map(({ bytes, width, height }) => {
      const file = `assets/${digestOf(bytes)}.webp`;
      files.set(file, bytes);
      return { file, width, height };
    });
    bySource.set(source, named);
  }
  return { files, bySource };
}

function digestOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex').slice(0, 24);
}
