import type { TextRun } from './types.js';

type Paragraphs = readonly (readonly TextRun[])[];

/** Where a word starts. */
interface WordStart {
  readonly paragraph: number;
  readonly run: number;
  readonly offset: number;
}

/** A text from which last words can be taken. */
export interface Cuttable {
  readonly words: number;
  /** The text without its last `count` words. */
  without(count: number): Paragraphs;
}

/** Finds the words: what stands between spaces, over the borders of runs, and holds a letter or digit. */
export function cuttable(paragraphs: Paragraphs): Cuttable {
  const starts = paragraphs.flatMap(wordStarts);
  return {
    words: starts.length,
    without: (count) => {
      const start = starts[starts.length - count];
      return start ? before(paragraphs, start) : paragraphs;
    },
  };
}

function wordStarts(runs: readonly TextRun[], paragraph: number): readonly WordStart[] {
  const starts: WordStart[] = [];
  let open: WordStart | null = null;
  let counted = false;
  runs.forEach(({ text }, run) => {
    let offset = 0;
    for (const character of text) {
      if (/\s/u.test(character)) open = null;
      else {
        if (!open) [open, counted] = [{ paragraph, run, offset }, false];
        if (!counted && /[\p{L}\p{N}]/u.test(character)) {
          starts.push(open);
          counted = true;
        }
      }
      offset += character.length;
    }
  });
  return starts;
}

function before(paragraphs: Paragraphs, { paragraph, run, offset }: WordStart): Paragraphs {
  const runs = paragraphs[paragraph] ?? [];
  const cut = runs[run];
  const kept = runs.slice(0, run);
  const last = cut && offset > 0 ? [...kept, { ...cut, text: cut.text.slice(0, offset) }] : kept;
  return [...paragraphs.slice(0, paragraph), last];
}

/** The smallest number from 1 to `most` that passes, for a test that passes for all greater ones. */
export function leastPassing(most: number, passes: (count: number) => boolean): number {
  let low = 1;
  let high = most;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (passes(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}
