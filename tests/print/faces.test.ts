import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';

import { openPrintFaces } from '../../pipeline/out/print/index.js';
import { clean, countLines, setLines, span, widthOf } from '../../pipeline/out/print/set-lines.js';
import { faces } from './fixture.js';

const require = createRequire(import.meta.url);
const file = (name: string): Uint8Array =>
  readFileSync(require.resolve(`@fontsource/alegreya/files/${name}`));

describe('fonts', () => {
  const latin = [file('alegreya-latin-400-normal.woff')];
  const labels = { regular: latin, medium: latin };

  test('are refused where they cannot be embedded in part, by name', () => {
    const woff2 = [...latin, file('alegreya-latin-ext-400-normal.woff2')];
    const text = { regular: latin, italic: woff2, bold: latin };
    expect(() => openPrintFaces({ text, labels })).toThrow(
      /italic text, file 2.*woff2 files cannot be embedded/,
    );
  });

  test('are asked for where there are none', () => {
    const text = { regular: latin, italic: latin, bold: [] };
    expect(() => openPrintFaces({ text, labels })).toThrow(
      'no font file is given for bold text; give at least one',
    );
  });
});

describe('a voice', () => {
  const { regular } = faces.text;

  test('takes each letter from the first file that has it', () => {
    const runs = regular.runs('Pawłowski');
    expect(runs.map(({ text }) => text)).toEqual(['Paw', 'ł', 'owski']);
    expect(runs[0]?.font).toBe(runs[2]?.font);
    expect(runs[1]?.font).not.toBe(runs[0]?.font);
  });

  test('replaces what none has, letter for letter', () => {
    expect(regular.runs('a水潮b').map(({ text }) => text)).toEqual(['a??b']);
    expect(regular.shows('a水')).toBe(false);
    expect(regular.shows('Łódź')).toBe(true);
  });

  test('measures what it draws', () => {
    const [line] = setLines([span('AVATAR ł Tove', regular, 10, 100)], Infinity);
    const ends = line?.pieces.map(({ x, width }) => x + width) ?? [];
    expect(ends.at(-1)).toBeCloseTo(line?.width ?? 0, 9);
    expect(widthOf([span('AVATAR ł Tove', regular, 10, 100)])).toBeCloseTo(line?.width ?? 0, 9);
    // Kerning: together the letters are narrower than each by itself.
    const apart = Array.from('AVATAR').reduce((sum, letter) => sum + regular.ems(letter), 0);
    expect(regular.ems('AVATAR')).toBeLessThan(apart - 0.05);
  });
});

describe('lines', () => {
  const { regular, bold } = faces.text;
  const { regular: label } = faces.labels;

  test('keep every word in order and stay within their measure', () => {
    const words = 'The spring rise takes Lower Lantern Street, half-drowned already/again';
    const spans = [span(words, regular, 9, 100), span('signed by Ines Albarran', label, 7, 70)];
    for (const measure of [20, 40, 61.5, 90, 200, 1000]) {
      const lines = setLines(spans, measure);
      expect(countLines(spans, measure)).toBe(lines.length);
      const said = lines.map(({ pieces }) => pieces.map(({ text }) => text).join('')).join('');
      expect(said).toBe(`${words} signed by Ines Albarran`);
      for (const { width } of lines) expect(width).toBeLessThanOrEqual(measure + 0.5);
    }
  });

  test('end after a hyphen, and divide a word only where nothing else helps', () => {
    const texts = (text: string, measure: number): readonly string[] =>
      setLines([span(text, bold, 10, 100)], measure).map(({ pieces }) =>
        pieces.map((piece) => piece.text).join(''),
      );
    expect(texts('half-drowned', 40)).toEqual(['half-', 'drowned']);
    expect(texts('drowned', 22).join('')).toBe('drowned');
    expect(texts('drowned', 22).length).toBe(3);
    expect(texts('a b', 0.5)).toEqual(['a ', 'b']);
    expect(setLines([span('', bold, 10, 100)], 10)).toEqual([]);
  });

  test('are made of text as it can be drawn', () => {
    expect(clean(' a\u00a0\n\tb\u2003 ')).toBe('a b');
    expect(clean('O\u0304\u200d\ufe0f\ufeffx')).toBe('Ōx');
    expect(clean('a\u0007b')).toBe('a\ufffdb');
  });
});
