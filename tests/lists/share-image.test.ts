import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

import fc from 'fast-check';
import { create, type Font } from 'fontkit';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';

import { fitLines, type Room } from '../../pipeline/out/lists/fit-lines.js';
import { shareImage } from '../../pipeline/out/lists/index.js';
import { Lettering } from '../../pipeline/out/lists/outline.js';
import type { PublicData } from '../../schema/index.js';
import { data as siteData } from '../site/fixture.js';
import { children } from './atom-rules.js';
import { data, empty, hostile, preview, trouble } from './fixture.js';
import { xmlOf } from './support.js';

const require = createRequire(import.meta.url);

function fontOf(file: string): Font {
  const font = create(readFileSync(require.resolve(`@fontsource/alegreya/files/${file}`)));
  if (!('layout' in font)) throw new Error('a collection is no font');
  return font;
}

const font = fontOf('alegreya-latin-500-normal.woff');

function titled(siteTitle: string): PublicData {
  return { ...data, property: { ...data.property, siteTitle } };
}

/** Red, green and blue of a pixel. */
async function pixelOf(svg: string, x: number, y: number): Promise<number[]> {
  const at = { left: x, top: y, width: 1, height: 1 };
  return [...(await sharp(Buffer.from(svg)).removeAlpha().extract(at).raw().toBuffer())];
}

