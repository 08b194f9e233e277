import { existsSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';

import type { Draw } from '../../pipeline/out/site/index.js';
import { keepPictures } from '../../pipeline/release/kept-pictures.js';
import { realDisk } from '../../pipeline/write/index.js';

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'kept-'));
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
});

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** Draws, and counts how often; `by` is its version. */
function drawing(by = '1'): { draw: Draw; times: () => number } {
  let times = 0;
  const draw: Draw = {
    picture: (art, width) => {
      times++;
      const drawn = bytes(`${new TextDecoder().decode(art)} by ${by} at ${String(width)}`);
      return Promise.resolve({ bytes: drawn, width, height: 2 * width });
    },
    share: () => Promise.resolve(bytes('')),
    by: () => Promise.resolve(by),
  };
  return { draw, times: () => times };
}

const folder = (): string => join(root, 'site.pictures');
const files = (): string[] => (existsSync(folder()) ? readdirSync(folder()) : []);

async function drawAll(draw: Draw, ...arts: string[]): Promise<unknown[]> {
  const kept = await keepPictures(realDisk, folder(), draw);
  const drawn = [];
  for (const art of arts) {
    const { bytes: made, width, height } = await kept.picture(bytes(art), 240);
    drawn.push([new TextDecoder().decode(made), width, height]);
  }
  kept.forgetOthers();
  return drawn;
}

describe('pictures of the last site', () => {
  test('are not drawn again, and are the same', async () => {
    const { draw, times } = drawing();
    const first = await drawAll(draw, 'a', 'b');
    expect(first).toEqual([
      ['a by 1 at 240', 240, 480],
      ['b by 1 at 240', 240, 480],
    ]);
    expect(await drawAll(draw, 'a', 'b')).toEqual(first);
    expect(times()).toBe(2);
  });

  test('are drawn again in another width, of other art, by another version', async () => {
    const { draw, times } = drawing();
    await drawAll(draw, 'a');
    const kept = await keepPictures(realDisk, folder(), draw);
    await kept.picture(bytes('a'), 560);
    expect(times()).toBe(2);
    await drawAll(draw, 'b');
    expect(times()).toBe(3);
    const other = drawing('2');
    expect(await drawAll(other.draw, 'b')).toEqual([['b by 2 at 240', 240, 480]]);
    expect(other.times()).toBe(1);
  });

  test('are drawn again where somebody has changed them', async () => {
    const { draw, times } = drawing();
    await drawAll(draw, 'a');
    for (const name of files()) writeFileSync(join(folder(), name), 'held');
    expect(await drawAll(draw, 'a')).toEqual([['a by 1 at 240', 240, 480]]);
    expect(times()).toBe(2);
  });

  test('go when the site no longer shows them, with whatever else lies there', async () => {
    const { draw } = drawing();
    await drawAll(draw, 'a', 'b');
    writeFileSync(join(folder(), 'else'), '');
    expect(files()).toHaveLength(3);
    await drawAll(draw, 'b');
    expect(files()).toHaveLength(1);
    await drawAll(draw);
    expect(files()).toEqual([]);
  });

  test('lie in a folder that only its owner can look into', async () => {
    await drawAll(drawing().draw, 'a');
    expect(statSync(folder()).mode & 0o777).toBe(0o700);
  });
});
