import { arc, pts } from './geometry.js';
import { profile } from './keepsakes.js';
import { lake, rust, tar, type Pt } from './palette.js';
import type { Sheet } from './sheet.js';

/** Draws inside an oval. */
export function inside(
  s: Sheet,
  x: number,
  y: number,
  rx: number,
  ry: number,
  draw: () => void,
): void {
  s.clipped(arc(x, y, rx - 2, ry - 2, 0, 360, 26), draw);
}

/** The same drawing looking the other way, about a middle line. */
export function mirrored(s: Sheet, x: number, draw: () => void): void {
  s.within({ transform: `translate(${2 * x} 0) scale(-1 1)` }, draw);
}

/** The performer of SG-2: bald, with whiskers down to a wide collar. */
export function whiskers(s: Sheet, x: number, y: number, k: number): void {
  const at = (text: string): Pt[] => pts(text).map(([px, py]): Pt => [x + px * k, y + py * k]);
  profile(s, tar, x, y, k);
  s.soft(rust, at('-54,-30 -30,-20 -14,20 20,50 54,58 44,84 0,92 -48,70 -66,20'));
  s.soft(rust, at('22,30 62,28 74,40 50,48 26,46'));
  s.cut(lake, at('-64,104 30,98 44,132 -10,150 -80,140'));
}
