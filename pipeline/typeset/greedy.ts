import type { Break } from './break-list.js';
import type { LineWidths } from './line-width.js';
import type { Place } from './stretch.js';

/** A line as found: from a place to a break. */
export interface FoundLine {
  readonly start: Place;
  readonly end: Break;
}

/**
 * Line by line: each line takes as much as it holds. `measure(n)` is the length open to line n of
 * the stretch, in ems; `shrink` is the share of their width that word spaces may lose. A word that no
 * line holds stands alone on one and sticks out.
 */
export function breakLineByLine(
  breaks: readonly Break[],
  widths: LineWidths,
  measure: (line: number) => number,
  shrink: number,
): FoundLine[] {
  const least = (start: Place, end: Break): number =>
    widths.width(start, end) - (shrink === 0 ? 0 : widths.spaces(start, end) * shrink);
  const lines: FoundLine[] = [];
  let start: Place = { segment: 0, offset: 0 };
  let from = 0;
  while (from < breaks.length) {
    const begin = start;
    const found = endOfLine(breaks, from, (end) => least(begin, end), measure(lines.length));
    const end = breaks[found];
    if (!end) break;
    lines.push({ start, end });
    start = end.next;
    from = found + 1;
  }
  return lines;
}

/** Index of the last break that still fits, else of the first. */
function endOfLine(
  breaks: readonly Break[],
  from: number,
  width: (end: Break) => number,
  measure: number,
): number {
  let last = -1;
  let index = from;
  for (; index < breaks.length; index += 1) {
    const end = breaks[index];
    if (!end || end.kind === 'hyphen') continue;
    if (width(end) > measure) break;
    last = index;
  }
  // Only where a word does not fit are the places inside it tried, the last one first.
  for (let inside = index - 1; inside > last && inside >= from; inside -= 1) {
    const end = breaks[inside];
    if (end && width(end) <= measure) return inside;
  }
  return last >= from ? last : from;
}
