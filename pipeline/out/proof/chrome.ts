import { POINTS_PER_MM, setText, type Faces, type TextRun } from '../../typeset/index.js';
import type { MissingGlyph, SetLine } from '../../typeset/index.js';
import type { Point } from '../card/index.js';
import type { Pen } from './pen.js';

/** How the sheets' own words are set; points. */
export interface Style {
  readonly size: number;
  readonly leading: number;
  readonly colour: string;
  readonly face?: keyof Faces;
  readonly align?: 'left' | 'center' | 'right';
}

/** Words of the sheets themselves, set. */
export interface Block {
  readonly lines: readonly SetLine[];
  readonly style: Style;
  readonly height: number;
  /** Of the widest line. */
  readonly width: number;
  readonly missing: readonly MissingGlyph[];
}

/** More than any block needs, in millimetres. */
const DEEP = 120;

/** Sets words in a column that starts at a point. */
export function block(
  words: string | readonly TextRun[],
  { x, y }: Point,
  width: number,
  style: Style,
  faces: Faces,
): Block {
  const { size, leading, face = 'regular', align = 'left' } = style;
  const runs = typeof words === 'string' ? [plain(words)] : words;
  const zone = {
    x: x / POINTS_PER_MM,
    y: y / POINTS_PER_MM,
    width: width / POINTS_PER_MM,
    height: DEEP,
    font: 'chrome',
    size,
    leading,
    face,
    align,
  };
  const { lines, missing } = setText([runs], zone, faces);
  return {
    lines,
    style,
    height: lines.length * leading,
    width: Math.max(0, ...lines.map((line) => line.width)),
    missing,
  };
}

/** Sets words whose first baseline is at a point. */
export function caption(
  words: string | readonly TextRun[],
  { x, y }: Point,
  width: number,
  style: Style,
  faces: Faces,
): Block {
  const ascent = faces[style.face ?? 'regular'].ascent * style.size;
  return block(words, { x, y: y - ascent }, width, style, faces);
}

export function draw(pen: Pen, { lines, style }: Block): void {
  pen.lines(lines, style.size, () => style.colour);
}

export function plain(text: string): TextRun {
  return { text, italic: false, bold: false };
}

export function bold(text: string): TextRun {
  return { text, italic: false, bold: true };
}
