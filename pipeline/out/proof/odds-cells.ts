import { type Point } from '../card/index.js';
import { block, draw, plain, type Block, type Style } from './chrome.js';
import { INK, QUIET } from './colours.js';
import { lower } from './deck-items.js';
import { legible } from './deck-words.js';
import type { Part, Pen, Section } from './pen.js';
import { TEXT_MARGIN } from './text-pages.js';
import type { ProofOptions } from './types.js';

export const CELL: Style = { size: 8.5, leading: 10.5, colour: INK };
export const CELL_HEAD: Style = { size: 7.5, leading: 9, colour: QUIET };

/** Above and below the words of a row, in points. */
export const PAD = 1.6;

/** Where something is drawn: its section comes into being when the first of it is drawn. */
export interface Stand {
  readonly pen: Pen;
  readonly section: () => Section;
  readonly options: ProofOptions;
}

/** Points: a column of names, then columns of figures, each with a gap before it. */
export interface Columns {
  readonly names: number;
  readonly figures: number;
  readonly gap: number;
}

/** Points that a table of so many columns takes. */
export function widthOf({ names, figures, gap }: Columns, count: number): number {
  return names + (count - 1) * (gap + figures);
}

/** Cells side by side, set at the top of the page. */
export function cellsOf(
  texts: readonly string[],
  { names, figures, gap }: Columns,
  style: Style,
  { chrome }: ProofOptions,
): readonly Block[] {
  const set = (text: string, at: Point, width: number, align: 'left' | 'right'): Block =>
    block(legible([plain(text)], chrome), at, width, { ...style, align }, chrome);
  return texts.map((text, column) => {
    if (column === 0) return set(text, { x: TEXT_MARGIN, y: 0 }, names, 'left');
    const x = TEXT_MARGIN + names + column * gap + (column - 1) * figures;
    return set(text, { x, y: 0 }, figures, 'right');
  });
}

/** Points that a row takes. */
export function rowHeight(cells: readonly Block[]): number {
  return Math.max(...cells.map(({ height }) => height)) + 2 * PAD;
}

/** Draws cells as a row of a table, from its top; a row's first cell heads it. */
export function drawCells(
  pen: Pen,
  table: Part,
  cells: readonly Block[],
  heads: 'Column' | 'Row',
  y: number,
): void {
  const row = pen.part(table, 'TR');
  cells.forEach((cell, column) => {
    const isHead = heads === 'Column' || column === 0;
    const part = isHead ? pen.part(row, 'TH', { scope: heads }) : pen.part(row, 'TD');
    pen.draws(part, () => draw(pen, { ...cell, lines: lower(cell.lines, y + PAD) }));
  });
}

/** A value that is made when it is first asked for. */
export function lazily<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => (made ??= { value: make() }).value;
}
