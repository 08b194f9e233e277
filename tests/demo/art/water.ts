import { arc } from './geometry.js';
import { bleed, deep, foam, ink, lake, night, shoal, type Pt } from './palette.js';
import type { Nick, Sheet } from './sheet.js';

/** The top edge of a sheet of water: hanging scallops that meet in points. */
export function crest(s: Sheet, y: number, size: number, depth: number): Pt[] {
  const out: Pt[] = [];
  const end = s.format.width + bleed + 8;
  let x = -bleed - 8 - s.rand(0, size * 0.7);
  while (x < end) {
    const w = size * s.rand(0.8, 1.25);
    const d = depth * s.rand(0.75, 1.2);
    for (let k = 0; k < 5; k += 1) {
      const t = k / 5;
      out.push([x + w * t, y + d * (1 - (2 * t - 1) ** 2)]);
    }
    x += w;
  }
  out.push([x, y]);
  return out;
}

/** One cut sheet of water from a crest down to the bottom of the bleed. */
export function sheetOfWater(s: Sheet, color: string, y: number, size = 90, depth = 13): void {
  const bottom = s.format.height + bleed + 4;
  const top = crest(s, y, size, depth);
  const first = top[0]?.[0] ?? 0;
  const last = top.at(-1)?.[0] ?? 0;
  s.cut(color, [...top, [last, bottom], [first, bottom]]);
}

/** Level gouges in a field of water, fewer and shorter the lower they lie. */
export function ripples(
  s: Sheet,
  color: string,
  y: number,
  height: number,
  count: number,
  size = 70,
): void {
  const list: Nick[] = [];
  for (let i = 0; i < count; i += 1) {
    const t = (i + s.rand()) / count;
    const x = s.rand(-20, s.format.width + 20);
    const half = (size * s.rand(0.5, 1.2) * (1 - t * 0.35)) / 2;
    const yy = y + height * t;
    list.push([x - half, yy, x + half, yy + s.rand(-2, 2), s.rand(3, 6)]);
  }
  s.nicks(color, list);
}

/** The lake in front: three sheets, lighter behind, calm where the name will stand. */
export function water(s: Sheet, y: number, colors: readonly string[] = [shoal, lake, deep]): void {
  const [a = shoal, b = lake, c = deep] = colors;
  sheetOfWater(s, a, y, 78, 11);
  sheetOfWater(s, b, y + 26, 104, 14);
  ripples(s, a, y + 48, 30, 9, 60);
  sheetOfWater(s, c, y + 66, 132, 16);
  ripples(s, b, y + 96, Math.max(30, s.format.height - y - 110), 9, 84);
}

/** Dark water for the night pictures. */
export const nightWater = [lake, deep, ink] as const;
export const duskWater = [deep, night, ink] as const;

/** Rings of a sound or a drop, lying flat on the water. */
export function rings(
  s: Sheet,
  color: string,
  x: number,
  y: number,
  count: number,
  first: number,
  gap: number,
): void {
  for (let i = 0; i < count; i += 1) {
    const r = first + i * gap;
    s.ring(color, x, y, r, r * 0.3, Math.max(2.5, 7 - i));
  }
}

/** Air going up. */
export function bubbles(
  s: Sheet,
  color: string,
  x: number,
  y: number,
  height: number,
  count: number,
): void {
  for (let i = 0; i < count; i += 1) {
    const t = i / count;
    s.ring(color, x + s.rand(-14, 14) - 10 * t, y - height * t, 5 + 7 * t, 5 + 7 * t, 3.5);
  }
}

/** The broken reflection of a light: level slivers, wider apart the lower. */
export function glitter(
  s: Sheet,
  color: string,
  x: number,
  y: number,
  height: number,
  width: number,
): void {
  const list: Nick[] = [];
  for (let yy = y; yy < y + height; yy += 15) {
    const half = (width * s.rand(0.4, 1) * (1 - (yy - y) / height / 2)) / 2;
    const cx = x + s.rand(-8, 8);
    list.push([cx - half, yy, cx + half, yy + s.rand(-1, 1), 7]);
  }
  s.nicks(color, list);
}

/** A gauge post: bands a hand high. */
export function gauge(s: Sheet, x: number, y: number, h: number): void {
  s.box(foam, x - 13, y, 26, h);
  for (let yy = y + 8; yy < y + h - 12; yy += 40) s.box(ink, x - 13, yy, 26, 18);
}

/** A fish or an eel is only a few cuts. */
export function eel(s: Sheet, color: string, pts: readonly Pt[], w: number, eye: string): void {
  s.limb(color, w, 3, pts);
  const [x, y] = pts[0] ?? [0, 0];
  s.oval(color, x, y, w * 0.62, w * 0.55);
  s.cut(eye, arc(x + w * 0.1, y - w * 0.1, w * 0.14, w * 0.14, 0, 360, 6));
}
