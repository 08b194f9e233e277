import { titleParts } from '../wording/index.js';
import { type Item, leadingOf, paragraph } from './items.js';
import type { Part } from './pen.js';
import type { Band } from './pour.js';
import { countLines, span, type Span } from './set-lines.js';
import type { Sheet } from './sheet.js';

/** A title is set as large as takes two lines, in points; the last is the least. */
const TITLE_SIZES = [24, 21, 18, 15, 12] as const;
const TITLE_LINES = 2;
const WATER_DEEP = 7;

/** What kind of sheet it is, the title of the set, a line of facts, and the waterline. */
export function headBand(sheet: Sheet, width: number): Band {
  const { faces, kind, facts } = sheet;
  const items = [
    ...words({ tag: 'P' }, [span(kind, faces.labels.medium, 10, 70)], 0),
    ...words({ tag: 'H1' }, titleSpans(sheet, width), 1),
    ...words({ tag: 'P' }, [span(facts, faces.labels.regular, 10, 100)], 2),
    waterline(width),
  ];
  return { columns: 1, gap: 0, before: 0, items };

  function words(part: Part, spans: readonly Span[], before: number): readonly Item[] {
    const leading = leadingOf(spans.at(-1)?.size ?? 0);
    return paragraph({ part, spans, width, leading, before, keep: true });
  }
}

function titleSpans({ set, data, faces }: Sheet, width: number): readonly Span[] {
  const [opening, rest] = titleParts(set, data);
  const spansOf = (size: number): readonly Span[] => [
    span(opening, faces.text.regular, size, 70),
    span(rest, faces.text.bold, size, 100),
  ];
  const size = TITLE_SIZES.find((each) => countLines(spansOf(each), width) <= TITLE_LINES);
  return spansOf(size ?? 12);
}

function waterline(width: number): Item {
  return {
    before: 6,
    height: WATER_DEEP,
    keep: false,
    draw: (pen, { x, y }) => {
      pen.furniture('Layout', () => {
        pen.wave({ x, y: y + WATER_DEEP / 2 }, width, 0.7, 70);
      });
    },
  };
}
