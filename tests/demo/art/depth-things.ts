import { arc, pts } from './geometry.js';
import { type Pt, foam, plank, shoal, tar, timber } from './palette.js';
import type { Nick, Sheet } from './sheet.js';
import { placedAt } from './story-people.js';

/** A rowing boat from the side, about 320 long, its water line at the origin. */
export function rowingBoat(s: Sheet, hull: string, trim: string): void {
  s.soft(hull, pts('-170,-52 -120,-34 0,-28 120,-36 172,-60 140,22 -130,24'));
  s.nicks(trim, [
    [-156, -36, -10, -18, 6],
    [10, -18, 156, -40, 6],
    [-130, 2, 120, 2, 6],
  ]);
}

/** A row of drips falling from a hem between two points. */
export function drips(
  s: Sheet,
  color: string,
  from: Pt,
  to: Pt,
  count: number,
  fall: number,
  size = 9,
): void {
  const list: Nick[] = [];
  for (let i = 0; i < count; i += 1) {
    const t = (i + 0.5) / count;
    const x = from[0] + (to[0] - from[0]) * t + s.rand(-5, 5);
    const y = from[1] + (to[1] - from[1]) * t + s.rand(4, fall);
    list.push([x, y, x + s.rand(-2, 2), y + size * 3.4, size]);
  }
  s.nicks(color, list);
}

/** A fish swimming to the right (or, mirrored, to the left), its middle at (x, y). */
export function fish(s: Sheet, color: string, eye: string, x: number, y: number, k: number): void {
  placedAt(
    s,
    x,
    y,
    Math.abs(k),
    () => {
      s.soft(color, pts('-34,0 -10,-20 24,-18 46,0 24,16 -10,18'));
      s.cut(color, pts('-26,0 -62,-24 -54,0 -62,24'));
      s.cut(eye, arc(26, -5, 5, 5, 0, 360, 6));
      s.nicks(eye, [
        [8, -12, 6, 10, 4],
        [-12, -6, -10, 8, 4],
      ]);
    },
    0,
    k,
  );
}

/** A clothes line from one side to the other, sagging, and pegs where they are wanted. */
export function clothesLine(
  s: Sheet,
  color: string,
  line: readonly Pt[],
  pegs: readonly Pt[],
): void {
  s.limb(color, 7, 7, line);
  s.cut(
    timber,
    ...pegs.map(([x, y]): Pt[] => [
      [x - 6, y - 18],
      [x + 6, y - 18],
      [x + 7, y + 22],
      [x - 7, y + 22],
    ]),
  );
}

/** Flagstones of a quay, seen from the side: its top at y. */
export function quay(s: Sheet, y: number, face = timber, top = plank, seam = tar): void {
  s.box(face, -40, y, 720, 900 - y);
  s.box(top, -40, y, 720, 26);
  const joints: Nick[] = [];
  for (let x = -20; x < 680; x += s.rand(70, 120))
    joints.push([x, y + 4, x + s.rand(-4, 4), y + 26, 6], [x + 40, y + 40, x + 42, y + 84, 6]);
  s.nicks(seam, joints);
}

/** A lettuce, or the top of any leafy thing. */
export function lettuce(
  s: Sheet,
  color: string,
  vein: string,
  x: number,
  y: number,
  r: number,
): void {
  const leaf = arc(x, y, r, r * 0.86, 150, 390, 9).map(([px, py], i): Pt => {
    const k = i % 2 === 0 ? 1.1 : 0.84;
    return [x + (px - x) * k, y + (py - y) * k];
  });
  s.soft(color, leaf);
  s.nicks(vein, [
    [x, y + r * 0.4, x, y - r * 0.6, r * 0.16],
    [x - r * 0.2, y + r * 0.3, x - r * 0.6, y - r * 0.3, r * 0.12],
    [x + r * 0.2, y + r * 0.3, x + r * 0.6, y - r * 0.3, r * 0.12],
  ]);
}

/** Bubbles of foam about something standing in the water. */
export function wash(s: Sheet, x: number, y: number, w: number): void {
  s.nicks(foam, [
    [x - w / 2 - 20, y, x - w * 0.1, y + 2, 9],
    [x + w * 0.05, y + 6, x + w / 2 + 24, y + 3, 8],
  ]);
  s.nicks(shoal, [[x - w * 0.4, y + 14, x + w * 0.4, y + 16, 6]]);
}
