import { pts } from './geometry.js';
import { amber, foam, ink, mist, plank, rust, shoal, timber, type Pt } from './palette.js';
import type { Sheet } from './sheet.js';

/** Strokes of the figures 0 to 9 on a grid of 2 by 4. */
const figures: readonly (readonly Pt[])[] = [
  pts('0,0 2,0 2,4 0,4 0,0'),
  pts('0,1 1,0 1,4'),
  pts('0,0.6 1,0 2,1 0,4 2,4'),
  pts('0,0 2,0 1,1.7 2,2.8 1,4 0,3.6'),
  pts('1.6,4 1.6,0 0,2.8 2.2,2.8'),
  pts('2,0 0.2,0 0,1.8 1.6,1.8 2,3 1,4 0,3.7'),
  pts('1.8,0 0,2.4 0.4,4 1.8,3.8 2,2.4 0.2,2.4'),
  pts('0,0 2,0 0.8,4'),
  pts('1,1.9 0.2,1 1,0 1.8,1 0.1,3 1,4 1.9,3 1,1.9'),
  pts('1.9,1.4 0.2,1.4 0.3,0.2 1.6,0 1.9,1.4 1.2,4'),
];

/** A sounding, in hands, as a small inked figure. */
export function sounding(
  s: Sheet,
  color: string,
  x: number,
  y: number,
  depth: number,
  size = 4,
): void {
  const marks = String(depth)
    .split('')
    .map((digit, i) => {
      return (figures[Number(digit)] ?? []).map(([px, py]): Pt => [
        x + (px + i * 3) * size,
        y + py * size,
      ]);
    });
  s.lines(color, 2.6, ...marks);
}

/** Soundings along a line. */
export function soundings(
  s: Sheet,
  color: string,
  list: readonly (readonly [number, number, number])[],
): void {
  const marks: Pt[][] = [];
  for (const [x, y, depth] of list) {
    String(depth)
      .split('')
      .forEach((digit, i) => {
        marks.push(
          (figures[Number(digit)] ?? []).map(([px, py]): Pt => [x + (px + i * 3) * 4, y + py * 4]),
        );
      });
  }
  s.lines(color, 2.6, ...marks);
}

/** A rose of eight points whose north is a hand-cut feather. */
export function rose(s: Sheet, x: number, y: number, r: number): void {
  s.ring(ink, x, y, r * 0.72, r * 0.72, 3);
  s.ring(ink, x, y, r * 0.8, r * 0.8, 2);
  for (let i = 0; i < 8; i += 1) {
    const a = (i * Math.PI) / 4 - Math.PI / 2;
    const k = i % 2 === 0 ? r : r * 0.6;
    const tip: Pt = [x + Math.cos(a) * k, y + Math.sin(a) * k];
    const side = (d: number): Pt => [x + Math.cos(a + d) * r * 0.2, y + Math.sin(a + d) * r * 0.2];
    s.cut(i === 0 ? rust : ink, [[x, y], side(0.75), tip]);
    s.cut(i === 0 ? amber : plank, [[x, y], side(-0.75), tip]);
  }
  s.oval(foam, x, y, r * 0.09);
}

/** The neat line round a chart, with its alternating scale. */
export function border(s: Sheet): void {
  const [w, h, m] = [s.format.width, s.format.height, 44];
  s.lines(ink, 3, [
    [m, m],
    [w - m, m],
    [w - m, h - m],
    [m, h - m],
    [m, m],
  ]);
  s.lines(ink, 1.5, [
    [m + 14, m + 14],
    [w - m - 14, m + 14],
    [w - m - 14, h - m - 14],
    [m + 14, h - m - 14],
    [m + 14, m + 14],
  ]);
  const blocks: Pt[][] = [];
  for (let x = m + 14; x < w - m - 60; x += 90) {
    for (const y of [m + 3, h - m - 12])
      blocks.push([
        [x, y],
        [x + 45, y],
        [x + 45, y + 9],
        [x, y + 9],
      ]);
  }
  for (let y = m + 14; y < h - m - 60; y += 90) {
    for (const x of [m + 3, w - m - 12])
      blocks.push([
        [x, y],
        [x + 9, y],
        [x + 9, y + 45],
        [x, y + 45],
      ]);
  }
  s.cut(ink, ...blocks);
}

/** A shore: land with its contours stepping down into the water. */
export function shore(
  s: Sheet,
  land: string,
  pts: readonly Pt[],
  cx: number,
  cy: number,
  steps = 3,
): void {
  const tones = [mist, '#8fc0b3', shoal];
  for (let i = steps; i >= 1; i -= 1) {
    const k = 1 + i * 0.13;
    s.soft(
      tones[3 - i] ?? shoal,
      pts.map(([x, y]): Pt => [cx + (x - cx) * k, cy + (y - cy) * k]),
    );
  }
  s.soft(land, pts);
}

/** Sailing lines from a rose, ruled thin. */
export function rhumbs(s: Sheet, x: number, y: number, color = timber): void {
  const lines: Pt[][] = [];
  for (let i = 0; i < 16; i += 1) {
    const a = (i * Math.PI) / 8;
    lines.push([
      [x, y],
      [x + Math.cos(a) * 1100, y + Math.sin(a) * 1100],
    ]);
  }
  s.within({ opacity: 0.35 }, () => s.lines(color, 1.6, ...lines));
}

/** A dashed track. */
export function track(s: Sheet, color: string, pts: readonly Pt[]): void {
  const dashes: Pt[][] = [];
  for (let i = 0; i + 1 < pts.length; i += 1) {
    const [a, b] = [pts[i] ?? [0, 0], pts[i + 1] ?? [0, 0]];
    const n = Math.max(1, Math.round(Math.hypot(b[0] - a[0], b[1] - a[1]) / 24));
    for (let k = 0; k < n; k += 1) {
      const at = (t: number): Pt => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
      dashes.push([at(k / n), at((k + 0.55) / n)]);
    }
  }
  s.lines(color, 5, ...dashes);
}

/** Little roofs of a quarter, seen from above. */
export function roofs(
  s: Sheet,
  color: string,
  list: readonly (readonly [number, number, number, number])[],
): void {
  s.cut(
    color,
    ...list.map(([x, y, w, h]): Pt[] => [
      [x, y],
      [x + w, y + 2],
      [x + w - 2, y + h],
      [x + 1, y + h],
    ]),
  );
}

/** A blank scroll for the name of a chart. */
export function cartouche(s: Sheet, x: number, y: number, w: number): void {
  s.cut(foam, [
    [x, y],
    [x + w, y + 3],
    [x + w + 16, y + 34],
    [x + w, y + 64],
    [x, y + 66],
    [x - 16, y + 32],
  ]);
  s.lines(ink, 3, [
    [x + 14, y + 10],
    [x + w - 14, y + 11],
    [x + w - 14, y + 55],
    [x + 14, y + 56],
    [x + 14, y + 10],
  ]);
  const wave: Pt[] = [];
  for (let px = x + 34; px < x + w - 30; px += 14)
    wave.push([px, y + 33 + (wave.length % 2 === 0 ? 6 : -6)]);
  s.lines(rust, 4, wave);
}
