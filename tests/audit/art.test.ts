import { createHash } from 'node:crypto';
import { gzipSync } from 'node:zlib';

import sharp from 'sharp';
import { strToU8, zipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';

import { audit, type Eyes } from '../../pipeline/audit/index.js';
import { ALIKE, distance, likenessOf, type Likeness } from '../../pipeline/audit/likeness.js';
import { rasterise } from '../../pipeline/read/index.js';
import { demoFiles } from '../demo/copy.js';
import { SMALL, SMALL_DAY } from './small-property.js';

type Sharp = ReturnType<typeof sharp>;

/** A picture of blobs, the same for the same seed: each seed another. */
function picture(seed: number): string {
  let state = seed;
  const next = (most: number): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state >>> 8) % most;
  };
  const blobs = Array.from({ length: 14 }, () => {
    const grey = next(256).toString(16).padStart(2, '0');
    return `<circle cx="${String(next(300))}" cy="${String(next(420))}" r="${String(20 + next(70))}" fill="#${grey.repeat(3)}"/>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="300" height="420" viewBox="0 0 300 420">${blobs.join('')}</svg>`;
}

const HELD = strToU8(picture(1));
const OPEN = strToU8(picture(3));
const OTHER = strToU8(picture(4));
const ART = new Map([
  ['first/art/w001.svg', HELD],
  ['first/art/w003.svg', OPEN],
]);

const eyes: Eyes = {
  art: (path) => ART.get(path) ?? null,
  draw: async (art, width) => (await rasterise(art, width, 'png')).bytes,
  digest: (bytes) => Promise.resolve(createHash('sha256').update(bytes).digest()),
};

const FROM = 'art of first/wide/w001';

async function found(file: string, bytes: Uint8Array): Promise<string[]> {
  const findings = await audit(new Map([[file, bytes]]), SMALL, { at: SMALL_DAY }, eyes);
  return findings.map(({ from, card, place }) => [from, card, ...place.inside].join(' | '));
}

const image = (art: Uint8Array, change: (drawn: Sharp) => Sharp): Promise<Buffer> =>
  change(sharp(Buffer.from(art))).toBuffer();

const WAYS: readonly (readonly [string, (drawn: Sharp) => Sharp])[] = [
  ['PNG', (drawn) => drawn.png()],
  ['small WebP', (drawn) => drawn.resize(120).webp({ quality: 60 })],
  ['poor JPEG', (drawn) => drawn.flatten({ background: '#fff' }).jpeg({ quality: 30 })],
  ['GIF', (drawn) => drawn.gif()],
  ['large', (drawn) => drawn.resize(900).webp()],
  [
    'brighter',
    (drawn) => drawn.flatten({ background: '#fff' }).modulate({ brightness: 1.1 }).png(),
  ],
];

describe('held art is found', () => {
  it.each(WAYS)('as %s', async (_way, change) => {
    expect(await found('a.bin', await image(HELD, change))).toEqual([`${FROM} | first/wide/w001`]);
    expect(await found('a.bin', await image(OTHER, change))).toEqual([]);
    expect(await found('a.bin', await image(OPEN, change))).toEqual([]);
  });

  it('as it is in the content folder, wherever it is put', async () => {
    expect(await found('a.svg', HELD)).toEqual([`${FROM} | first/wide/w001`]);
    expect(await found('a.svg', OPEN)).toEqual([]);
    expect(await found('a.gz', gzipSync(HELD))).toEqual([`${FROM} | first/wide/w001 | unpacked`]);
    const png = await image(HELD, (drawn) => drawn.png());
    expect(await found('a.zip', zipSync({ 'b.png': png }))).toEqual([
      `${FROM} | first/wide/w001 | b.png`,
    ]);
    const page = `<img src="data:image/png;base64,${png.toString('base64')}">`;
    const [inPage = ''] = await found('a.html', strToU8(page));
    expect(inPage).toContain(`${FROM} | first/wide/w001 | base64 at 1:`);
  });

  it.each(['hex', 'base64', 'base64url'] as const)('by its digest in %s', async (encoding) => {
    const digest = createHash('sha256').update(HELD).digest(encoding);
    const of = `digest of the ${FROM} | first/wide/w001`;
    const text = `calm ${digest} calm`;
    expect(await found('a.txt', strToU8(text))).toContain(of);
    const open = createHash('sha256').update(OPEN).digest(encoding);
    expect(await found('a.txt', strToU8(`calm ${open} calm`))).toEqual([]);
  });

  it('but damaged and plain pictures look like nothing', async () => {
    const png = await image(HELD, (drawn) => drawn.png());
    expect(await found('a.png', png.subarray(0, 60))).toEqual([]);
    const grey = { create: { width: 90, height: 90, channels: 3, background: '#777' } } as const;
    expect(await found('b.png', await sharp(grey).png().toBuffer())).toEqual([]);
  });
});

describe('the looks of the demo’s art', () => {
  const drawn: { one: Likeness | null; again: Likeness | null }[] = [];
  beforeAll(async () => {
    for (const [path, bytes] of demoFiles({ art: true })) {
      if (!path.endsWith('.svg') || typeof bytes === 'string') continue;
      const small = await rasterise(bytes, 240, 'webp');
      const looks = [bytes, small.bytes].map(async (each) =>
        likenessOf((await rasterise(each, 64, 'png')).bytes),
      );
      const [one = null, again = null] = await Promise.all(looks);
      drawn.push({ one, again });
    }
  });

  it('stay what they are on the site, and no two are alike', () => {
    const looks = drawn.flatMap(({ one, again }) => (one && again ? [{ one, again }] : []));
    const same = looks.map(({ one, again }) => distance(one, again));
    const apart = looks.flatMap(({ one }, at) =>
      looks.slice(0, at).map((other) => distance(one, other.one)),
    );
    expect(looks.length).toBe(drawn.length);
    expect(Math.max(...same)).toBeLessThanOrEqual(ALIKE);
    expect(Math.min(...apart)).toBeGreaterThan(ALIKE);
  });
});
