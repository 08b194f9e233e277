import { arc } from './geometry.js';
import { rust } from './palette.js';
import type { Sheet } from './sheet.js';
import { rays } from './things.js';

/** The magistrate's seal as a print: a ring, a wave and a star, with no wax. */
export function sealPrint(s: Sheet, x: number, y: number, r: number, color = rust): void {
  s.ring(color, x, y, r, r, r * 0.16);
  s.ring(color, x, y, r * 0.72, r * 0.72, r * 0.07);
  s.limb(color, r * 0.16, r * 0.16, [
    [x - r * 0.45, y + r * 0.24],
    [x - r * 0.2, y + r * 0.06],
    [x, y + r * 0.24],
    [x + r * 0.2, y + r * 0.06],
    [x + r * 0.45, y + r * 0.24],
  ]);
  rays(s, color, x, y - r * 0.22, r * 0.06, r * 0.34, 6, r * 0.12);
}

/** An iron yard pump: its foot at (x, y), `h` tall. */
export function pump(
  s: Sheet,
  color: string,
  light: string,
  x: number,
  y: number,
  h: number,
): void {
  const u = h / 10;
  s.limb(color, u * 0.5, u * 0.36, [
    [x - u * 0.2, y - h * 0.84],
    [x - u * 1.6, y - h * 0.95],
    [x - u * 2.5, y - h * 0.7],
    [x - u * 2.7, y - h * 0.4],
  ]);
  s.limb(color, u * 0.86, u * 0.62, [
    [x, y - h * 0.66],
    [x + u * 1.7, y - h * 0.66],
    [x + u * 2.2, y - h * 0.53],
  ]);
  s.cut(color, [
    [x - u * 0.9, y],
    [x - u * 0.8, y - h * 0.8],
    [x + u * 0.8, y - h * 0.8],
    [x + u * 0.9, y],
  ]);
  s.soft(color, arc(x, y - h * 0.82, u * 1.1, u * 1.2));
  s.oval(color, x, y - h * 0.97, u * 0.34);
  s.bar(light, x - u * 1.05, y - h * 0.79, x + u * 1.05, y - h * 0.79, u * 0.2);
  s.bar(light, x - u * 1, y - h * 0.5, x + u * 1, y - h * 0.5, u * 0.16);
  s.nicks(light, [
    [x - u * 0.4, y - h * 0.74, x - u * 0.46, y - h * 0.56, u * 0.18],
    [x - u * 0.4, y - h * 0.46, x - u * 0.5, y - h * 0.12, u * 0.18],
  ]);
}
