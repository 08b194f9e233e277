import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { unicodeBreaks } from '../../pipeline/typeset/breaks.js';

interface Row {
  readonly row: string;
  readonly text: string;
  /** Offsets at which a break is allowed. */
  readonly breaks: readonly number[];
}

/** Rows of a break test of the Unicode Character Database 15.0.0: `× 0023 ÷ 0020 ÷`. */
function rowsOf(file: string): readonly Row[] {
  return readFileSync(new URL(`../oracles/${file}`, import.meta.url), 'utf8')
    .split('\n')
    .filter((row) => row !== '' && !row.startsWith('#'))
    .map((row) => {
      let text = '';
      const breaks: number[] = [];
      for (const token of row.split(' ')) {
        if (token === '÷') breaks.push(text.length);
        else if (token !== '×') text += String.fromCodePoint(Number.parseInt(token, 16));
      }
      return { row, text, breaks };
    });
}

/** Why `linebreak` (Unicode 13) differs from a row, and how many rows differ for that reason. */
const DEVIATIONS = [
  {
    reason:
      'numbers: the file tests Example 7 of UAX #14 section 8.2, the library the plain rule 25',
    rows: 30,
    holds: ({ text }: Row) => /[}),/.] ?[$%0-9]|[$%\\][({]/u.test(text.replaceAll('\u0308', '')),
  },
  {
    reason: 'wide brackets: rule 30 leaves U+2329 out since Unicode 13',
    rows: 25,
    holds: ({ text }: Row) => text.includes('\u2329'),
  },
  {
    reason: 'wide brackets: rule 30 leaves full-width parentheses out since Unicode 13',
    rows: 3,
    holds: ({ text }: Row) => text.includes('\uff08'),
  },
  {
    reason: 'a character not assigned in Unicode 13 that is kept for an emoji',
    rows: 1,
    holds: ({ text }: Row) => text.startsWith('\u{1f02c}'),
  },
];

describe('line break opportunities', () => {
  const rows = rowsOf('unicode-line-breaks.txt');
  const differing = rows.filter(({ text, breaks }) => unicodeBreaks(text).join() !== breaks.join());

  it('are those of the Unicode break test, but for rows with a reason', () => {
    expect(rows).toHaveLength(7654);
    const counts = DEVIATIONS.map(({ reason, holds }) => ({
      reason,
      rows: differing.filter((row) => holds(row)).length,
    }));
    expect(counts).toEqual(DEVIATIONS.map(({ reason, rows: count }) => ({ reason, rows: count })));
    const unexplained = differing.filter(
      (row) => DEVIATIONS.filter(({ holds }) => holds(row)).length !== 1,
    );
    expect(unexplained.map(({ row }) => row)).toEqual([]);
  });

  it('differ in Latin text only about numbers', () => {
    const latin = differing.filter(({ text }) =>
      /^[\u0000-\u024f]+$/u.test(text.replaceAll('\u0308', '')),
    );
    expect(latin.length).toBeGreaterThan(0);
    expect(latin.filter((row) => DEVIATIONS[0]?.holds(row) !== true)).toEqual([]);
  });

  it('are what bios need', () => {
    const parts = (text: string): readonly string[] =>
      unicodeBreaks(text).map((end, index, all) => text.slice(all[index - 1] ?? 0, end));
    expect(parts('a well-known lamp—or two')).toEqual([
      'a ',
      'well-',
      'known ',
      'lamp',
      '—',
      'or ',
      'two',
    ]);
    expect(parts('No.\u00a017, “Bell Sill”')).toEqual(['No.\u00a017, ', '“Bell ', 'Sill”']);
    expect(parts('9,000 and 3.5%')).toEqual(['9,000 ', 'and ', '3.5%']);
  });
});

describe('grapheme clusters', () => {
  const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });
  const clusters = (text: string): readonly number[] =>
    [...segmenter.segment(text)].map(({ index }) => index).concat(text.length);

  it('counted by the platform are those of UAX #29', () => {
    const rows = rowsOf('unicode-graphemes.txt');
    expect(rows).toHaveLength(602);
    const differing = rows.filter(({ text, breaks }) => clusters(text).join() !== breaks.join());
    // U+2701 counted as a pictograph in the tests of Unicode 15.0 and does not in later data.
    expect(differing.filter(({ text }) => !text.includes('\u2701'))).toEqual([]);
  });
});
