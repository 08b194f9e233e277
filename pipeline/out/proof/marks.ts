import { grow, HAIRLINE, mm, type Point, type Rect } from '../card/index.js';
import { INK, PENCIL, WARNING } from './colours.js';
import { HAIR, type Pen } from './pen.js';

/** From the bleed to the start of a crop mark, and its length. */
const GAP = mm(0.8);
const LENGTH = mm(2.8);

/** How far crop marks reach beyond the bleed, and a little more to part them from others. */
export const REACH = GAP + LENGTH + mm(0.6);

type Segment = readonly [Point, Point];

/** Marks at the corners of the trim, outside of the bleed. */
export function cropMarks(trim: Rect, bleed: number): readonly Segment[] {
  const near = bleed + GAP;
  const far = near + LENGTH;
  const right = trim.x + trim.width;
  const bottom = trim.y + trim.height;
  const upright = [trim.x, right].flatMap((x) => [
    segment(x, trim.y - far, x, trim.y - near),
    segment(x, bottom + near, x, bottom + far),
  ]);
  const level = [trim.y, bottom].flatMap((y) => [
    segment(trim.x - far, y, trim.x - near, y),
    segment(right + near, y, right + far, y),
  ]);
  return [...upright, ...level];
}

/** The edge of the bleed in a hairline, the trim dotted, and marks at its corners. */
export function drawCropMarks(pen: Pen, trim: Rect, bleed: number): void {
  pen.outline(grow(trim, bleed), HAIR, HAIRLINE);
  pen.dotted(trim, HAIR, PENCIL);
  pen.rules(cropMarks(trim, bleed), HAIR, INK);
}

/** Marks around a block of cells that share their edges, at each line of the grid. */
export function gridMarks(block: Rect, columns: number, rows: number): readonly Segment[] {
  const right = block.x + block.width;
  const bottom = block.y + block.height;
  const upright = steps(block.x, block.width, columns).flatMap((x) => [
    segment(x, block.y - GAP - LENGTH, x, block.y - GAP),
    segment(x, bottom + GAP, x, bottom + GAP + LENGTH),
  ]);
  const level = steps(block.y, block.height, rows).flatMap((y) => [
    segment(block.x - GAP - LENGTH, y, block.x - GAP, y),
    segment(right + GAP, y, right + GAP + LENGTH, y),
  ]);
  return [...upright, ...level];
}

function steps(from: number, length: number, count: number): readonly number[] {
  return Array.from({ length: count + 1 }, (_, index) => from + (length * index) / count);
}

/** The sign before what must be mended, from its lower left corner. */
export function drawTriangle(pen: Pen, { x, y }: Point): void {
  pen.fillShape(
    [
      { x, y },
      { x: x + 5.6, y },
      { x: x + 2.8, y: y - 5 },
    ],
    WARNING,
  );
}

export function segment(x1: number, y1: number, x2: number, y2: number): Segment {
  return [
    { x: x1, y: y1 },
    { x: x2, y: y2 },
  ];
}
