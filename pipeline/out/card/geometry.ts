import { POINTS_PER_MM } from '../../typeset/index.js';

/** Lengths are points unless they say otherwise; y runs down from the top left corner. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Rect extends Point, Size {}

/** Millimetres as points. */
export function mm(length: number): number {
  return length * POINTS_PER_MM;
}

export function sizeInMm(width: number, height: number): Size {
  return { width: mm(width), height: mm(height) };
}

/** The rectangle with `by` more on every side. */
export function grow({ x, y, width, height }: Rect, by: number): Rect {
  return { x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by };
}
