import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const readme = readFileSync(join(root, 'README.md'), 'utf8');

/** Images in Markdown: `![what is seen](where)`. */
const named = [...readme.matchAll(/!\[([^\]]*)\]\(([^)\s]+)\)/g)].map(
  ([, alt = '', path = '']) => ({
    alt,
    path,
  }),
);

/** The first bytes of a PNG, and its size from the first chunk (W3C PNG, third edition, 5.2 and 11.2.1). */
function pngSize(bytes: Uint8Array): { readonly width: number; readonly height: number } | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const signed = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a].every(
    (byte, at) => bytes[at] === byte,
  );
  const header = String.fromCharCode(...bytes.slice(12, 16));
  if (!signed || header !== 'IHDR') return null;
  return { width: view.getUint32(16), height: view.getUint32(20) };
}

describe('the pictures of README.md', () => {
  it('are those that are made, each shown once', () => {
    expect(named.map(({ path }) => path).sort()).toEqual(
      readdirSync(join(root, 'pictures'))
        .map((name) => `pictures/${name}`)
        .sort(),
    );
    expect(named.length).toBeGreaterThan(5);
  });

  it.each(named.map(({ path, alt }) => [path, alt] as const))(
    '%s is a small PNG, with words that say what is seen',
    (path, alt) => {
      const file = join(root, path);
      expect(dirname(path)).toBe('pictures');
      expect(existsSync(file)).toBe(true);
      const size = pngSize(readFileSync(file));
      expect(size?.width).toBeGreaterThanOrEqual(360);
      expect(size?.width).toBeLessThanOrEqual(1000);
      expect(size?.height).toBeGreaterThanOrEqual(300);
      expect(size?.height).toBeLessThanOrEqual(1400);
      expect(statSync(file).size).toBeLessThan(120_000);
      expect(statSync(file).size).toBeGreaterThan(5_000);
      expect(alt.length).toBeGreaterThan(40);
    },
  );
});
