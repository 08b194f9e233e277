import { POINTS_PER_MM } from '../../typeset/index.js';

export type Paper = 'a4' | 'letter';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A4 by ISO 216, 210 x 297 mm; US Letter, 8.5 x 11 in. Points. */
export const PAPERS: Readonly<Record<Paper, Size>> = {
  a4: { width: mm(210), height: mm(297) },
  letter: { width: 612, height: 792 },
};

/** White at the sides, which every desk printer leaves. */
export const SIDE = mm(14);
/** White above and below. */
export const EDGE = mm(12.5);

/** Points in so many millimetres. */
export function mm(length: number): number {
  return length * POINTS_PER_MM;
}
