import { glim, ink } from './palette.js';
import type { Sheet } from './sheet.js';
import { glow, lamp, rays } from './things.js';

/** A burning lamp with its light about it, hung by its ring at (x, y). */
export function litLamp(s: Sheet, x: number, y: number, size: number, frame = ink): void {
  const middle = y + size * 0.78;
  glow(s, x, middle, size * 0.95);
  rays(s, glim, x, middle, size * 0.6, size * 1.05, size > 80 ? 14 : 10, size / 15);
  lamp(s, x, y, size, true, frame);
}

/** Stars: short cuts, strewn over a box. */
export function stars(s: Sheet, color: string, y: number, h: number, count: number): void {
  s.hatch(color, -20, y, s.format.width + 40, h, count, 34, 13, 5);
}
