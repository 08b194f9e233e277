import type { Zone } from '../../schema/index.js';
import type { FlowedLine } from './flow.js';
import { piecesOf, type LinePieces } from './pieces.js';
import { holds, type Frame } from './slots.js';
import type { SetLine } from './types.js';
import { POINTS_PER_MM, TOLERANCE } from './units.js';
import { SPACE_SHRINK } from './whole-paragraph.js';

/** Puts a flowed line in its place on the card. */
export function placeLine(flowed: FlowedLine, zone: Zone, frame: Frame, size: number): SetLine {
  const { slot, line, paragraph } = flowed;
  const set = setLine(flowed, zone, size);
  return {
    x: zone.x * POINTS_PER_MM + slot.x + shift(zone, slot.width - set.width),
    baseline: zone.y * POINTS_PER_MM + slot.y + frame.ascent,
    width: set.width,
    measure: slot.width,
    pieces: set.pieces,
    words: set.words,
    paragraph,
    hyphenated: line.end.kind === 'hyphen',
    overset: !holds(frame, slot.y),
  };
}

/** Distance that alignment puts before a line. */
function shift(zone: Zone, room: number): number {
  if (zone.align === 'center') return room / 2;
  return zone.align === 'right' ? room : 0;
}

function setLine(flowed: FlowedLine, zone: Zone, size: number): LinePieces {
  const { prepared, line, slot, ends } = flowed;
  const { widths, stretch } = prepared;
  const natural = widths.width(line.start, line.end) * size;
  const spaces = widths.spaces(line.start, line.end) * size;
  const room = slot.width - natural;
  const fills = zone.align === 'justify' && spaces > 0 && (!ends || room < -TOLERANCE);
  if (!fills) return piecesOf(stretch, line, size, 0);
  return piecesOf(stretch, line, size, Math.max(room / spaces, -SPACE_SHRINK));
}
