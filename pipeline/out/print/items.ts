import type { Part, Pen } from './pen.js';
import type { Point } from './papers.js';
import { countLines, setLines, type Line, type Span } from './set-lines.js';

/** Something that stands in a column and is not divided: a row, a heading, a line of a table. */
export interface Item {
  /** Points above it; none at the top of a column. */
  readonly before: number;
  /** Points. */
  readonly height: number;
  /** It stands in the column in which the next item stands. */
  readonly keep: boolean;
  /** Draws it from its top left corner. */
  readonly draw: (pen: Pen, at: Point) => void;
}

/** So many lines are never divided; a longer text goes on in the next column. */
const TOGETHER = 8;

/** Points from line to line for a size of type. */
export function leadingOf(size: number): number {
  return size * 1.2;
}

/** From the top of a line to its baseline. */
export function baselineIn(leading: number): number {
  return leading * 0.78;
}

/** Lines that stand together: from one up to another. */
export interface LineSpan {
  readonly from: number;
  readonly to: number;
}

/** So many lines, by as many as stand together. */
export function spansOf(lines: number): readonly LineSpan[] {
  return Array.from({ length: Math.ceil(lines / TOGETHER) }, (_, index) => ({
    from: index * TOGETHER,
    to: Math.min(lines, (index + 1) * TOGETHER),
  }));
}

/** A value that is made when it is first asked for. */
export function lazily<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => (made ??= { value: make() }).value;
}

/** Draws lines one below the other. */
export function drawLines(
  pen: Pen,
  lines: readonly Line[],
  { x, y }: Point,
  leading: number,
): void {
  lines.forEach((line, index) => {
    pen.line(line, { x, y: y + index * leading + baselineIn(leading) });
  });
}

/** What is read, and how its items stand. */
export interface Paragraph {
  readonly part: Part;
  readonly spans: readonly Span[];
  readonly width: number;
  readonly leading: number;
  readonly before: number;
  readonly keep: boolean;
}

/** The part in which spans are read: where a letter of them is replaced, it says them as they are. */
export function readAs(part: Part, spans: readonly Span[]): Part {
  if (spans.every(({ text, voice }) => voice.shows(text))) return part;
  const words = spans.map(({ text }) => text).filter((text) => text !== '');
  return { ...part, actual: words.join(' ') };
}

/** A paragraph or a heading, in as many items as it takes. */
export function paragraph(of: Paragraph): readonly Item[] {
  const { spans, width, leading, before, keep } = of;
  const part = readAs(of.part, spans);
  const lines = lazily(() => setLines(spans, width));
  return spansOf(countLines(spans, width)).map(({ from, to }, index, all) => ({
    before: index === 0 ? before : 0,
    height: (to - from) * leading,
    keep: keep && index === all.length - 1,
    draw: (pen, at) => {
      pen.reads(part, () => drawLines(pen, lines().slice(from, to), at, leading));
    },
  }));
}
