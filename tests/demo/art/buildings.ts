import { ribbon } from './geometry.js';
import { tar, timber, plank, type Pt } from './palette.js';
import type { Nick, Sheet } from './sheet.js';

/** Upright boards over a box, with grain and nail heads. */
export function boards(
  s: Sheet,
  x: number,
  y: number,
  w: number,
  h: number,
  count: number,
  face = timber,
  seam = tar,
  grain = plank,
): void {
  s.box(face, x, y, w, h);
  const each = w / count;
  const seams: Nick[] = [];
  const marks: Nick[] = [];
  for (let i = 0; i < count; i += 1) {
    const px = x + i * each;
    if (i > 0) seams.push([px + s.rand(-2, 2), y - 4, px + s.rand(-2, 2), y + h + 4, 7]);
    for (let k = 0; k < Math.max(1, h / 190); k += 1) {
      const gy = y + s.rand(0.05, 0.75) * h;
      const gx = px + each * s.rand(0.25, 0.75);
      marks.push([gx, gy, gx + s.rand(-4, 4), gy + Math.min(h * 0.3, s.rand(50, 130)), 4]);
    }
  }
  if (seams.length > 0) s.nicks(seam, seams);
  s.nicks(grain, marks);
}

/** Rays of wood grain along a bar lying level. */
export function grain(
  s: Sheet,
  color: string,
  x: number,
  y: number,
  w: number,
  h: number,
  rows: number,
): void {
  const list: Nick[] = [];
  for (let r = 0; r < rows; r += 1) {
    const yy = y + ((r + 0.5) * h) / rows;
    for (let px = x + s.rand(0, 30); px < x + w - 30; px += s.rand(70, 150)) {
      list.push([
        px,
        yy + s.rand(-3, 3),
        Math.min(x + w - 6, px + s.rand(40, 120)),
        yy + s.rand(-4, 4),
        4.5,
      ]);
    }
  }
  s.nicks(color, list);
}

/** A tall narrow house of the town, its foot at y. */
export function house(
  s: Sheet,
  x: number,
  y: number,
  w: number,
  h: number,
  wall: string,
  roof: string,
  light: string | null,
  windows = 2,
): void {
  const lean = s.rand(-5, 5);
  s.cut(wall, [
    [x, y],
    [x + lean, y - h],
    [x + w + lean, y - h],
    [x + w, y],
  ]);
  s.cut(roof, [
    [x - 7 + lean, y - h + 5],
    [x + w * 0.46 + lean, y - h - w * 0.62],
    [x + w + 7 + lean, y - h + 5],
  ]);
  s.box(roof, x + w * 0.68, y - h - w * 0.58, w * 0.13, w * 0.4);
  if (light === null) return;
  const shapes: Pt[][] = [];
  for (let r = 0; r < windows; r += 1) {
    const wy = y - h + 16 + (r * (h - 20)) / windows;
    for (const t of [0.18, 0.58]) {
      const [wx, ww, wh] = [
        x + w * t + lean * 0.7,
        w * 0.24,
        Math.min(w * 0.4, (h / windows) * 0.6),
      ];
      shapes.push([
        [wx, wy],
        [wx + ww, wy],
        [wx + ww, wy + wh],
        [wx, wy + wh],
      ]);
    }
  }
  s.cut(light, ...shapes);
}

/** A row of houses from x to the right edge given. */
export function town(
  s: Sheet,
  x: number,
  to: number,
  y: number,
  low: number,
  high: number,
  wall: string,
  roof: string,
  light: string | null,
): void {
  let px = x;
  while (px < to) {
    const w = s.rand(52, 84);
    house(s, px, y, w, s.rand(low, high), wall, roof, light, s.rand() < 0.5 ? 2 : 3);
    px += w + s.rand(-4, 5);
  }
}

/** A gate of two leaves, shut, with its balance beams. */
export function gate(
  s: Sheet,
  x: number,
  y: number,
  w: number,
  h: number,
  wood: string,
  dark: string,
  pale: string,
): void {
  const half = w / 2;
  const post = (px: number): Pt[] => [
    [px, y - h * 0.1],
    [px + w * 0.1, y - h * 0.1],
    [px + w * 0.1, y + h],
    [px, y + h],
  ];
  const leaf = (px: number): Pt[] => [
    [px, y],
    [px + half - 3, y],
    [px + half - 3, y + h],
    [px, y + h],
  ];
  const beams = [0.16, 0.5, 0.84].flatMap((t): Pt[][] => [
    ribbon(
      [
        [x, y + h * t],
        [x + half - 3, y + h * t + h * 0.04],
      ],
      h * 0.06,
      h * 0.06,
    ),
    ribbon(
      [
        [x + half + 3, y + h * t + h * 0.04],
        [x + w, y + h * t],
      ],
      h * 0.06,
      h * 0.06,
    ),
  ]);
  s.cut(wood, leaf(x), leaf(x + half + 3));
  s.cut(dark, post(x - w * 0.1), post(x + w), ...beams);
  s.nicks(
    pale,
    [0.14, 0.3, 0.42, 0.62, 0.74, 0.9].map((t): Nick => [
      x + w * t,
      y + h * 0.2,
      x + w * t,
      y + h * s.rand(0.5, 0.8),
      Math.max(2, w / 70),
    ]),
  );
}
