import type { Zone } from '../../schema/index.js';
import { POINTS_PER_MM, TOLERANCE } from './units.js';

/** Room for one line: points from the top left corner of the zone; `y` is the top of the line. */
export interface Slot {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The measures of a zone at one size, in points. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly ascent: number;
  /** From the top of a line to the bottom of its descenders. */
  readonly depth: number;
  readonly leading: number;
  readonly indent: number;
  readonly gap: number;
  readonly avoid: readonly Box[];
  /** Beside what it avoids, a line shorter than this is left empty: three ems. */
  readonly shortest: number;
}

/** Measures of a zone for type of one size; `ascent` and `descent` in ems. */
export function frameOf(
  zone: Zone,
  size: number,
  leading: number,
  face: { readonly ascent: number; readonly descent: number },
): Frame {
  return {
    width: zone.width * POINTS_PER_MM,
    height: zone.height * POINTS_PER_MM,
    ascent: face.ascent * size,
    depth: (face.ascent + face.descent) * size,
    leading,
    indent: (zone.indent ?? 0) * POINTS_PER_MM,
    gap: zone.gap ?? 0,
    avoid: (zone.avoid ?? []).map((box) => ({
      left: (box.x - zone.x) * POINTS_PER_MM,
      top: (box.y - zone.y) * POINTS_PER_MM,
      right: (box.x - zone.x + box.width) * POINTS_PER_MM,
      bottom: (box.y - zone.y + box.height) * POINTS_PER_MM,
    })),
    shortest: 3 * size,
  };
}

/** Whether a line at this height stands wholly inside the zone. */
export function holds(frame: Frame, y: number): boolean {
  return y + frame.depth <= frame.height + TOLERANCE;
}

/**
 * The first room for a line at `y` or below, going down by whole lines. Below the zone all of its
 * width is open, so there is always one.
 */
export function slotFrom(frame: Frame, y: number): Slot {
  for (let top = y; ; top += frame.leading) {
    if (frame.avoid.length === 0 || !holds(frame, top)) return { x: 0, y: top, width: frame.width };
    const { left, right } = widestRoom(frame, top);
    if (right - left >= Math.min(frame.shortest, frame.width)) {
      return { x: left, y: top, width: right - left };
    }
  }
}

/** The widest stretch at this height that touches no box; the left one of two alike. */
function widestRoom(frame: Frame, top: number): { left: number; right: number } {
  const touched = frame.avoid
    .filter((box) => box.top < top + frame.depth && box.bottom > top)
    .sort((a, b) => a.left - b.left);
  let best = { left: 0, right: 0 };
  let left = 0;
  for (const box of [...touched, { left: frame.width, right: frame.width }]) {
    const right = Math.min(box.left, frame.width);
    if (right - left > best.right - best.left) best = { left, right };
    left = Math.max(left, box.right);
  }
  return best;
}

/** How many lines there is room for from `y` down. */
export function roomFrom(frame: Frame, y: number): number {
  let lines = 0;
  for (
    let slot = slotFrom(frame, y);
    holds(frame, slot.y);
    slot = slotFrom(frame, slot.y + frame.leading)
  ) {
    lines += 1;
  }
  return lines;
}
