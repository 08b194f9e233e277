import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setText, type Setting, type TextRun } from '../../pipeline/typeset/index.js';
import type { Zone } from '../../schema/index.js';
import { facesOf, italic, paragraphs, plain, zoneWith } from './support.js';

const faces = facesOf('alegreya');
const set = (text: string, changes: Partial<Zone> = {}): Setting =>
  setText([[plain(text)]], zoneWith(changes), faces);
const words = (count: number, from = 0): string =>
  paragraphs(200, 600)
    .slice(5, 20)
    .join(' ')
    .split(' ')
    .slice(from, from + count)
    .join(' ');

describe('fit', () => {
  it('counts the lines that are over and those that are free', () => {
    const long = set(words(100));
    expect(long.overset).toBeGreaterThan(0);
    expect(long.lines.filter((line) => line.overset)).toHaveLength(long.overset);
    expect(long.lines).toHaveLength(long.capacity + long.overset);
    expect([long.free, long.tight, long.fits]).toEqual([0, false, false]);
    const short = set(words(20));
    expect([short.overset, short.tight, short.fits, short.wordsToCut]).toEqual([0, false, true, 0]);
    expect(short.lines.length + short.free).toBe(short.capacity);
  });

  it('is tight where it fits and no line is free', () => {
    const states = Array.from({ length: 40 }, (_, more) => set(words(40 + more)));
    expect(states.some((state) => state.tight)).toBe(true);
    for (const { tight, fits, free } of states) expect(tight).toBe(fits && free === 0);
  });

  it('holds as many lines as stand inside from ascender to descender', () => {
    // Alegreya: ascender 1016, descender -345 of 1000 (its hhea table, as `otfinfo` prints it).
    const [ascent, descent] = [1.016 * 10, 0.345 * 10];
    const height = (lines: number): number => ((ascent + descent + (lines - 1) * 12) * 25.4) / 72;
    const type = { size: 10, leading: 12 };
    expect(set('One', { ...type, height: height(3) }).capacity).toBe(3);
    expect(set('One', { ...type, height: height(3) - 0.01 }).capacity).toBe(2);
    expect(set('One', { ...type, height: height(1) - 0.01 })).toMatchObject({
      overset: 1,
      capacity: 0,
    });
    expect(set('One', { ...type, height: 20 }).lines[0]?.baseline).toBeCloseTo(
      (32 * 72) / 25.4 + ascent,
      9,
    );
  });

  it('has no lines, all free, for a text without words', () => {
    for (const text of ['', '  ']) {
      expect(set(text)).toMatchObject({ lines: [], overset: 0, tight: false, fits: true });
      expect(set(text).free).toBe(set(text).capacity);
    }
    expect(setText([], zoneWith(), faces).lines).toEqual([]);
  });

  it('says that a word wider than its zone sticks out', () => {
    const setting = set('Extraordinarily', { width: 10 });
    expect(setting).toMatchObject({
      overset: 0,
      wide: 1,
      fits: false,
      tight: false,
      wordsToCut: 1,
    });
  });

  it('shows where a limit in characters goes wrong', () => {
    // One length in characters, one box: what a spreadsheet column would pass or fail alike.
    const texts = [
      'Tilli lit it till it fell; still, I till it still. '.repeat(4),
      'Mammoth commodores swamped warm wooden hammocks on. '.repeat(4),
      'The night pilot steers by the sound of drowned bell. '.repeat(4),
      'WWW. MMM, OOO and QQQ are wide; these are WIDE, too. '.repeat(4),
    ].map((text) => text.slice(0, 200).replace(/ $/u, '.'));
    const table = texts.map((text) => {
      const { lines, overset } = set(text, { height: 13 });
      return { characters: text.length, lines: lines.length, overset };
    });
    expect(table).toEqual([
      { characters: 200, lines: 3, overset: 0 },
      { characters: 200, lines: 5, overset: 1 },
      { characters: 200, lines: 4, overset: 0 },
      { characters: 200, lines: 5, overset: 1 },
    ]);
  });
});

/** What `wordsToCut` promises, found by trying. */
function fewest(runs: readonly TextRun[], zone: Zone): number {
  const all = runs
    .map((run) => run.text)
    .join('')
    .split(' ');
  for (let cut = 0; cut < all.length; cut += 1) {
    const kept = all.slice(0, all.length - cut).join(' ');
    if (setText([[plain(kept)]], zone, faces).fits) return cut;
  }
  return all.length;
}

