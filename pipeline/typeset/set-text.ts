import type { Zone } from '../../schema/index.js';
import type { DivideWord } from './break-list.js';
import { cuttable, leastPassing } from './cut.js';
import { divider } from './divide.js';
import { flow, type FlowedLine } from './flow.js';
import { missingGlyphs } from './missing.js';
import { prepare, type Prepared } from './paragraphs.js';
import { placeLine } from './place.js';
import { frameOf, holds, roomFrom, type Frame } from './slots.js';
import type { Faces, Fit, SetOptions, Setting, TextRun } from './types.js';
import { sticksOut } from './wide.js';

/** Points between the sizes that are tried where a zone may shrink its text. */
const STEP = 0.1;

/** A text at one size: where its lines go, before they are drawn. */
interface Trial {
  readonly size: number;
  readonly frame: Frame;
  readonly lines: readonly FlowedLine[];
  readonly overset: number;
  readonly wide: number;
}

/**
 * Sets a text in a zone. The first baseline lies below the top of the zone by the ascent of the
 * zone's face (`ascender` of its `hhea` table), the last line is inside if its descenders are, and
 * every line moves down by the leading. A zone that may shrink its text is tried in steps of 0.1 pt,
 * leading in proportion, and only as far as is needed; where nothing fits, the smallest stands.
 */
export function setText(
  paragraphs: readonly (readonly TextRun[])[],
  zone: Zone,
  faces: Faces,
  options: SetOptions = {},
): Setting {
  const { fit, placed, frame } = flowText(paragraphs, zone, faces, options);
  return { ...fit, lines: placed.map((line) => placeLine(line, zone, frame, fit.size)) };
}

/** As `setText`, for a caller that asks only how a text fits: no line is drawn. */
export function fitText(...text: Parameters<typeof setText>): Fit {
  return flowText(...text).fit;
}

/** A text in its lines, and how it fits. */
interface Flowed {
  readonly fit: Fit;
  readonly placed: readonly FlowedLine[];
  readonly frame: Frame;
}

function flowText(
  paragraphs: readonly (readonly TextRun[])[],
  zone: Zone,
  faces: Faces,
  options: SetOptions = {},
): Flowed {
  const divide = zone.hyphens === 'auto' ? divider(options.undivided ?? []) : null;
  const prepared = prepare(paragraphs, zone, faces, divide);
  const trial = firstThatFits(prepared, zone, faces);
  const { size, frame, overset, wide } = trial;
  const placed = standVertically(prepared, zone, trial);
  const free = overset > 0 ? 0 : freeLines(trial);
  const fit = {
    size,
    leading: frame.leading,
    capacity: roomFrom(frame, 0),
    lineCount: placed.length,
    overset,
    free,
    tight: fits(trial) && free === 0 && placed.length > 0,
    wide,
    fits: fits(trial),
    wordsToCut: fits(trial) ? 0 : wordsToCut(paragraphs, zone, faces, divide, size),
    shrunk: size < zone.size,
    missing: missingGlyphs(prepared, placed),
  };
  return { fit, placed, frame };
}

function fits(trial: Trial): boolean {
  return trial.overset === 0 && trial.wide === 0;
}

/** The sizes that a zone allows, from its own down to its floor. */
function* sizesOf(zone: Zone): Generator<number> {
  const floor = Math.min(zone.shrink?.to ?? zone.size, zone.size);
  for (let step = 0; ; step += 1) {
    const size = Math.round((zone.size - step * STEP) * 1e6) / 1e6;
    if (size <= floor) break;
    yield size;
  }
  yield floor;
}

function firstThatFits(prepared: readonly Prepared[], zone: Zone, faces: Faces): Trial {
  let trial: Trial | null = null;
  for (const size of sizesOf(zone)) {
    trial = attempt(prepared, zone, faces, size);
    if (fits(trial)) return trial;
  }
  return trial ?? attempt(prepared, zone, faces, zone.size);
}

/** `pack` sets line by line with every space as narrow as it may be: no way takes fewer lines. */
function attempt(
  prepared: readonly Prepared[],
  zone: Zone,
  faces: Faces,
  size: number,
  pack = false,
): Trial {
  const leading = (zone.leading * size) / zone.size;
  const frame = frameOf(zone, size, leading, faces[zone.face ?? 'regular']);
  const lines = flow(prepared, zone, frame, size, 0, pack);
  return {
    size,
    frame,
    lines,
    overset: lines.filter((line) => !holds(frame, line.slot.y)).length,
    wide: lines.filter((line) => sticksOut(line, zone, size)).length,
  };
}

function freeLines({ frame, lines }: Trial): number {
  const last = lines.at(-1);
  return roomFrom(frame, last ? last.slot.y + frame.leading : 0);
}

/** Moves the lines of a text that is not at the top; beside what is avoided they are broken anew. */
function standVertically(
  prepared: readonly Prepared[],
  zone: Zone,
  { frame, lines, overset, size }: Trial,
): readonly FlowedLine[] {
  const last = lines.at(-1);
  const vertical = zone.vertical ?? 'top';
  if (vertical === 'top' || overset > 0 || !last) return lines;
  const room = frame.height - last.slot.y - frame.depth;
  let shift = Math.max(0, vertical === 'middle' ? room / 2 : room);
  if (frame.avoid.length === 0) {
    return lines.map((line) => ({ ...line, slot: { ...line.slot, y: line.slot.y + shift } }));
  }
  for (; shift > 0; shift -= frame.leading / 4) {
    const moved = flow(prepared, zone, frame, size, shift, false);
    const inside = moved.every((line) => holds(frame, line.slot.y) && !sticksOut(line, zone, size));
    if (inside) return moved;
  }
  return lines;
}

/** The fewest last words whose loss makes the text fit at this size; all of them if nothing does. */
function wordsToCut(
  paragraphs: readonly (readonly TextRun[])[],
  zone: Zone,
  faces: Faces,
  divide: DivideWord | null,
  size: number,
): number {
  const text = cuttable(paragraphs);
  const fitsWithout = (count: number, pack: boolean): boolean =>
    fits(attempt(prepare(text.without(count), zone, faces, divide), zone, faces, size, pack));
  if (zone.breaks !== 'whole-paragraph') {
    return leastPassing(text.words, (count) => fitsWithout(count, false));
  }
  // Chosen together, lines can be more with fewer words: go up one by one from what may be possible.
  let count = leastPassing(text.words, (words) => fitsWithout(words, true));
  while (count < text.words && !fitsWithout(count, false)) count += 1;
  return count;
}
