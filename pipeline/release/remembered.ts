import { createHash } from 'node:crypto';

import type { Encode } from '../out/site/index.js';

/** Bytes of pictures that are kept in memory: those of some thousand cards. */
const MOST = 64 * 1024 * 1024;

/**
 * Draws the same art at the same width once, for as long as the process runs. What was drawn
 * longest ago is forgotten when it is too much; art that could not be drawn is tried again.
 * @param most bytes of pictures that are kept at a time.
 */
export function remembered(encode: Encode, most = MOST): Encode {
  const drawn = new Map<string, ReturnType<Encode>>();
  let left = most;
  const sizes = new Map<string, number>();
  const keep = (key: string, size: number): void => {
    sizes.set(key, size);
    left -= size;
    for (const [oldest, taken] of sizes) {
      if (left >= 0) return;
      sizes.delete(oldest);
      drawn.delete(oldest);
      left += taken;
    }
  };
  return (art, width) => {
    const key = `${createHash('sha256').update(art).digest('hex')} ${String(width)}`;
    const known = drawn.get(key);
    if (known) return known;
    const picture = encode(art, width);
    drawn.set(key, picture);
    picture.then(
      ({ bytes }) => keep(key, bytes.length),
      () => drawn.delete(key),
    );
    return picture;
  };
}
