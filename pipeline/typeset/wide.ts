import type { Zone } from '../../schema/index.js';
import type { FlowedLine } from './flow.js';
import { TOLERANCE } from './units.js';
import { SPACE_SHRINK } from './whole-paragraph.js';

/** Share of their width that the spaces of a zone's lines may lose. */
export function spaceShrink(zone: Zone): number {
  return zone.align === 'justify' && zone.breaks === 'whole-paragraph' ? SPACE_SHRINK : 0;
}

/** Whether a line is longer than its room, its spaces as narrow as they may be. */
export function sticksOut({ prepared, line, slot }: FlowedLine, zone: Zone, size: number): boolean {
  const { widths } = prepared;
  const least =
    widths.width(line.start, line.end) - widths.spaces(line.start, line.end) * spaceShrink(zone);
  return least * size > slot.width + 2 * TOLERANCE;
}
