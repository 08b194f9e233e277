import { sizeInMm, type Point, type Size } from '../card/index.js';

export type Paper = 'a4' | 'letter';

/** A4 by ISO 216, 210 x 297 mm; US Letter, 8.5 x 11 in. */
export const PAPERS: Readonly<Record<Paper, Size>> = {
  a4: sizeInMm(210, 297),
  letter: { width: 612, height: 792 },
};

export function turnedSize({ width, height }: Size): Size {
  return { width: height, height: width };
}

/** How a card lies on the page: upright, or with its top to the right or to the left. */
export type Turn = 'none' | 'clockwise' | 'counter-clockwise';

/** Maps (u, v) to (a u + c v + e, b u + d v + f), as the `cm` operator of PDF does. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** Takes a side of a card, measured from its own top left corner, to a place on the page. */
export function placing(side: Size, corner: Point, turn: Turn, scale: number): Matrix {
  const { x, y } = corner;
  if (turn === 'clockwise') return [0, scale, -scale, 0, x + side.height * scale, y];
  if (turn === 'counter-clockwise') return [0, -scale, scale, 0, x, y + side.width * scale];
  return [scale, 0, 0, scale, x, y];
}

/** What a side takes of the page as it lies. */
export function lying(side: Size, turn: Turn): Size {
  return turn === 'none' ? side : turnedSize(side);
}

export function apply([a, b, c, d, e, f]: Matrix, { x, y }: Point): Point {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}
