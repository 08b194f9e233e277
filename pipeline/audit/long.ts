import { letters, RUN, searchRuns, type SharedRun } from './fingerprint.js';
import type { HeldWords } from './held.js';

/**
 * Letters in a row of a run that must be in nothing open. A shared phrase that is open may go on for
 * a letter or two in both texts by chance.
 */
const TELLING = 8;

/** Whether a text is long enough to be found by its fingerprints. */
export function isLong(words: string): boolean {
  return letters(words).length >= RUN;
}

/**
 * A search for long held texts: which of them share a run of at least RUN letters with a text, of
 * which TELLING in a row are not part of such a run in open text.
 */
export function searchLong(
  held: readonly HeldWords[],
  open: readonly string[],
): (text: string) => readonly HeldWords[] {
  const search = searchRuns(held.map(({ words }) => letters(words)));
  const openRuns = open.flatMap((text) => search(letters(text)));
  return (text) => {
    const telling = search(letters(text)).filter((run) => isTelling(run, openRuns));
    return [...new Set(telling.map((run) => run.text))].flatMap((index) => held[index] ?? []);
  };
}

function isTelling(run: SharedRun, openRuns: readonly SharedRun[]): boolean {
  const open = openRuns
    .filter(({ text, from, to }) => text === run.text && from < run.to && to > run.from)
    .sort((one, other) => one.from - other.from);
  let told = run.from;
  for (const { from, to } of open) {
    if (from - told >= TELLING) return true;
    told = Math.max(told, to);
  }
  return run.to - told >= TELLING;
}
