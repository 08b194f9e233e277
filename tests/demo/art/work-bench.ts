import { grain } from './buildings.js';
import { pts } from './geometry.js';
import { type Pt, ink, mist, shoal, tar, timber } from './palette.js';
import type { Sheet } from './sheet.js';
import { nightWater, water } from './water.js';

/** A wall and a thick bench top before it, its upper edge at y. */
export function workBench(s: Sheet, wall: string, y: number, top = timber, seam = tar): void {
  s.ground(wall);
  s.box(top, -40, y, 720, 56);
  grain(s, seam, -40, y, 720, 54, 2);
  s.box(tar, -40, y + 56, 720, 300);
}

/** The dark lake in front of a bench. */
export function benchWater(s: Sheet, y: number): void {
  water(s, y, nightWater);
}

/** Tweezers with their points at the origin, lying to the right, about 300 long. */
export function tweezers(s: Sheet, steel = shoal, shine = mist, shadow = ink): void {
  const blade = (k: 1 | -1): Pt[] =>
    pts('0,2 40,16 130,30 240,22 300,4 300,18 240,42 120,50 34,28 0,8').map(([x, y]): Pt => [
      x,
      y * k,
    ]);
  s.soft(shadow, blade(1));
  s.soft(steel, blade(-1));
  s.cut(steel, pts('286,-16 330,-14 330,14 286,16'));
  s.nicks(shine, [
    [60, -30, 220, -36, 7],
    [60, 30, 200, 38, 5],
  ]);
}
