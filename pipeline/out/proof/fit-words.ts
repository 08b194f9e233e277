import type { Setting } from '../../typeset/index.js';

/** How a text fits its zone, in words. */
export interface FitWords {
  readonly words: string;
  /** It must be mended before it can be printed. */
  readonly bad: boolean;
}

/**
 * "2 lines free", "tight" or "overset by 2 lines: cut about 7 words", and what else is to be known.
 * A zone that is made for one line is not called tight for having it.
 */
export function sayFit(setting: Setting, asked: number): FitWords {
  const shrunk = setting.shrunk ? [`set at ${figure(setting.size)} pt of ${figure(asked)}`] : [];
  // The sheets' own font may lack the character too: it is told by its code point.
  const missing = setting.missing.map(({ character }) => `no glyph for ${codePoint(character)}`);
  return {
    words: [room(setting), ...shrunk, ...missing].join('; '),
    bad: !setting.fits || missing.length > 0,
  };
}

function room({ overset, wide, fits, tight, free, capacity, wordsToCut }: Setting): string {
  const cut = `cut about ${count(wordsToCut, 'word')}`;
  if (overset > 0) return `overset by ${count(overset, 'line')}: ${cut}`;
  if (wide > 0) return `${count(wide, 'line')} too wide: ${cut}`;
  if (fits && capacity === 1) return 'fits';
  if (fits && tight) return 'tight';
  return `${count(free, 'line')} free`;
}

/** "1 line", "2 lines". */
export function count(number: number, noun: string): string {
  return `${String(number)} ${noun}${number === 1 ? '' : 's'}`;
}

function figure(size: number): string {
  return String(Math.round(size * 100) / 100);
}

/** "U+03A9". */
export function codePoint(character: string): string {
  const hex = (character.codePointAt(0) ?? 0).toString(16).toUpperCase();
  return `U+${hex.padStart(4, '0')}`;
}
