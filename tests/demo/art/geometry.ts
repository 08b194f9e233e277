import type { Pt } from './palette.js';

/** A small seeded generator (mulberry32), so that every run cuts the same edges. */
export function seeded(text: string): {
  next: () => number;
  save: () => number;
  load: (n: number) => void;
} {
  let state = 2166136261;
  for (const char of text) state = Math.imul(state ^ (char.codePointAt(0) ?? 0), 16777619);
  return {
    next: () => {
      state = (state + 0x6d2b79f5) | 0;
      let t = Math.imul(state ^ (state >>> 15), 1 | state);
      t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
      return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
    },
    save: () => state,
    load: (n) => {
      state = n;
    },
  };
}

/** Rows of figures, written as `x,y x,y`. */
function rows(text: string): number[][] {
  return text.split(' ').map((row) => row.split(',').map(Number));
}

/** Points, written `x,y x,y`. */
export function pts(text: string): Pt[] {
  return rows(text).map(([x = 0, y = 0]): Pt => [x, y]);
}

/** Threes, such as a place and a size. */
export function trios(text: string): (readonly [number, number, number])[] {
  return rows(text).map(([x = 0, y = 0, k = 0]) => [x, y, k] as const);
}

/** Fours, such as a place, a width and a height. */
export function quads(text: string): (readonly [number, number, number, number])[] {
  return rows(text).map(([x = 0, y = 0, w = 0, h = 0]) => [x, y, w, h] as const);
}

/** Gouges: from, to and the width, written `x,y,x,y,w`. */
export function slits(text: string): (readonly [number, number, number, number, number])[] {
  return rows(text).map(([a = 0, b = 0, c = 0, d = 0, w = 0]) => [a, b, c, d, w] as const);
}

/** Points of a Catmull-Rom curve through the given points, about `step` apart. */
export function curve(pts: readonly Pt[], step: number, closed: boolean): Pt[] {
  const out: Pt[] = [];
  const n = pts.length;
  const at = (i: number): Pt => {
    const j = closed ? (i + n) % n : Math.min(n - 1, Math.max(0, i));
    return pts[j] ?? [0, 0];
  };
  const last = closed ? n : n - 1;
  for (let i = 0; i < last; i += 1) {
    const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    const parts = Math.max(1, Math.round(Math.hypot(c[0] - b[0], c[1] - b[1]) / step));
    for (let k = 0; k < parts; k += 1) {
      const t = k / parts;
      out.push([spline(a[0], b[0], c[0], d[0], t), spline(a[1], b[1], c[1], d[1], t)]);
    }
  }
  if (!closed) out.push(at(n - 1));
  return out;
}

function spline(a: number, b: number, c: number, d: number, t: number): number {
  return (
    0.5 *
    (2 * b +
      (c - a) * t +
      (2 * a - 5 * b + 4 * c - d) * t * t +
      (3 * b - a - 3 * c + d) * t * t * t)
  );
}

/** The outline of a stroke along a line, its width going from `from` to `to`. */
export function ribbon(pts: readonly Pt[], from: number, to: number): Pt[] {
  const left: Pt[] = [];
  const right: Pt[] = [];
  pts.forEach((p, i) => {
    const a = pts[Math.max(0, i - 1)] ?? p;
    const b = pts[Math.min(pts.length - 1, i + 1)] ?? p;
    const size = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const half = (from + ((to - from) * i) / Math.max(1, pts.length - 1)) / 2;
    const nx = (-(b[1] - a[1]) / size) * half;
    const ny = ((b[0] - a[0]) / size) * half;
    left.push([p[0] + nx, p[1] + ny]);
    right.unshift([p[0] - nx, p[1] - ny]);
  });
  return [...left, ...right];
}

/** Three points that round off the start of a stroke. */
export function cap(pts: readonly Pt[], width: number): Pt[] {
  const [a, b] = [pts[0] ?? [0, 0], pts[1] ?? [0, 0]];
  const back = Math.atan2(a[1] - b[1], a[0] - b[0]);
  return [0.8, 0, -0.8].map((turn): Pt => {
    const [c, d] = [Math.cos(back + turn), Math.sin(back + turn)];
    return [a[0] + (c * width) / 2, a[1] + (d * width) / 2];
  });
}

/** Points of an ellipse, or of the arc between two angles in degrees. */
export function arc(
  x: number,
  y: number,
  rx: number,
  ry: number,
  from = 0,
  to = 360,
  parts = 0,
): Pt[] {
  const full = Math.abs(to - from) >= 360;
  const n =
    parts || Math.max(6, Math.round((((Math.abs(to - from) / 360) * (rx + ry)) / 2) * 0.2 + 7));
  const out: Pt[] = [];
  for (let i = 0; i < (full ? n : n + 1); i += 1) {
    const a = ((from + ((to - from) * i) / n) * Math.PI) / 180;
    out.push([x + Math.cos(a) * rx, y + Math.sin(a) * ry]);
  }
  return out;
}

/** Path data in whole units, relative, with as few characters as it takes. */
export function pathData(pts: readonly Pt[], closed: boolean): string {
  let [px, py] = [0, 0];
  let out = '';
  pts.forEach((p, i) => {
    const [x, y] = [Math.round(p[0]), Math.round(p[1])];
    const [dx, dy] = i === 0 ? [x, y] : [x - px, y - py];
    if (i > 0 && dx === 0 && dy === 0) return;
    const lead = i === 0 ? 'M' : i === 1 ? 'l' : dx < 0 ? '' : ' ';
    out += `${lead}${dx}${dy < 0 ? '' : ' '}${dy}`;
    [px, py] = [x, y];
  });
  return closed ? `${out}z` : out;
}
