import type { Zone } from '../../schema/index.js';
import { breakList, type Break, type DivideWord } from './break-list.js';
import { unicodeBreaks } from './breaks.js';
import { LineWidths } from './line-width.js';
import { stretchesOf } from './spans.js';
import { measureStretch, type Stretch } from './stretch.js';
import type { Faces, TextRun } from './types.js';

/** A stretch with all that does not depend on its size. */
export interface PreparedStretch {
  readonly stretch: Stretch;
  readonly widths: LineWidths;
  readonly breaks: readonly Break[];
  /** Without the breaks that would leave one word on the last line; null where there are none. */
  readonly withoutWidow: readonly Break[] | null;
}

/** A paragraph: the stretches between its hard breaks. */
export type Prepared = readonly PreparedStretch[];

/** Measures paragraphs and finds their breaks; a paragraph without words is left out. */
export function prepare(
  paragraphs: readonly (readonly TextRun[])[],
  zone: Zone,
  faces: Faces,
  divide: DivideWord | null,
): readonly Prepared[] {
  const tracking = (zone.tracking ?? 0) / 1000;
  return paragraphs
    .map((paragraph) => stretchesOf(paragraph, zone.face ?? 'regular', faces))
    .filter((stretches) => stretches.some((spans) => spans.length > 0))
    .map((stretches) =>
      stretches.map((spans, index) => {
        const stretch = measureStretch(spans, tracking);
        const breaks = breakList(stretch, unicodeBreaks, divide);
        const last = index === stretches.length - 1;
        const withoutWidow = last && zone.widows === 'avoid' ? bindLastWords(breaks) : null;
        return { stretch, widths: new LineWidths(stretch), breaks, withoutWidow };
      }),
    );
}

/** Drops the last break at a space and all after it, so that the last two words stay together. */
function bindLastWords(breaks: readonly Break[]): readonly Break[] | null {
  const last = breaks.findLastIndex((each) => each.kind === 'space');
  return last < 0 ? null : [...breaks.slice(0, last), ...breaks.slice(-1)];
}
