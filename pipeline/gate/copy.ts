import { holdNamed, join, type Copy, type Hold, type Run } from '../model/index.js';
import type { Lens } from './lens.js';
import type { ViewRun } from './view.js';

/** A bio as an audience may read it, and whether anything was taken out of it. */
export interface CutCopy {
  readonly paragraphs: readonly (readonly ViewRun[])[];
  readonly cut: boolean;
}

const MARK: ViewRun = { held: true };

/**
 * Cuts a bio: held words of a placeholder become one mark, those of an absent hold go without one.
 * White space is folded where something went and everywhere else alike, so that no seam shows.
 */
export function cutCopy(copy: Copy, base: Hold, lens: Lens): CutCopy {
  let cut = false;
  const paragraphs = copy.map((paragraph) => {
    const runs = paragraph.flatMap((run): ViewRun[] => {
      const standing = standingOfRun(run, base, lens);
      if (standing !== 'open') cut = true;
      if (standing === 'absent') return [];
      return standing === 'placeholder' ? [MARK] : [wordsOf(run, lens)];
    });
    return foldSpace(mergeNeighbours(runs));
  });
  return { paragraphs: paragraphs.filter((runs) => runs.length > 0), cut };
}

function standingOfRun(run: Run, base: Hold, lens: Lens): ReturnType<Lens['standing']> {
  if (run.hold === null) return 'open';
  return lens.standing(join(base, holdNamed(lens.schedule, run.hold)));
}

function wordsOf(run: Run, lens: Lens): ViewRun {
  const hold = lens.kind === 'house' ? run.hold : null;
  return { text: run.text, italic: run.italic, bold: run.bold, hold };
}

/** Words of one face are one run, and marks side by side are one mark. */
function mergeNeighbours(runs: readonly ViewRun[]): ViewRun[] {
  return runs.reduce<ViewRun[]>((merged, run) => {
    const last = merged.at(-1);
    if (last === undefined || !sameFace(last, run)) return [...merged, run];
    if ('held' in last || 'held' in run) return merged;
    return [...merged.slice(0, -1), { ...last, text: last.text + run.text }];
  }, []);
}

function sameFace(a: ViewRun, b: ViewRun): boolean {
  if ('held' in a || 'held' in b) return 'held' in a && 'held' in b;
  return a.italic === b.italic && a.bold === b.bold && a.hold === b.hold;
}

/** One space or one break where there were several, none at the ends of the paragraph. */
function foldSpace(runs: readonly ViewRun[]): ViewRun[] {
  const folded = runs.reduce<ViewRun[]>((done, run) => {
    if ('held' in run) return [...done, run];
    const last = done.at(-1);
    const open = last === undefined || (!('held' in last) && /[ \n]$/.test(last.text));
    const inner = run.text.replace(/[ \t\n]+/g, (space) => (space.includes('\n') ? '\n' : ' '));
    const text = open ? inner.replace(/^[ \n]/, '') : inner;
    return text === '' ? done : [...done, { ...run, text }];
  }, []);
  const end = folded.at(-1);
  if (end === undefined || 'held' in end) return folded;
  const text = end.text.replace(/[ \n]$/, '');
  return text === '' ? foldSpace(folded.slice(0, -1)) : [...folded.slice(0, -1), { ...end, text }];
}
