import type { Lettering } from './outline.js';

/** Lines of a text in one size. */
export interface FittedLines {
  readonly size: number;
  readonly lines: readonly string[];
}

/** A place for a text. All lengths are in one unit. */
export interface Room {
  readonly width: number;
  readonly height: number;
  readonly lines: number;
  /** From the largest size to the smallest, in whole steps of `step`. */
  readonly largest: number;
  readonly smallest: number;
  readonly step: number;
  /** From line to line, in ems. */
  readonly leading: number;
}

/**
 * A text in the largest size in which it fits; one that fits in none is cut at its end, with an
 * ellipsis.
 */
export function fitLines(text: string, lettering: Lettering, room: Room): FittedLines {
  const words = lettering.drawable(text).split(' ').filter(Boolean);
  for (let size = room.largest; size > room.smallest; size -= room.step) {
    const lines = brokenAt(words, lettering, room.width / size);
    if (isFit(lines, size, lettering, room)) return { size, lines };
  }
  return cutTo(words.join(' '), lettering, room);
}

function cutTo(text: string, lettering: Lettering, room: Room): FittedLines {
  const size = room.smallest;
  const end = lettering.drawable('…');
  let kept = Array.from(text);
  let shown = text;
  for (;;) {
    const lines = brokenAt(shown.split(' '), lettering, room.width / size);
    if (kept.length === 0 || isFit(lines, size, lettering, room)) return { size, lines };
    kept = kept.slice(0, -1);
    shown = `${kept.join('').trimEnd()}${end}`;
  }
}

function isFit(
  lines: readonly string[],
  size: number,
  lettering: Lettering,
  { width, height, lines: most, leading }: Room,
): boolean {
  const isLow = lines.length <= most && lines.length * leading * size <= height;
  return isLow && lines.every((line) => lettering.width(line) * size <= width);
}

/** Words in lines, each as full as it can be. */
function brokenAt(words: readonly string[], lettering: Lettering, width: number): string[] {
  const lines: string[] = [];
  for (const word of words) {
    const line = lines.at(-1);
    const longer = line === undefined ? word : `${line} ${word}`;
    if (line !== undefined && lettering.width(longer) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
