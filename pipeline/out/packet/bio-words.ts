import { diffChars } from 'diff';

import type { PageRun } from './page-data.js';

/** A bio as it is typed: paragraphs parted by an empty line, hard breaks by a line break. */
export function plainBio(bio: readonly (readonly Pick<PageRun, 'text'>[])[]): string {
  return bio.map((runs) => runs.map(({ text }) => text).join('')).join('\n\n');
}

/** A text as it was typed, without what does not count: line ends as they are, no space around. */
export function tidied(typed: string): string {
  return typed
    .replace(/\r\n?/g, '\n')
    .split(/\n[ \t]*\n\s*/)
    .map((paragraph) =>
      paragraph
        .split('\n')
        .map((line) => line.trim())
        .join('\n')
        .trim(),
    )
    .filter((paragraph) => paragraph !== '')
    .join('\n\n');
}

/** A UTF-16 unit of a bio with what it is set in. */
type Unit = Omit<PageRun, 'text'>;

/** A bio that was typed anew, or the held words that are not as they were. */
export type Rewritten =
  { readonly bio: readonly (readonly PageRun[])[] } | { readonly lost: string };

/**
 * Lays new words over a bio: each keeps the face of what it stood in, and what is added takes the
 * face of the words before it. Held words must come out as they were.
 */
export function rewritten(bio: readonly (readonly PageRun[])[], text: string): Rewritten {
  const units = unitsOf(bio);
  const old = plainBio(bio);
  const places = placesOf(old, text);
  const held = heldRanges(units);
  const kept = new Set<number>();
  let after = 0;
  for (const { from, to } of held) {
    const words = old.slice(from, to);
    const aligned = alignedAt(places, from, to);
    const at = aligned !== null && aligned >= after ? aligned : text.indexOf(words, after);
    if (at < 0) return { lost: words };
    for (let step = 0; step < to - from; step += 1) {
      places[at + step] = from + step;
      kept.add(at + step);
    }
    after = at + words.length;
  }
  return { bio: runsOf(text, facesFor(places, units, kept)) };
}

/** For each unit of the new text the unit of the old one that it is; -1 for what is added. */
function placesOf(old: string, text: string): number[] {
  const places: number[] = [];
  let at = 0;
  for (const { added, removed, value } of diffChars(old, text)) {
    if (added) for (let unit = 0; unit < value.length; unit += 1) places.push(-1);
    else if (removed) at += value.length;
    else for (let unit = 0; unit < value.length; unit += 1) places.push(at++);
  }
  return places;
}

/** Where all units of a range stand one after another; null where they do not. */
function alignedAt(places: readonly number[], from: number, to: number): number | null {
  const start = places.indexOf(from);
  if (start < 0) return null;
  for (let step = 0; step < to - from; step += 1) {
    if (places[start + step] !== from + step) return null;
  }
  return start;
}

const PLAIN: Unit = { italic: false, bold: false, held: false };

function unitsOf(bio: readonly (readonly PageRun[])[]): readonly Unit[] {
  return bio.flatMap((runs, index) => [
    ...(index === 0 ? [] : [PLAIN, PLAIN]),
    ...runs.flatMap(({ text, italic, bold, held }) =>
      Array.from({ length: text.length }, () => ({ italic, bold, held })),
    ),
  ]);
}

function heldRanges(units: readonly Unit[]): readonly { from: number; to: number }[] {
  const ranges: { from: number; to: number }[] = [];
  units.forEach(({ held }, at) => {
    const last = ranges.at(-1);
    if (!held) return;
    if (last?.to === at) last.to = at + 1;
    else ranges.push({ from: at, to: at + 1 });
  });
  return ranges;
}

function facesFor(
  places: readonly number[],
  units: readonly Unit[],
  kept: ReadonlySet<number>,
): readonly Unit[] {
  let before = places.find((place) => place >= 0) ?? -1;
  return places.map((place, at) => {
    if (place >= 0) before = place;
    return { ...(units[before] ?? PLAIN), held: kept.has(at) };
  });
}

function runsOf(text: string, faces: readonly Unit[]): readonly (readonly PageRun[])[] {
  let from = 0;
  return text.split('\n\n').map((paragraph) => {
    const runs = runsWithin(paragraph, faces.slice(from, from + paragraph.length));
    from += paragraph.length + 2;
    return runs;
  });
}

function runsWithin(paragraph: string, faces: readonly Unit[]): readonly PageRun[] {
  const runs: { text: string; italic: boolean; bold: boolean; held: boolean }[] = [];
  Array.from({ length: paragraph.length }, (_, at) => {
    const unit = paragraph[at] ?? '';
    const face = faces[at] ?? PLAIN;
    const last = runs.at(-1);
    if (unit === '\n') runs.push({ ...PLAIN, text: unit });
    else if (last && last.text !== '\n' && isSame(last, face)) last.text += unit;
    else runs.push({ ...face, text: unit });
  });
  return runs;
}

function isSame(one: Unit, other: Unit): boolean {
  return one.italic === other.italic && one.bold === other.bold && one.held === other.held;
}
