import { arc, pts } from './geometry.js';
import { ember, foam, ink, plank, timber, type Pt } from './palette.js';
import type { Nick, Sheet } from './sheet.js';

/** How a puppet's head is cut: the lit half and the shaded half meet at the nose. */
export interface Face {
  readonly skin: string;
  readonly shade: string;
  readonly size: number;
  /** The side that is in shade: 1 right, -1 left. */
  readonly dark: 1 | -1;
  readonly wide?: number;
  readonly eyes?: 'open' | 'shut' | 'none';
  readonly mouth?: 'level' | 'smile' | 'down' | 'oh';
  readonly blush?: boolean;
}

/** Neck, head and a simple face, centred on (x, y). */
export function head(s: Sheet, x: number, y: number, face: Face): void {
  const {
    skin,
    shade,
    size: r,
    dark: d,
    wide = 0.8,
    eyes = 'open',
    mouth = 'level',
    blush = true,
  } = face;
  const rx = r * wide;
  s.cut(shade, [
    [x - r * 0.3, y + r * 0.6],
    [x + r * 0.3, y + r * 0.6],
    [x + r * 0.36, y + r * 1.45],
    [x - r * 0.36, y + r * 1.45],
  ]);
  s.oval(skin, x, y, rx, r);
  const edge = arc(x, y, rx, r, 88, -88, 12).map(([px, py]): Pt => [x + d * (px - x), py]);
  s.cut(shade, [
    ...edge,
    [x + d * r * 0.1, y - r * 0.5],
    [x - d * r * 0.02, y - r * 0.2],
    [x - d * r * 0.27, y + r * 0.22],
    [x - d * r * 0.02, y + r * 0.3],
    [x - d * r * 0.06, y + r * 0.46],
  ]);
  if (blush)
    s.within({ opacity: 0.75 }, () =>
      s.oval(ember, x - d * rx * 0.56, y + r * 0.3, r * 0.15, r * 0.13),
    );
  const [e1, e2] = [x - d * rx * 0.48, x + d * rx * 0.42];
  const line = skin === timber ? ember : ink;
  if (eyes === 'open') {
    if (skin === timber) {
      s.oval(foam, e1, y - r * 0.04, r * 0.15, r * 0.17);
      s.oval(foam, e2, y - r * 0.04, r * 0.15, r * 0.17);
    }
    s.oval(ink, e1, y - r * 0.04, r * 0.095, r * 0.13);
    s.oval(ink, e2, y - r * 0.04, r * 0.095, r * 0.13);
  } else if (eyes === 'shut') {
    s.ring(ink, e1, y - r * 0.1, r * 0.15, r * 0.12, r * 0.07, 20, 160);
    s.ring(ink, e2, y - r * 0.1, r * 0.15, r * 0.12, r * 0.07, 20, 160);
  }
  const my = y + r * 0.6;
  if (mouth === 'level') s.nicks(line, [[x - r * 0.26, my, x + r * 0.26, my + r * 0.02, r * 0.09]]);
  if (mouth === 'smile') s.ring(line, x, my - r * 0.14, r * 0.27, r * 0.16, r * 0.075, 20, 160);
  if (mouth === 'down') s.ring(line, x, my + r * 0.1, r * 0.25, r * 0.13, r * 0.075, 205, 335);
  if (mouth === 'oh') s.oval(line, x, my, r * 0.1, r * 0.13);
}

/** Brows, level or tipped (in parts of the head's size). */
export function brows(
  s: Sheet,
  color: string,
  x: number,
  y: number,
  r: number,
  tip: number,
  w = 0.1,
): void {
  const list: Nick[] = [
    [x - r * 0.6, y - r * (0.28 - tip), x - r * 0.16, y - r * (0.28 + tip), r * w * 1.6],
    [x + r * 0.16, y - r * (0.28 + tip), x + r * 0.6, y - r * (0.28 - tip), r * w * 1.6],
  ];
  s.nicks(color, list);
}

