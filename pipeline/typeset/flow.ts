import type { Zone } from '../../schema/index.js';
import type { Break } from './break-list.js';
import { breakLineByLine, type FoundLine } from './greedy.js';
import type { Prepared, PreparedStretch } from './paragraphs.js';
import { slotFrom, type Frame, type Slot } from './slots.js';
import { TOLERANCE } from './units.js';
import { breakWholeParagraph } from './whole-paragraph.js';
import { spaceShrink } from './wide.js';

/** A line with its room, before anything is drawn. */
export interface FlowedLine {
  readonly prepared: PreparedStretch;
  readonly line: FoundLine;
  readonly slot: Slot;
  readonly paragraph: number;
  /** The last line of its stretch, which is not justified. */
  readonly ends: boolean;
}

/**
 * Breaks paragraphs into lines from `top` down, in points from the top of the zone. `pack`: line by line
 * with every space as narrow as it may be, whatever the zone asks for.
 */
export function flow(
  paragraphs: readonly Prepared[],
  zone: Zone,
  frame: Frame,
  size: number,
  top: number,
  pack: boolean,
): FlowedLine[] {
  const lines: FlowedLine[] = [];
  let y = top;
  paragraphs.forEach((paragraph, number) => {
    if (number > 0) y += frame.gap;
    paragraph.forEach((prepared, index) => {
      const slots = slotsFrom(frame, y, index === 0 ? frame.indent : 0);
      const found = breakStretch(prepared, zone, slots, size, {
        uniform: frame.avoid.length === 0,
        pack,
      });
      found.forEach((line, at) => {
        const ends = at === found.length - 1;
        lines.push({ prepared, line, slot: slots(at), paragraph: number, ends });
      });
      y = slots(found.length - 1).y + frame.leading;
    });
  });
  return lines;
}

type Slots = (line: number) => Slot;

/** The rooms from a height down, found as they are asked for; the first is indented. */
function slotsFrom(frame: Frame, y: number, indent: number): Slots {
  const found: Slot[] = [];
  return (line) => {
    for (;;) {
      const slot = found[line];
      if (slot) return slot;
      const before = found.at(-1);
      const next = slotFrom(frame, before ? before.y + frame.leading : y);
      const inset = before ? 0 : Math.min(indent, next.width);
      found.push({ x: next.x + inset, y: next.y, width: next.width - inset });
    }
  };
}

function breakStretch(
  prepared: PreparedStretch,
  zone: Zone,
  slots: Slots,
  size: number,
  how: { readonly uniform: boolean; readonly pack: boolean },
): FoundLine[] {
  const measure = (line: number): number => (slots(line).width + TOLERANCE) / size;
  const uniform = how.uniform && slots(0).width === slots(1).width;
  const justified = zone.align === 'justify';
  const { widths, breaks, withoutWidow } = prepared;
  const shrink = spaceShrink(zone);
  if (how.pack) return breakLineByLine(breaks, widths, measure, shrink);
  const setWith = (allowed: readonly Break[]): FoundLine[] =>
    zone.breaks === 'whole-paragraph'
      ? breakWholeParagraph(allowed, widths, { uniform, measure }, justified)
      : breakLineByLine(allowed, widths, measure, 0);
  const bound = withoutWidow && setWith(withoutWidow);
  const inside = bound?.every(
    ({ start, end }, at) =>
      widths.width(start, end) - widths.spaces(start, end) * shrink <= measure(at),
  );
  return bound && inside === true ? bound : setWith(breaks);
}
