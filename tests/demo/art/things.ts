import { arc } from './geometry.js';
import { ink, foam, amber, glim, tar, plank, type Pt } from './palette.js';
import type { Nick, Sheet } from './sheet.js';

/** Rays cut around a light. */
export function rays(
  s: Sheet,
  color: string,
  x: number,
  y: number,
  from: number,
  to: number,
  count: number,
  width = 7,
): void {
  const list: Nick[] = [];
  for (let i = 0; i < count; i += 1) {
    const a = ((i + s.rand(-0.2, 0.2)) / count) * Math.PI * 2;
    const far = to * s.rand(0.78, 1.05);
    const [c, d] = [Math.cos(a), Math.sin(a)];
    list.push([x + c * from, y + d * from, x + c * far, y + d * far, width]);
  }
  s.nicks(color, list);
}

/** A round light behind a lamp. */
export function glow(s: Sheet, x: number, y: number, r: number, color = '#f08a24'): void {
  s.within({ opacity: 0.28 }, () => s.oval(color, x, y, r));
  s.within({ opacity: 0.5 }, () => s.oval(color, x, y, r * 0.62));
}

/** A ferry lamp, hung by its ring at (x, y). */
export function lamp(
  s: Sheet,
  x: number,
  y: number,
  size: number,
  lit: boolean,
  frame = ink,
): void {
  const u = size / 10;
  const pane = lit ? glim : '#54656b';
  s.ring(frame, x, y + u * 1.2, u * 1.3, u * 1.3, u * 0.6);
  s.cut(frame, [
    [x - u * 1.2, y + u * 2.2],
    [x + u * 1.2, y + u * 2.2],
    [x + u * 4, y + u * 4.6],
    [x - u * 4, y + u * 4.6],
  ]);
  s.cut(pane, [
    [x - u * 3, y + u * 4.6],
    [x + u * 3, y + u * 4.6],
    [x + u * 3.6, y + u * 11],
    [x - u * 3.6, y + u * 11],
  ]);
  if (lit)
    s.soft(amber, [
      [x, y + u * 5.6],
      [x + u * 1.5, y + u * 8.6],
      [x, y + u * 10.4],
      [x - u * 1.5, y + u * 8.6],
    ]);
  s.cut(
    frame,
    [
      [x - u * 4.2, y + u * 10.6],
      [x + u * 4.2, y + u * 10.6],
      [x + u * 3.4, y + u * 12.6],
      [x - u * 3.4, y + u * 12.6],
    ],
    [
      [x - u * 3.4, y + u * 4.4],
      [x - u * 2.6, y + u * 4.4],
      [x - u * 3.1, y + u * 10.8],
      [x - u * 4, y + u * 10.8],
    ],
    [
      [x + u * 2.6, y + u * 4.4],
      [x + u * 3.4, y + u * 4.4],
      [x + u * 4, y + u * 10.8],
      [x + u * 3.1, y + u * 10.8],
    ],
  );
}

/** Chalk tallies: groups of five, the last may be short. */
export function tallies(
  s: Sheet,
  color: string,
  x: number,
  y: number,
  size: number,
  total: number,
  perRow: number,
): void {
  const list: Nick[] = [];
  for (let i = 0; i < total; i += 1) {
    const group = Math.floor(i / 5);
    const gx = x + (group % perRow) * size * 1.75;
    const gy = y + Math.floor(group / perRow) * size * 1.5;
    const k = i % 5;
    const w = size * 0.11;
    if (k < 4)
      list.push([
        gx + k * size * 0.32 + s.rand(-2, 2),
        gy,
        gx + k * size * 0.32 + s.rand(-3, 3),
        gy + size,
        w,
      ]);
    else list.push([gx - size * 0.22, gy + size * 0.85, gx + size * 1.2, gy + size * 0.12, w]);
  }
  s.nicks(color, list);
}

/** A key, its bow at (x, y), hanging at an angle. */
export function key(
  s: Sheet,
  color: string,
  x: number,
  y: number,
  size: number,
  turn: number,
): void {
  s.within(
    { transform: `translate(${Math.round(x)} ${Math.round(y)}) rotate(${Math.round(turn)})` },
    () => {
      s.ring(color, 0, size * 0.16, size * 0.15, size * 0.15, size * 0.09);
      s.cut(color, [
        [-size * 0.05, size * 0.3],
        [size * 0.05, size * 0.3],
        [size * 0.05, size * 0.72],
        [size * 0.24, size * 0.72],
        [size * 0.24, size * 0.8],
        [size * 0.05, size * 0.8],
        [size * 0.05, size * 0.88],
        [size * 0.2, size * 0.88],
        [size * 0.2, size],
        [-size * 0.05, size],
      ]);
    },
  );
}

/** A seal of wax with a plain device: a wave under a star of cuts. */
export function seal(s: Sheet, color: string, mark: string, x: number, y: number, r: number): void {
  const pts: Pt[] = arc(x, y, r, r, 0, 360, 15).map(([px, py]): Pt => {
    const k = s.rand(0.92, 1.12);
    return [x + (px - x) * k, y + (py - y) * k];
  });
  s.soft(color, pts);
  s.ring(mark, x, y, r * 0.7, r * 0.7, r * 0.07);
  s.limb(mark, r * 0.14, r * 0.14, [
    [x - r * 0.45, y + r * 0.2],
    [x - r * 0.2, y + r * 0.02],
    [x, y + r * 0.2],
    [x + r * 0.2, y + r * 0.02],
    [x + r * 0.45, y + r * 0.2],
  ]);
  rays(s, mark, x, y - r * 0.22, r * 0.06, r * 0.3, 6, r * 0.1);
}

/** A mooring post with a rope about it. */
export function post(s: Sheet, x: number, y: number, w: number, h: number): void {
  s.cut(tar, [
    [x - w / 2, y],
    [x + w / 2, y - 5],
    [x + w / 2 + 4, y + h],
    [x - w / 2 - 4, y + h],
  ]);
  s.nicks(plank, [
    [x - w * 0.2, y + 14, x - w * 0.25, y + h * 0.7, 5],
    [x + w * 0.2, y + 30, x + w * 0.18, y + h * 0.55, 4],
  ]);
  s.bar(foam, x - w / 2 - 3, y + 26, x + w / 2 + 3, y + 20, 7);
  s.bar(foam, x - w / 2 - 3, y + 38, x + w / 2 + 3, y + 32, 7);
}

/** A twisted rope along a straight line. */
export function rope(
  s: Sheet,
  color: string,
  dark: string,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  from: number,
  to: number,
): void {
  s.limb(color, from, to, [
    [x1, y1],
    [(x1 + x2) / 2, (y1 + y2) / 2],
    [x2, y2],
  ]);
  const size = Math.hypot(x2 - x1, y2 - y1);
  const [ux, uy] = [(x2 - x1) / size, (y2 - y1) / size];
  const list: Nick[] = [];
  let at = from * 0.3;
  while (at < size) {
    const w = from + ((to - from) * at) / size;
    const [cx, cy] = [x1 + ux * at, y1 + uy * at];
    const k = w * 0.5;
    list.push([
      cx - uy * k - ux * k * 0.7,
      cy + ux * k - uy * k * 0.7,
      cx + uy * k + ux * k * 0.7,
      cy - ux * k + uy * k * 0.7,
      w * 0.18,
    ]);
    at += w * 0.72;
  }
  s.nicks(dark, list);
}
