import type { Font } from 'fontkit';

import { plain } from './plain.js';

/** Words that are drawn as shapes, each character in the first font that has it. */
export class Lettering {
  readonly #fonts: readonly Font[];
  readonly #widths = new Map<string, number>();

  constructor(fonts: readonly Font[]) {
    this.#fonts = fonts;
  }

  /**
   * The text as far as the fonts can draw it: a letter that they lack stands without its accent, any
   * other character as a question mark.
   */
  drawable(text: string): string {
    return Array.from(plain(text).normalize('NFC'), (one) => this.#nearest(one)).join('');
  }

  #nearest(character: string): string {
    if (this.#fontOf(character)) return character;
    if (/[\p{Default_Ignorable_Code_Point}\p{M}]/u.test(character)) return '';
    if (/\s/.test(character)) return ' ';
    const parts = Array.from(character.normalize('NFD'));
    const base = parts.filter((part) => this.#fontOf(part)).join('');
    return base === '' ? '?' : base;
  }

  #fontOf(character: string): Font | undefined {
    const codePoint = character.codePointAt(0) ?? 0;
    return this.#fonts.find((font) => font.hasGlyphForCodePoint(codePoint));
  }

  /** The width of a text in ems. */
  width(text: string): number {
    const known = this.#widths.get(text);
    if (known !== undefined) return known;
    const width = this.#runsOf(text).reduce((sum, { font, words }) => {
      const units = font.layout(words).positions.reduce((all, { xAdvance }) => all + xAdvance, 0);
      return sum + units / font.unitsPerEm;
    }, 0);
    this.#widths.set(text, width);
    return width;
  }

  /**
   * The data of an SVG path that draws the text, in hundredths.
   * @param x of its left edge.
   * @param baseline the height of its line.
   * @param size of an em.
   */
  path(text: string, x: number, baseline: number, size: number): string {
    let pen = x;
    return this.#runsOf(text)
      .map(({ font, words }) => {
        const path = runPath(font, words, { x: pen, baseline, size });
        pen += this.width(words) * size;
        return path;
      })
      .join('');
  }

  /** The text in stretches of one font. A character that no font has is left out. */
  #runsOf(text: string): { readonly font: Font; words: string }[] {
    const runs: { readonly font: Font; words: string }[] = [];
    for (const character of text) {
      const last = runs.at(-1);
      const font = this.#fontOf(character);
      if (last && font === last.font) last.words += character;
      else if (font) runs.push({ font, words: character });
    }
    return runs;
  }
}

interface Place {
  readonly x: number;
  readonly baseline: number;
  readonly size: number;
}

function runPath(font: Font, words: string, { x, baseline, size }: Place): string {
  const scale = size / font.unitsPerEm;
  const { glyphs, positions } = font.layout(words);
  let pen = x;
  return glyphs
    .map((glyph, index) => {
      const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[index] ?? {};
      const left = pen + xOffset * scale;
      const foot = baseline - yOffset * scale;
      pen += xAdvance * scale;
      return glyph.path.commands
        .map(({ command, args }) => LETTERS[command] + numbers(args, left, foot, scale))
        .join('');
    })
    .join('');
}

const LETTERS = {
  moveTo: 'M',
  lineTo: 'L',
  quadraticCurveTo: 'Q',
  bezierCurveTo: 'C',
  closePath: 'Z',
} as const;

/** Pairs of x and y, of which a font counts the second upwards. */
function numbers(args: readonly number[], left: number, foot: number, scale: number): string {
  return args
    .map((arg, at) => hundredths(at % 2 === 0 ? left + arg * scale : foot - arg * scale))
    .join(' ');
}

/** A length to two decimals. */
export function hundredths(length: number): string {
  return String(Math.round(length * 100) / 100);
}
