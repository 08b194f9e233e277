import type { PrintFaces } from './faces.js';
import { drawLines, type Item, leadingOf, readAs, spansOf } from './items.js';
import type { Part } from './pen.js';
import { clean, setLines, type Span, widthOf } from './set-lines.js';
import type { Voice } from './voice.js';

/** A table: the heads of its columns and its rows, each of as many cells. The first cell heads a row. */
export interface Table {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Points. */
export interface TableStyle {
  readonly size: number;
  readonly width: number;
}

const GAP = 14;
const PAD = 2.2;

/** A table in items: its heads, which are kept with the first row, and a row each. */
export function tableItems(table: Table, style: TableStyle, faces: PrintFaces): readonly Item[] {
  const { headSpans, rowSpans } = spansIn(table, style, faces);
  const widths = columnWidths([headSpans, ...rowSpans], style.width);
  const part: Part = { tag: 'Table' };
  return [
    ...rowItems(headSpans, { part, widths, style, kind: 'head', keep: rowSpans.length > 0 }),
    ...rowSpans.flatMap((spans, index) =>
      rowItems(spans, {
        part,
        widths,
        style,
        kind: 'row',
        keep: index === 0 && rowSpans.length > 1,
      }),
    ),
  ];
}

/** Points that a table takes if no cell is broken. */
export function naturalWidth(table: Table, style: TableStyle, faces: PrintFaces): number {
  const { headSpans, rowSpans } = spansIn(table, style, faces);
  const widths = naturalWidths([headSpans, ...rowSpans]);
  return sum(widths) + (widths.length - 1) * GAP;
}

/** The cells of a table, those of columns that would stay empty left out. */
function spansIn(
  table: Table,
  { size }: TableStyle,
  faces: PrintFaces,
): { readonly headSpans: readonly Span[]; readonly rowSpans: readonly (readonly Span[])[] } {
  const { heads, rows } = withoutEmpty(table);
  const spanOf = (text: string, voice: Voice, ink: Span['ink']): Span => ({
    text: clean(text),
    voice,
    size: voice === faces.text.bold || voice === faces.text.regular ? size : size * 0.92,
    ink,
    figures: true,
  });
  return {
    headSpans: heads.map((text) => spanOf(text, faces.labels.medium, 70)),
    rowSpans: rows.map((cells) =>
      cells.map((text, column) =>
        spanOf(text, column === 0 ? faces.text.regular : faces.labels.regular, 100),
      ),
    ),
  };
}

interface RowLayout {
  readonly part: Part;
  readonly widths: readonly number[];
  readonly style: TableStyle;
  readonly kind: 'head' | 'row';
  readonly keep: boolean;
}

function rowItems(spans: readonly Span[], layout: RowLayout): readonly Item[] {
  const { part, widths, style, kind, keep } = layout;
  const leading = leadingOf(style.size);
  const within: Part = { tag: 'TR', within: part };
  const cells = spans.map((span, column) => ({
    x: sum(widths.slice(0, column)) + column * GAP,
    lines: setLines([span], widths[column] ?? 0),
    part: readAs(cellPart(column, kind, within), [span]),
  }));
  const deep = Math.max(1, ...cells.map(({ lines }) => lines.length));
  return spansOf(deep).map(({ from, to }, index, all) => ({
    before: 0,
    height: (to - from) * leading + 2 * PAD,
    keep: keep && index === all.length - 1,
    draw: (pen, { x, y }) => {
      for (const cell of cells) {
        const lines = cell.lines.slice(from, to);
        const at = { x: x + cell.x, y: y + PAD };
        if (lines.length > 0) pen.reads(cell.part, () => drawLines(pen, lines, at, leading));
        else if (from === 0) pen.leaves(cell.part);
      }
      const bottom = { x, y: y + (to - from) * leading + 2 * PAD };
      pen.furniture('Layout', () => {
        if (kind === 'head') pen.rule(bottom, style.width, 0.6, 70);
        else pen.rule(bottom, style.width, 0.3, 35);
      });
    },
  }));
}

function sum(lengths: readonly number[]): number {
  return lengths.reduce((all, each) => all + each, 0);
}

function cellPart(column: number, kind: 'head' | 'row', within: Part): Part {
  if (kind === 'head') return { tag: 'TH', scope: 'Column', within };
  return column === 0 ? { tag: 'TH', scope: 'Row', within } : { tag: 'TD', within };
}

/** A column that would stay empty is left out. */
function withoutEmpty({ heads, rows }: Table): Table {
  const filled = heads.map((_, column) => rows.some((cells) => (cells[column] ?? '') !== ''));
  const kept = (cells: readonly string[]): readonly string[] =>
    cells.filter((_, column) => filled[column] === true);
  return { heads: kept(heads), rows: rows.map(kept) };
}

/**
 * As wide as the widest cell of each column; where that is too much, the columns that are narrower
 * than an even share keep their width and the others share what is left.
 */
function columnWidths(rows: readonly (readonly Span[])[], width: number): readonly number[] {
  const natural = naturalWidths(rows);
  let room = width - (natural.length - 1) * GAP;
  let wide = natural.map((_, column) => column);
  for (;;) {
    const share = room / Math.max(1, wide.length);
    const fitting = wide.filter((column) => (natural[column] ?? 0) <= share);
    if (fitting.length === 0 || wide.length === 0) {
      return natural.map((own, column) => (wide.includes(column) ? share : own));
    }
    room -= sum(fitting.map((column) => natural[column] ?? 0));
    wide = wide.filter((column) => !fitting.includes(column));
  }
}

/** As wide as the widest cell of each column. */
function naturalWidths(rows: readonly (readonly Span[])[]): readonly number[] {
  return Array.from({ length: rows[0]?.length ?? 0 }, (_, column) =>
    Math.max(0, ...rows.map((cells) => (cells[column] ? widthOf([cells[column]]) + 0.01 : 0))),
  );
}
