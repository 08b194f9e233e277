import type { PacksKind } from '../../../schema/index.js';
import { grouped } from './say.js';
import { GREY, INK, RULE, line, num, words } from './svg.js';

type Sheets = NonNullable<PacksKind['sheets']>;
type Form = Sheets['forms'][number];
type Printed = Form['printed'][number];

/** Largest size of a sheet, in units of the picture. */
export const LARGEST = { wide: 276, high: 340 };
/** Largest size of a place on it. */
const PLACE = { wide: 34, high: 34 };
/** Smallest side of a place that is drawn. */
const SMALLEST = 8;
/** Sizes of the letters in a place. */
const LETTERS = { most: 10, least: 6 };
/** From the edge of a place to the two frames of a double print. */
const FRAMES = [1, 3.2] as const;
/** Width of a capital or a digit as a part of its size, with something to spare. */
const LETTER = 0.6;

type Grid = Pick<Sheets, 'columns' | 'rows'>;

interface Size {
  readonly wide: number;
  readonly high: number;
}

function placeOf({ columns, rows }: Grid): Size {
  return {
    wide: Math.min(PLACE.wide, LARGEST.wide / columns),
    high: Math.min(PLACE.high, LARGEST.high / rows),
  };
}

function isDrawn(grid: Grid): boolean {
  const { wide, high } = placeOf(grid);
  return Math.min(wide, high) >= SMALLEST;
}

/** How large a sheet is drawn; one with more places than can be told apart, without its places. */
export function sizeOf(grid: Grid): Size {
  const { wide, high } = placeOf(grid);
  return { wide: wide * grid.columns, high: high * grid.rows };
}

/**
 * What stands in each place of a sheet, from the left and down: all cards in their order, then those
 * that stand there twice, and so on; null where it is blank.
 */
export function placesOf({ printed, blank }: Form): readonly (Printed | null)[] {
  const most = printed.reduce((times, each) => Math.max(times, each.times), 0);
  const rounds = Array.from({ length: most }, (_, at) => printed.filter(({ times }) => times > at));
  return [...rounds.flat(), ...Array.from({ length: blank }, () => null)];
}

/** A sheet with its places: their labels where there is room, double prints in a double frame, blank ones crossed. */
export function cellsOf(grid: Grid, form: Form): readonly string[] {
  const { wide, high } = sizeOf(grid);
  const edge = `<rect width="${num(wide)}" height="${num(high)}" fill="none" stroke="${INK}"/>`;
  if (!isDrawn(grid)) return [edge, ...tooMany(grid)];
  const place = placeOf(grid);
  const letters = lettersOf(form, place);
  return [
    ...placesOf(form).map((printed, at) => {
      const x = (at % grid.columns) * place.wide;
      const y = Math.floor(at / grid.columns) * place.high;
      return `<g transform="translate(${num(x)} ${num(y)})">${cell(printed, place, letters)}</g>`;
    }),
    edge,
  ];
}

function tooMany(grid: Grid): readonly string[] {
  const { wide, high } = sizeOf(grid);
  const text = `${grouped(grid.columns)} × ${grouped(grid.rows)} places`;
  return [
    words(wide / 2, high / 2 + 4, text, { size: 12, fill: GREY, more: 'text-anchor="middle"' }),
  ];
}

/** The size of the letters that all labels fit in their places with; null if they would be too small. */
function lettersOf({ printed }: Form, { wide, high }: Size): number | null {
  const longest = printed.reduce((most, { label }) => Math.max(most, label.length), 1);
  const room = wide - 2 * FRAMES[1] - 1;
  const size = Math.min(LETTERS.most, high / 2, room / (longest * LETTER));
  return size < LETTERS.least ? null : size;
}

function cell(printed: Printed | null, size: Size, letters: number | null): string {
  const { wide, high } = size;
  const frame = rectangle(0, size, RULE);
  if (printed === null) {
    return `${frame}${line(`M0 0L${num(wide)} ${num(high)}M${num(wide)} 0L0 ${num(high)}`, `stroke="${GREY}"`)}`;
  }
  const frames = printed.double ? FRAMES.map((inset) => rectangle(inset, size, INK)) : [];
  const marks = [frame, ...frames].join('');
  if (letters === null) return marks;
  const label = words(wide / 2, high / 2 + letters * 0.35, printed.label, {
    size: Math.floor(letters * 10) / 10,
    more: 'text-anchor="middle"',
  });
  return `${marks}${label}`;
}

function rectangle(inset: number, { wide, high }: Size, colour: string): string {
  return `<rect x="${num(inset)}" y="${num(inset)}" width="${num(wide - 2 * inset)}" height="${num(high - 2 * inset)}" fill="none" stroke="${colour}"/>`;
}
