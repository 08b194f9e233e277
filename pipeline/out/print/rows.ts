import type { PublicCard } from '../../../schema/index.js';
import { isNameless, notes, printed } from '../wording/index.js';
import type { PrintFaces } from './faces.js';
import { drawLines, type Item, lazily, leadingOf, readAs, spansOf } from './items.js';
import { mm } from './papers.js';
import type { Part } from './pen.js';
import { clean, countLines, setLines, type Span, widthOf } from './set-lines.js';

/** What a row of a checklist says. */
export interface RowWords {
  readonly number: string;
  readonly name: string;
  readonly nameless: boolean;
  readonly notes: string;
  /** It can be ticked off: all but what is not issued. */
  readonly boxed: boolean;
  /** It stands under the row of its parent. */
  readonly indented: boolean;
}

/** How rows are set: points. */
export interface RowStyle {
  /** Of names and numbers. */
  readonly size: number;
  /** Of a column. */
  readonly width: number;
}

/** A tick box: its side and the weight of its line, in points. */
export const BOX_SIDE = mm(3.2);
export const BOX_WEIGHT = 0.6;

/** No type on a sheet is smaller. */
export const LEAST_SIZE = 6;
const NUMBER_X = BOX_SIDE + 4;
const AFTER_NUMBER = 5;
const INDENT = 8;
/** More ems than a space is wide. */
const SPACE = 0.4;
/** White between two tick boxes. */
const BETWEEN = 1.9;
/** Of a column, for numbers; longer ones go on in the next line. */
const NUMBER_SHARE = 0.34;

export function cardWords(card: PublicCard, zone: string): RowWords {
  return {
    number: clean(printed(card)),
    name: clean(card.name),
    nameless: isNameless(card),
    notes: clean(notesOf(card, zone)),
    boxed: card.state !== 'not issued',
    indented: card.letter !== null,
  };
}

/** What is said beside a name, levels and all: a sheet folds nothing. */
function notesOf(card: PublicCard, zone: string): string {
  return notes(card, zone)
    .map(({ words }) => words)
    .join('; ');
}

/** An artist of a roster, whose cards are ticked off like one. */
export function artistWords(name: string): RowWords {
  return {
    number: '',
    name: clean(name),
    nameless: false,
    notes: '',
    boxed: true,
    indented: false,
  };
}

/** The size of remarks beside names of a size. */
export function smallSize(size: number): number {
  return Math.max(LEAST_SIZE, size * 0.84);
}

/** The rows of one list. The first is kept with the second. */
export function rowItems(
  rows: readonly RowWords[],
  { size, width }: RowStyle,
  faces: PrintFaces,
): readonly Item[] {
  const { slot, nameX } = columnsOf(rows, { size, width }, faces);
  const list: Part = { tag: 'L' };
  return rows.flatMap((row, index) => {
    const indent = indentOf(row);
    const number = {
      spans: [numberSpan(row.number, size, faces)],
      x: indent + NUMBER_X,
      measure: slot + 0.01,
    };
    const name = {
      spans: nameSpans(row, size, faces),
      x: indent + nameX,
      measure: width - indent - nameX,
    };
    return itemsOf({ row, number, name, indent, size }, list, {
      keep: index === 0 && rows.length > 1,
    });
  });
}

/** Where names start in a row that is not indented, and the room for numbers before them. */
function columnsOf(
  rows: readonly RowWords[],
  { size, width }: RowStyle,
  faces: PrintFaces,
): { readonly slot: number; readonly nameX: number } {
  const widths = rows.map(({ number }) => widthOf([numberSpan(number, size, faces)]));
  const slot = Math.min(Math.max(0, ...widths), width * NUMBER_SHARE);
  return { slot, nameX: NUMBER_X + (slot > 0 ? slot + AFTER_NUMBER : 0) };
}

function indentOf({ indented }: RowWords): number {
  return indented ? INDENT : 0;
}

/**
 * Points that the rows of one list take at least, found without breaking a line: to tell soon that
 * they have no room.
 */
export function leastRows(rows: readonly RowWords[], style: RowStyle, faces: PrintFaces): number {
  const { size, width } = style;
  const { nameX } = columnsOf(rows, style, faces);
  return rows.reduce((sum, row) => {
    // The space that a line ends in takes no room.
    const measure = width - nameX - indentOf(row) + SPACE * size;
    return sum + rowHeight(Math.ceil(widthOf(nameSpans(row, size, faces)) / measure), size);
  }, 0);
}

function rowHeight(lines: number, size: number): number {
  const leading = leadingOf(size);
  return Math.max(BOX_SIDE + BETWEEN, firstLine(leading) + lines * leading + BETWEEN / 2);
}

function numberSpan(text: string, size: number, { labels }: PrintFaces): Span {
  return { text, voice: labels.medium, size, ink: 100, figures: true };
}

function nameSpans(row: RowWords, size: number, { text, labels }: PrintFaces): readonly Span[] {
  const { name, nameless, notes: said } = row;
  return [
    nameless
      ? { text: name, voice: text.italic, size, ink: 70 }
      : { text: name, voice: text.regular, size, ink: 100 },
    { text: said, voice: labels.regular, size: smallSize(size), ink: 70 },
  ];
}

/** Words in a column of their own: points from the left of the row. */
interface Cell {
  readonly spans: readonly Span[];
  readonly x: number;
  readonly measure: number;
}

interface LaidRow {
  readonly row: RowWords;
  readonly number: Cell;
  readonly name: Cell;
  readonly indent: number;
  readonly size: number;
}

/** A row in as many items as it takes. Its lines are set when they are drawn. */
function itemsOf(laid: LaidRow, list: Part, { keep }: { readonly keep: boolean }): readonly Item[] {
  const { row, number, name, indent, size } = laid;
  const leading = leadingOf(size);
  const within: Part = { tag: 'LI', within: list };
  const cells = [
    { ...number, tag: 'Lbl' as const },
    { ...name, tag: 'LBody' as const },
  ].map(({ spans, x, measure, tag }) => ({
    x,
    part: lazily(() => readAs({ tag, within }, spans)),
    count: countLines(spans, measure),
    lines: lazily(() => setLines(spans, measure)),
  }));
  const boxX = indent + BOX_WEIGHT / 2;
  const deep = Math.max(1, ...cells.map(({ count }) => count));
  return spansOf(deep).map(({ from, to }, index, all) => {
    const down = from === 0 ? firstLine(leading) : 0;
    return {
      before: 0,
      height: from === 0 ? rowHeight(to, size) : (to - from) * leading + BETWEEN / 2,
      keep: keep && index === all.length - 1,
      draw: (pen, { x, y }) => {
        if (from === 0 && row.boxed) pen.box({ x: x + boxX, y: y + BETWEEN / 2 });
        for (const cell of cells) {
          const lines = cell.lines().slice(from, to);
          if (lines.length === 0) continue;
          const at = { x: x + cell.x, y: y + down };
          pen.reads(cell.part(), () => drawLines(pen, lines, at, leading));
        }
      },
    };
  });
}

/** How far down the first line starts, so that its capitals stand in the middle of the box. */
function firstLine(leading: number): number {
  return Math.max(0, (BETWEEN + BOX_SIDE - leading) / 2);
}
