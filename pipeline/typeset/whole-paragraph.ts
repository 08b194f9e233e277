import type { Break } from './break-list.js';
import type { FoundLine } from './greedy.js';
import type { LineWidths } from './line-width.js';
import {
  optimumBreaks,
  PLAIN_RULES,
  type BreakPoints,
  type Flexible,
  type Measures,
} from './optimum.js';
import type { Place } from './stretch.js';

/** How far a word space may be stretched and shrunk: about what the roman faces of TeX allow. */
export const SPACE_STRETCH = 1 / 2;
export const SPACE_SHRINK = 1 / 3;
/** How short a ragged line may fall, in ems, at a badness of 100: `\raggedright` of plain TeX. */
const RAGGED_STRETCH = 2;
/** What dividing a word costs, and ending a line after a dash: `\hyphenpenalty` of plain TeX. */
const HYPHEN_PENALTY = 50;

/**
 * Whole paragraph: all lines of a stretch chosen together, justified or ragged. Within TeX's usual
 * tolerance if that can be, else in whatever way there is.
 */
export function breakWholeParagraph(
  breaks: readonly Break[],
  widths: LineWidths,
  measures: Measures,
  justified: boolean,
): FoundLine[] {
  const points = breakPoints(breaks, widths, justified);
  const chosen =
    optimumBreaks(points, measures, { ...PLAIN_RULES, final: false }) ??
    optimumBreaks(points, measures, { ...PLAIN_RULES, tolerance: 10_000, final: true }) ??
    [];
  let start: Place = { segment: 0, offset: 0 };
  return chosen.flatMap(({ at }) => {
    const end = breaks[at];
    if (!end) return [];
    const line = { start, end };
    start = end.next;
    return [line];
  });
}

function breakPoints(
  breaks: readonly Break[],
  widths: LineWidths,
  justified: boolean,
): BreakPoints {
  const line = (from: number, to: number): Flexible => {
    const start = breaks[from]?.next ?? { segment: 0, offset: 0 };
    const end = breaks[to];
    if (!end) return { natural: 0, stretch: 0, shrink: 0 };
    const spaces = widths.spaces(start, end);
    const stretch = justified ? spaces * SPACE_STRETCH : RAGGED_STRETCH;
    return {
      natural: widths.width(start, end),
      stretch: end.kind === 'end' ? Infinity : stretch,
      shrink: justified ? spaces * SPACE_SHRINK : 0,
    };
  };
  return {
    count: breaks.length,
    penalty: (at) => {
      const kind = breaks[at]?.kind;
      if (kind === 'end') return -10_000;
      return kind === 'space' ? 0 : HYPHEN_PENALTY;
    },
    flagged: (at) => breaks[at]?.kind === 'hyphen' || breaks[at]?.kind === 'dash',
    line,
  };
}
