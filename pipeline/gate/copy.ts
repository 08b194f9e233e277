import { holdNamed, join, liftOf, type Copy, type Hold, type Run } from '../model/index.js';
import type { Lens } from './lens.js';
import type { ViewRun } from './view.js';

type Words = Exclude<ViewRun, { readonly held: true }>;

const MARK: ViewRun = { held: true };

/**
 * A bio as an audience may read it: held words of a placeholder become one mark, those of an absent
 * hold go without one. White space is folded where something went and everywhere else alike, so
 * that no seam shows; a hard break stands alone, as in the copy.
 */
export function cutCopy(copy: Copy, base: Hold, lens: Lens): readonly (readonly ViewRun[])[] {
  return copy
    .map((paragraph) => paragraph.flatMap((run) => cutRun(run, base, lens)))
    .map((runs) => mergeNeighbours(foldSpace(runs.flatMap(partSpace))))
    .filter((runs) => runs.length > 0);
}

function cutRun(run: Run, base: Hold, lens: Lens): ViewRun[] {
  const { text, italic, bold } = run;
  const own = run.hold === null ? null : join(base, holdNamed(lens.schedule, run.hold));
  const standing = own === null ? 'open' : lens.standing(own);
  if (standing === 'absent') return [];
  if (standing === 'placeholder') return [MARK];
  const opens = own === null || lens.kind === 'public' ? null : liftOf(lens.schedule, own);
  const hold = lens.kind === 'house' ? run.hold : null;
  return [{ text, italic, bold, hold, opens, level: lens.told(own ?? base) }];
}

/** Parts the white space at the ends of a run, and breaks anywhere in it, from its words. */
function partSpace(run: ViewRun): ViewRun[] {
  if ('held' in run) return [run];
  return run.text
    .split(/(^[ \t]+|[ \t]*\n[ \t\n]*|[ \t]+$)/)
    .filter((text) => text !== '')
    .map((text) => ({ ...run, text: text.replace(/[ \t]+/g, ' ') }));
}

function isSpace(run: ViewRun | undefined): run is Words {
  return run !== undefined && !('held' in run) && /^[ \t\n]+$/.test(run.text);
}

/** One space or one break where there were several, none at the ends of the paragraph. */
function foldSpace(pieces: readonly ViewRun[]): ViewRun[] {
  const folded: ViewRun[] = [];
  for (const piece of pieces) {
    const last = folded.at(-1);
    if (!isSpace(piece)) folded.push(piece);
    else if (isSpace(last)) folded.splice(-1, 1, oneSpace(last, piece));
    else if (last !== undefined) folded.push(oneSpace(piece, piece));
  }
  return isSpace(folded.at(-1)) ? folded.slice(0, -1) : folded;
}

/** A break wins over a space, and the plain face over any other. */
function oneSpace(a: Words, b: Words): Words {
  return {
    text: `${a.text}${b.text}`.includes('\n') ? '\n' : ' ',
    italic: a.italic && b.italic,
    bold: a.bold && b.bold,
    hold: a.hold === b.hold ? a.hold : null,
    opens: a.opens === b.opens ? a.opens : null,
    level: Math.min(a.level, b.level),
  };
}

/** Words of one face are one run, and marks side by side are one mark. */
function mergeNeighbours(runs: readonly ViewRun[]): ViewRun[] {
  const merged: ViewRun[] = [];
  for (const run of runs) {
    const last = merged.at(-1);
    if (last === undefined || !joins(last, run)) merged.push(run);
    else if (!('held' in last) && !('held' in run)) {
      merged.splice(-1, 1, { ...last, text: last.text + run.text });
    }
  }
  return merged;
}

function joins(a: ViewRun, b: ViewRun): boolean {
  if ('held' in a || 'held' in b) return 'held' in a && 'held' in b;
  if (a.text === '\n' || b.text === '\n') return false;
  const isSameFace = a.italic === b.italic && a.bold === b.bold;
  return isSameFace && a.hold === b.hold && a.opens === b.opens && a.level === b.level;
}
