import { createHash } from 'node:crypto';

import sharp from 'sharp';
import { describe, expect, it } from 'vitest';

import { audit, type Eyes } from '../../pipeline/audit/index.js';
import { likenessOf } from '../../pipeline/audit/likeness.js';
import { SMALL, SMALL_DAY } from './small-property.js';

/** A picture of 17 by 16 pixels, so that each field that is compared is one of them. */
function png(shade: (row: number, column: number) => number): Promise<Buffer> {
  const pixels = Uint8Array.from({ length: 272 }, (_, at) => shade(Math.floor(at / 17), at % 17));
  const raw = { width: 17, height: 16, channels: 1 } as const;
  return sharp(pixels, { raw }).toColourspace('b-w').png().toBuffer();
}

/**
 * A picture of stripes in which so many of the 256 comparisons come out otherwise: two for a field
 * that is as its neighbours are, one where it has only one neighbour.
 */
function stripes(otherwise: number): Promise<Buffer> {
  return png((row, column) => {
    const isTwo = column === 1 + 2 * Math.floor(row / 16) && row < Math.floor(otherwise / 2);
    const isOne = column === 16 && row === 0 && otherwise % 2 === 1;
    const even = column % 2 === 0;
    if (isTwo) return 60;
    if (isOne) return 160;
    return even ? 60 : 160;
  });
}

/** Whether held art is found in a picture, where the art of `w001` is held and that of `w003` open. */
async function isFound(shown: Buffer, held: Buffer, open: Buffer | null): Promise<boolean> {
  const art = new Map([
    ['first/art/w001.svg', held],
    ['first/art/w003.svg', open],
  ]);
  const eyes: Eyes = {
    art: (path) => art.get(path) ?? null,
    draw: (picture) => Promise.resolve(picture),
    digest: (bytes) => Promise.resolve(createHash('sha256').update(bytes).digest()),
  };
  const findings = await audit(new Map([['a.png', shown]]), SMALL, { at: SMALL_DAY }, eyes);
  return findings.length > 0;
}

describe('a picture is held art', () => {
  it.each([
    [0, true],
    [1, true],
    [31, true],
    [32, true],
    [33, false],
  ])('where %i of 256 comparisons come out otherwise: %s', async (otherwise, expected) => {
    expect(await isFound(await stripes(otherwise), await stripes(0), null)).toBe(expected);
  });

  it.each([
    ['nearer to the held', 8, 20, true],
    ['nearer to the open', 20, 8, false],
    ['as near to the one as to the other', 20, 20, false],
  ])('unless open art is as much like it: %s', async (_way, toHeld, toOpen, expected) => {
    const shown = await stripes(0);
    const [held, open] = await Promise.all([stripes(toHeld), stripes(toOpen)]);
    // A byte after the end: the same looks, other bytes.
    const other = Buffer.concat([open, Buffer.from(' ')]);
    expect(await isFound(shown, held, other)).toBe(expected);
  });
});

describe('what a picture looks like', () => {
  it('is told by steps of 4 in brightness, and not of 3', async () => {
    const [small, large] = await Promise.all(
      [3, 4].map((step) => png((_row, column) => 100 + step * (column % 2))),
    );
    expect(small && likenessOf(small)).toBeNull();
    expect(large && likenessOf(large)).not.toBeNull();
  });

  it('is nothing where fewer than 24 comparisons tell anything', async () => {
    // One column that differs tells two comparisons a row.
    const [few, enough] = await Promise.all(
      [11, 12].map((rows) => png((row, column) => (column === 5 && row < rows ? 200 : 100))),
    );
    expect(few && likenessOf(few)).toBeNull();
    expect(enough && likenessOf(enough)).not.toBeNull();
  });
});
