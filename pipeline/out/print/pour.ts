import { balance, type Placed } from './columns.js';
import type { Item } from './items.js';
import type { Point } from './papers.js';

/** Items in columns of one width. */
export interface Band {
  readonly columns: number;
  /** Points between two columns. */
  readonly gap: number;
  /** Points above it; none at the top of a page. */
  readonly before: number;
  readonly items: readonly Item[];
}

/** The part of a page that holds text, in points. */
export interface Room {
  readonly x: number;
  readonly width: number;
  readonly top: (page: number) => number;
  readonly bottom: number;
}

export interface Stood {
  readonly item: Item;
  readonly at: Point;
}

export interface Poured {
  readonly pages: readonly (readonly Stood[])[];
  /** Where the last band ends on the last page. */
  readonly y: number;
}

/** A band that has to be divided starts where so much of a page is left, else on the next. */
const WORTH_STARTING = 0.3;

/**
 * Pours bands one below the other. A band that has room where the one before it ends stands there
 * with columns of one length; so does the last page of a longer one.
 */
export function pour(bands: readonly Band[], room: Room): Poured {
  const pages: Stood[][] = [[]];
  let y = room.top(0);
  const page = (): Stood[] => pages[pages.length - 1] ?? [];
  const turn = (): void => {
    pages.push([]);
    y = room.top(pages.length - 1);
  };
  for (const band of bands) {
    let items = band.items;
    let start = page().length > 0;
    while (items.length > 0) {
      const from = y + (start ? band.before : 0);
      const left = room.bottom - from;
      const filled = balance(items, band.columns, left);
      const worth = left >= WORTH_STARTING * (room.bottom - room.top(pages.length - 1));
      const holds = filled.rest.length === 0 && filled.height <= left;
      if (start && !holds && !worth) {
        turn();
      } else {
        page().push(...filled.placed.map((each) => stood(each, band, room, from)));
        y = from + filled.height;
        items = filled.rest;
        if (items.length > 0) turn();
      }
      start = false;
    }
  }
  return { pages, y };
}

/** The width of a column when so many share a width. */
export function columnWidth(width: number, columns: number, gap: number): number {
  return (width - (columns - 1) * gap) / columns;
}

function stood({ item, column, y }: Placed, band: Band, room: Room, from: number): Stood {
  const width = columnWidth(room.width, band.columns, band.gap);
  return { item, at: { x: room.x + column * (width + band.gap), y: from + y } };
}
