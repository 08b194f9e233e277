import { arc, cap, curve, pathData, ribbon, seeded } from './geometry.js';
import { bleed, type Format, type Pt } from './palette.js';

/** One sliver of a gouge: from, to, and its width in the middle. */
export type Nick = readonly [number, number, number, number, number];

/** A sheet that takes cut shapes, one ink at a time, and gives an SVG document. */
export class Sheet {
  private readonly parts: string[] = [];
  private readonly rng: ReturnType<typeof seeded>;
  private clips = 0;

  constructor(
    readonly format: Format,
    seed: string,
  ) {
    this.rng = seeded(seed);
  }

  /** A number from 0 to 1, or between two bounds. */
  rand(from = 0, to = 1): number {
    return from + this.rng.next() * (to - from);
  }

  /** Draws something extra without moving the edges of what comes after. */
  aside(draw: () => void): void {
    const state = this.rng.save();
    draw();
    this.rng.load(state);
  }

  /** Paints the whole sheet, bleed included. */
  ground(color: string): void {
    const { width, height } = this.format;
    const [w, h] = [width + 2 * bleed, height + 2 * bleed];
    this.parts.push(
      `<rect x="${-bleed}" y="${-bleed}" width="${w}" height="${h}" fill="${color}"/>`,
    );
  }

  private shake(pts: readonly Pt[], amount: number): Pt[] {
    return pts.map(([x, y]): Pt => [
      x + this.rand(-amount, amount),
      y + this.rand(-amount, amount),
    ]);
  }

  private put(color: string, data: string, extra = ''): void {
    this.parts.push(`<path d="${data}" fill="${color}"${extra}/>`);
  }

  /** Straight-edged shapes, cut by hand: long edges wander a little. */
  cut(color: string, ...shapes: readonly (readonly Pt[])[]): void {
    this.put(color, shapes.map((shape) => this.edge(shape)).join(''));
  }

  private edge(shape: readonly Pt[]): string {
    const out: Pt[] = [];
    shape.forEach((p, i) => {
      const q = shape[(i + 1) % shape.length] ?? p;
      const size = Math.hypot(q[0] - p[0], q[1] - p[1]);
      const n = Math.max(1, Math.round(size / (this.format.width / 9)));
      for (let k = 0; k < n; k += 1) {
        out.push([p[0] + ((q[0] - p[0]) * k) / n, p[1] + ((q[1] - p[1]) * k) / n]);
      }
    });
    return pathData(this.shake(out, 1.9), true);
  }

  /** Rounded shapes, through the given points. */
  soft(color: string, ...shapes: readonly (readonly Pt[])[]): void {
    const data = shapes.map((shape) => pathData(this.shake(curve(shape, 17, true), 0.9), true));
    this.put(color, data.join(''));
  }

  oval(color: string, x: number, y: number, rx: number, ry = rx): void {
    this.put(color, pathData(this.shake(arc(x, y, rx, ry), Math.min(1.2, rx / 12)), true));
  }

  /** A hollow ring, or a part of it between two angles. */
  ring(
    color: string,
    x: number,
    y: number,
    rx: number,
    ry: number,
    w: number,
    from = 0,
    to = 360,
  ): void {
    const pts = this.shake(arc(x, y, rx, ry, from, to), 1);
    const closed = Math.abs(to - from) >= 360;
    this.put(
      'none',
      pathData(pts, closed),
      ` stroke="${color}" stroke-width="${Math.round(w * 10) / 10}"`,
    );
  }

  /** A tapering stroke along a smooth line. */
  limb(color: string, from: number, to: number, pts: readonly Pt[]): void {
    const line = curve(pts, 24, false);
    const round = from > 36 ? cap(line, from) : [];
    this.put(color, pathData(this.shake([...ribbon(line, from, to), ...round], 1), true));
  }

  /** Thin even lines, in one path. */
  lines(color: string, w: number, ...lines: readonly (readonly Pt[])[]): void {
    const data = lines.map((line) => pathData(this.shake(line, 0.8), false)).join('');
    this.put('none', data, ` stroke="${color}" stroke-width="${Math.round(w * 10) / 10}"`);
  }

  bar(color: string, x1: number, y1: number, x2: number, y2: number, w: number): void {
    this.cut(
      color,
      ribbon(
        [
          [x1, y1],
          [x2, y2],
        ],
        w,
        w,
      ),
    );
  }

  box(color: string, x: number, y: number, w: number, h: number): void {
    this.cut(color, [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
    ]);
  }

  /** Gouge marks: slivers, pointed at both ends. */
  nicks(color: string, list: readonly Nick[]): void {
    const data = list.map(([x1, y1, x2, y2, w]) => {
      const size = Math.hypot(x2 - x1, y2 - y1) || 1;
      const [nx, ny] = [(-(y2 - y1) / size) * (w / 2), ((x2 - x1) / size) * (w / 2)];
      const t = this.rand(0.3, 0.7);
      const [mx, my] = [x1 + (x2 - x1) * t, y1 + (y2 - y1) * t];
      return pathData(
        [
          [x1, y1],
          [mx + nx, my + ny],
          [x2, y2],
          [mx - nx, my - ny],
        ],
        true,
      );
    });
    this.put(color, data.join(''));
  }

  /** A field of gouges, all leaning one way (degrees), spread over a box. */
  hatch(
    color: string,
    x: number,
    y: number,
    w: number,
    h: number,
    count: number,
    angle: number,
    size: number,
    width = 4,
  ): void {
    const cols = Math.max(1, Math.round(Math.sqrt((count * w) / h)));
    const rows = Math.max(1, Math.round(count / cols));
    const list: Nick[] = [];
    const a = (angle * Math.PI) / 180;
    for (let r = 0; r < rows; r += 1) {
      for (let c = 0; c < cols; c += 1) {
        const px = x + ((c + this.rand(0.1, 0.9) + (r % 2) * 0.3) * w) / cols;
        const py = y + ((r + this.rand(0.1, 0.9)) * h) / rows;
        const half = (size * this.rand(0.55, 1.1)) / 2;
        const [dx, dy] = [Math.cos(a) * half, Math.sin(a) * half];
        list.push([px - dx, py - dy, px + dx, py + dy, width * this.rand(0.7, 1.2)]);
      }
    }
    this.nicks(color, list);
  }

  /** Draws inside a moved, turned or mirrored frame, or at another opacity. */
  within(attributes: { transform?: string; opacity?: number }, draw: () => void): void {
    const { transform, opacity } = attributes;
    const a = transform === undefined ? '' : ` transform="${transform}"`;
    const b = opacity === undefined ? '' : ` opacity="${Math.round(opacity * 10) / 10}"`;
    this.parts.push(`<g${a}${b}>`);
    draw();
    this.parts.push('</g>');
  }

  /** Draws only inside a shape. */
  clipped(shape: readonly Pt[], draw: () => void): void {
    this.clips += 1;
    const id = `k${this.clips}`;
    this.parts.push(`<clipPath id="${id}"><path d="${pathData(shape, true)}"/></clipPath>`);
    this.parts.push(`<g clip-path="url(#${id})">`);
    draw();
    this.parts.push('</g>');
  }

  toString(): string {
    const { width, height } = this.format;
    const view = `${-bleed} ${-bleed} ${width + 2 * bleed} ${height + 2 * bleed}`;
    return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${view}">${this.parts.join('')}</svg>\n`;
  }
}