describe('words to cut', () => {
  it('are the fewest last words whose loss makes it fit', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 90 }),
        fc.integer({ min: 0, max: 300 }),
        fc.constantFrom('line-by-line', 'whole-paragraph'),
        fc.constantFrom('left', 'justify'),
        fc.constantFrom('none', 'auto'),
        fc.constantFrom('allow', 'avoid'),
        fc.integer({ min: 20, max: 50 }),
        (count, from, breaks, align, hyphens, widows, width) => {
          const zone = zoneWith({ breaks, align, hyphens, widows, width, height: 12 });
          const runs = [plain(words(count, from))];
          expect(setText([runs], zone, faces).wordsToCut).toBe(fewest(runs, zone));
        },
      ),
      { numRuns: 40 },
    );
  });

  it('can be more than line by line, where the whole paragraph takes a line more', () => {
    for (const [start, width] of [
      ["In fact, the artist's design", 30],
      ['I sat down on an old wooden settle', 25],
    ] as const) {
      const text = paragraphs(200, 600).find((each) => each.startsWith(start)) ?? '';
      const zone = zoneWith({ width, height: 12, breaks: 'whole-paragraph' });
      const runs = [plain(text.split(' ').slice(0, 70).join(' '))];
      const { wordsToCut } = setText([runs], zone, faces);
      expect(wordsToCut).toBe(fewest(runs, zone));
      expect(wordsToCut).toBeGreaterThan(fewest(runs, { ...zone, breaks: 'line-by-line' }));
    }
  });

  it('reach over runs and paragraphs, and count a word of two faces once', () => {
    const zone = zoneWith({ width: 30, height: 5 });
    const text = [
      [plain('One line of it'), plain('.')],
      [plain('The '), italic('Heron'), plain('’s bell')],
    ];
    expect(setText(text, zone, faces)).toMatchObject({ overset: 1, wordsToCut: 3 });
  });

  it('are all of them where even one does not fit', () => {
    expect(set('Three plain words', { height: 1 })).toMatchObject({ overset: 1, wordsToCut: 3 });
  });
});

describe('shrinking', () => {
  const shrink = { to: 6.2 };

  it('does nothing to a text that fits', () => {
    expect(set(words(30), { shrink })).toMatchObject({ size: 6.8, leading: 8.4, shrunk: false });
  });

  it('goes down in steps of 0.1 pt, leading in step, and no further than it must', () => {
    const sizes = new Set<number>();
    for (let count = 40; count < 90; count += 2) {
      const setting = set(words(count), { shrink });
      sizes.add(setting.size);
      expect(setting.leading / setting.size).toBeCloseTo(8.4 / 6.8, 9);
      expect(setting.shrunk).toBe(setting.size < 6.8);
      if (!setting.shrunk || !setting.fits) continue;
      const larger = set(words(count), {
        size: setting.size + 0.1,
        leading: setting.leading + 8.4 / 68,
      });
      expect(larger.fits).toBe(false);
    }
    const allowed = [6.2, 6.3, 6.4, 6.5, 6.6, 6.7, 6.8];
    expect([...sizes].filter((size) => !allowed.includes(size))).toEqual([]);
    expect(sizes.size).toBeGreaterThan(4);
  });

  it('stops at its floor, also between two steps, and counts what is over there', () => {
    expect(set(words(200), { shrink: { to: 6.55 } })).toMatchObject({
      size: 6.55,
      shrunk: true,
      fits: false,
    });
    expect(set(words(200), { shrink: { to: 9 } })).toMatchObject({ size: 6.8, shrunk: false });
  });
});

describe('missing glyphs', () => {
  it('are named with character and face, each once', () => {
    const text = [
      [plain('Rōna and Rōna, 川'), italic(' Ōtara')],
      [plain('soft\u00adly\u200b and \u2060ok')],
    ];
    expect(setText(text, zoneWith(), faces).missing).toEqual([
      { character: 'ō', face: 'alegreya 400-normal' },
      { character: '川', face: 'alegreya 400-normal' },
      { character: 'Ō', face: 'alegreya 400-italic' },
    ]);
  });
});