/** A mitten of a hand with three cuts for the fingers, pointing along `turn` degrees. */
export function hand(
  s: Sheet,
  color: string,
  cutColor: string,
  x: number,
  y: number,
  size: number,
  turn: number,
  flip = false,
): void {
  const k = size / 10;
  s.within(
    {
      transform: `translate(${Math.round(x)} ${Math.round(y)}) rotate(${Math.round(turn)})${flip ? ' scale(1 -1)' : ''}`,
    },
    () => {
      s.soft(color, [
        [-4 * k, -3 * k],
        [2 * k, -4.4 * k],
        [8.4 * k, -3.6 * k],
        [10 * k, 0],
        [8.6 * k, 3 * k],
        [2 * k, 4 * k],
        [-4 * k, 3 * k],
      ]);
      s.soft(color, [
        [-1 * k, -3 * k],
        [2 * k, -7 * k],
        [5 * k, -7.4 * k],
        [4.6 * k, -4 * k],
        [2 * k, -2 * k],
      ]);
      s.nicks(
        cutColor,
        [-1.9, 0.1, 2].map((t): Nick => [4 * k, t * k, 10 * k, t * k * 0.95, 1.1 * k]),
      );
    },
  );
}

/** A sleeve with its cuff and hand; the hand points on along the last stretch. */
export function arm(
  s: Sheet,
  cloth: string,
  skin: string,
  cutColor: string,
  pts: readonly Pt[],
  from: number,
  to: number,
  size: number,
  flip = false,
): void {
  const end = pts.at(-1) ?? [0, 0];
  const before = pts.at(-2) ?? [0, 0];
  const turn = (Math.atan2(end[1] - before[1], end[0] - before[0]) * 180) / Math.PI;
  const a = (turn * Math.PI) / 180;
  hand(
    s,
    skin,
    cutColor,
    end[0] + Math.cos(a) * size * 0.3,
    end[1] + Math.sin(a) * size * 0.3,
    size,
    turn,
    flip,
  );
  s.limb(cloth, from, to, pts);
}

/** A coat or dress: shoulders at y, hem at the given depth, with fold gouges. */
export function coat(
  s: Sheet,
  cloth: string,
  fold: string,
  x: number,
  y: number,
  shoulder: number,
  hem: number,
  depth: number,
): void {
  s.soft(cloth, [
    [x - shoulder * 0.35, y - 14],
    [x + shoulder * 0.35, y - 14],
    [x + shoulder * 0.86, y + 14],
    [x + shoulder, y + 70],
    [x + (shoulder + hem) / 2, y + depth * 0.6],
    [x + hem, y + depth],
    [x - hem, y + depth],
    [x - (shoulder + hem) / 2, y + depth * 0.6],
    [x - shoulder, y + 70],
    [x - shoulder * 0.86, y + 14],
  ]);
  const list: Nick[] = [-0.72, -0.42, 0.38, 0.7].map((t) => [
    x + shoulder * t * 0.8,
    y + s.rand(70, 150),
    x + hem * t,
    y + depth - 10,
    8,
  ]);
  s.nicks(fold, list);
}

/** Buttons down a front. */
export function buttons(
  s: Sheet,
  color: string,
  x: number,
  y: number,
  gap: number,
  count: number,
  r = 8,
): void {
  for (let i = 0; i < count; i += 1) s.oval(color, x, y + i * gap, r);
}

/** A diver's brass helmet with its window, centred on (x, y). */
export function helmet(
  s: Sheet,
  x: number,
  y: number,
  r: number,
  brass: string,
  light: string,
  glass: string,
): void {
  s.cut(brass, [
    [x - r * 0.75, y + r * 0.6],
    [x + r * 0.75, y + r * 0.6],
    [x + r * 1.12, y + r * 1.2],
    [x - r * 1.12, y + r * 1.2],
  ]);
  s.oval(brass, x, y, r, r * 1.02);
  s.nicks(light, [
    [x - r * 0.8, y - r * 0.2, x - r * 0.3, y - r * 0.82, r * 0.14],
    [x - r * 1, y + r * 1.04, x + r * 0.9, y + r * 1.04, r * 0.09],
  ]);
  s.oval(plank, x + r * 0.05, y + r * 0.02, r * 0.66);
  s.oval(glass, x + r * 0.05, y + r * 0.02, r * 0.5);
  s.nicks(light, [[x - r * 0.2, y + r * 0.1, x + r * 0.1, y - r * 0.32, r * 0.13]]);
  s.box(brass, x - r * 0.16, y - r * 1.22, r * 0.32, r * 0.26);
  for (const [bx, by] of pts('-0.72,0.95 0,1.02 0.72,0.95'))
    s.oval(light, x + bx * r, y + by * r - r * 0.08, r * 0.07);
}
