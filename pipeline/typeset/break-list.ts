import type { FindBreaks } from './breaks.js';
import type { Place, Stretch } from './stretch.js';

/** Why a line may end here; a `hyphen` shows one that the text has not, a `dash` ends in its own. */
export type BreakKind = 'space' | 'dash' | 'hyphen' | 'end';

/** A place at which a line may end. */
export interface Break extends Place {
  readonly kind: BreakKind;
  /** Where the next line starts. */
  readonly next: Place;
}

const SOFT_HYPHEN = '\u00ad';

/** Places in a word at which it may be divided besides its own: offsets, in order. */
export type DivideWord = (text: string) => readonly number[];

/** All places at which a line of a stretch may end, in order; the last is its end. */
export function breakList(stretch: Stretch, find: FindBreaks, divide: DivideWord | null): Break[] {
  const { segments } = stretch;
  const breaks: Break[] = [];
  const length = stretch.text.length;
  let index = 0;
  for (const offset of find(stretch.text)) {
    // The last segment that starts before the offset: spaces belong to the segment before them.
    while ((segments[index + 1]?.from ?? length) < offset) index += 1;
    const segment = segments[index];
    if (!segment || offset >= length) break;
    breaks.push(breakAt(stretch, index, Math.min(offset - segment.from, segment.text.length)));
  }
  const last = segments.at(-1);
  const end = { segment: Math.max(0, segments.length - 1), offset: last?.text.length ?? 0 };
  breaks.push({ ...end, kind: 'end', next: { segment: segments.length, offset: 0 } });
  return divide ? withDivisions(stretch, breaks, divide) : breaks;
}

function breakAt(stretch: Stretch, index: number, offset: number): Break {
  const segment = stretch.segments[index];
  const atEnd = offset === segment?.text.length;
  const next = atEnd ? { segment: index + 1, offset: 0 } : { segment: index, offset };
  if (atEnd && segment.space !== '') return { segment: index, offset, kind: 'space', next };
  const kind = segment?.text[offset - 1] === SOFT_HYPHEN ? 'hyphen' : 'dash';
  return { segment: index, offset, kind, next };
}

function withDivisions(stretch: Stretch, breaks: readonly Break[], divide: DivideWord): Break[] {
  const divisions = stretch.segments.flatMap((segment, index) =>
    divide(segment.text).map((offset): Break => {
      const place = { segment: index, offset };
      return { ...place, kind: 'hyphen', next: place };
    }),
  );
  if (divisions.length === 0) return [...breaks];
  return [...breaks, ...divisions].sort((a, b) => a.segment - b.segment || a.offset - b.offset);
}