describe('the picture for links', () => {
  test.each([
    ['each kind of card', data],
    ['a preview', preview],
    ['nothing listed', empty],
    ['hostile texts', hostile(siteData)],
    ['no title', titled('')],
  ])('is shapes alone, in figures of two decimals: %s', async (_, some) => {
    const svg = shareImage(some, font);
    const root = xmlOf(svg).documentElement;
    if (!root) throw new Error('no picture');
    expect(root.namespaceURI).toBe('http://www.w3.org/2000/svg');
    expect(new Set(children(root).map(({ nodeName }) => nodeName))).toEqual(
      new Set(['rect', 'path']),
    );
    expect(root.textContent?.trim()).toBe('');
    expect(svg).not.toMatch(/href|url\(|\d\.\d{3}|NaN|undefined|Infinity|e-\d/);
    const { width, height, format } = await sharp(Buffer.from(svg)).metadata();
    expect([width, height, format]).toEqual([1200, 630, 'svg']);
  });

  test('is the same for the same data', () => {
    const again = fontOf('alegreya-latin-500-normal.woff');
    expect(shareImage(structuredClone(data), again)).toBe(shareImage(data, font));
    expect(shareImage(titled('Depth Charts'), font)).not.toBe(shareImage(data, font));
  });

  test('names no card: cards of another name change nothing', () => {
    const some = structuredClone(data);
    for (const card of some.sets[0]?.subsets[0]?.cards ?? []) card.name = 'Somebody else';
    expect(shareImage(some, font)).toBe(shareImage(data, font));
  });

  test('is drawn in the colours of the publisher, with ink on it', async () => {
    const look = { accent: '#aa0000', paper: '#fff0d0', ink: '#101010', type: null };
    const svg = shareImage({ ...data, property: { ...data.property, look } }, font);
    expect(await pixelOf(svg, 2, 2)).toEqual([255, 240, 208]);
    const { channels } = await sharp(Buffer.from(svg)).removeAlpha().stats();
    expect(Math.min(...channels.map(({ min }) => min))).toBeLessThan(20);
    expect(await pixelOf(shareImage(data, font), 2, 2)).toEqual([246, 248, 247]);
  });

  test('keeps every word inside, whatever the title', async () => {
    const titles = ['The Ferrywrights '.repeat(3), 'W'.repeat(300), 'Overmere '.repeat(60)];
    for (const title of titles) {
      const svg = shareImage(titled(title), font);
      const edge = { left: 1130, top: 0, width: 70, height: 470 };
      const { channels } = await sharp(
        await sharp(Buffer.from(svg)).removeAlpha().extract(edge).png().toBuffer(),
      ).stats();
      expect(channels.map(({ min, max }) => [min, max])).toEqual([
        [246, 246],
        [248, 248],
        [247, 247],
      ]);
    }
  });
});

describe('lettering', () => {
  const lettering = new Lettering([font]);
  const room: Room = {
    width: 1000,
    height: 300,
    lines: 3,
    largest: 120,
    smallest: 40,
    step: 4,
    leading: 1.1,
  };

  test('is as large as its room lets it be', () => {
    expect(fitLines('Pim', lettering, room)).toEqual({ size: 120, lines: ['Pim'] });
    const two = fitLines('The Ferrywrights: every card of it', lettering, room);
    expect(two.lines).toEqual(['The Ferrywrights:', 'every card of it']);
    expect(lettering.width(two.lines[0] ?? '') * two.size).toBeLessThanOrEqual(1000);
    const cut = fitLines('Overmere '.repeat(60), lettering, room);
    expect([cut.size, cut.lines.length, cut.lines.at(-1)?.endsWith('…')]).toEqual([40, 3, true]);
  });

  test('stays inside its room, whatever the words', () => {
    fc.assert(
      fc.property(fc.array(trouble, { maxLength: 12 }), (parts) => {
        const { size, lines } = fitLines(parts.join(' '), lettering, room);
        expect(lines.length).toBeLessThanOrEqual(3);
        for (const line of lines) expect(lettering.width(line) * size).toBeLessThanOrEqual(1000);
      }),
    );
  });

  test('draws what the font has, and the nearest to what it has not', () => {
    expect(lettering.drawable('Ferry\u202e & Oar')).toBe('Ferry & Oar');
    expect(lettering.drawable('e\u0301')).toBe('é');
    expect(lettering.drawable('Šumaḏ ẘ ☃')).toBe('Sumad w ?');
  });

  test('takes a character from the first font that has it, and goes on after it', () => {
    const extended = fontOf('alegreya-latin-ext-500-normal.woff');
    const both = new Lettering([font, extended]);
    expect(both.drawable('Šumaḏ ẘ ☃')).toBe('Šumaḏ w ?');
    const alone = new Lettering([extended]).width('Š');
    expect(both.width('aŠa')).toBeCloseTo(2 * lettering.width('a') + alone, 9);
    const second = 10 + lettering.width('a') * 50;
    const third = second + alone * 50;
    expect(both.path('aŠa', 10, 100, 50)).toBe(
      lettering.path('a', 10, 100, 50) +
        new Lettering([extended]).path('Š', second, 100, 50) +
        lettering.path('a', third, 100, 50),
    );
    const title = titled('Šumaḏ');
    expect(shareImage(title, font, extended)).not.toBe(shareImage(title, font));
    expect(shareImage(data, font, extended)).toBe(shareImage(data, font));
  });

  test('puts glyphs where the font says (hmtx of Alegreya: 1000 units an em)', () => {
    const { advanceWidth } = font.glyphForCodePoint('I'.codePointAt(0) ?? 0);
    expect(lettering.width('I')).toBe(advanceWidth / font.unitsPerEm);
    const box = (path: string) => {
      const figures = (path.match(/-?[\d.]+/g) ?? []).map(Number);
      return [0, 1].map((axis) => Math.min(...figures.filter((_, at) => at % 2 === axis)));
    };
    const [left = 0, top = 0] = box(lettering.path('I', 10, 100, 50));
    const { minX, maxY } = font.glyphForCodePoint('I'.codePointAt(0) ?? 0).path.cbox;
    expect(left).toBeCloseTo(10 + (minX * 50) / font.unitsPerEm, 1);
    expect(top).toBeCloseTo(100 - (maxY * 50) / font.unitsPerEm, 1);
    // In the font's own units nothing is rounded.
    const em = font.unitsPerEm;
    const step = Math.round((lettering.width('II') - lettering.width('I')) * em);
    expect(step).toBeGreaterThan(200);
    expect(lettering.path('II', 0, 0, em)).toBe(
      lettering.path('I', 0, 0, em) + lettering.path('I', step, 0, em),
    );
    expect(lettering.width('☃')).toBe(0);
  });
});
