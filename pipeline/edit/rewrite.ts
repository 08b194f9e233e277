import type { Copy, Run, SourceFile } from '../model/index.js';
import { aligned, type Hunk, type Stretch } from './align.js';
import { PLAIN, written, type Face, type Faced } from './markup.js';
import { facedRuns, paragraphsAnew } from './paragraphs.js';
import { splice, type Change } from './splice.js';
import { plainBio, unitsOf, type Unit } from './units.js';

/**
 * Sources in which a bio may have its new words, the one with the fewest bytes changed first, or the
 * held words that are not as they were. Whoever uses one must read it again, since what is markup
 * depends on what stands around it.
 */
export type Rewriting = { readonly sources: readonly SourceFile[] } | { readonly lost: string };

/**
 * Puts new words into a bio. Each word keeps its face, what is added takes the face of what it stands
 * in for or comes after, and held words stay as they are.
 * @param text the bio as it is typed: paragraphs parted by an empty line, hard breaks by a line end.
 */
export function rewriteBio(source: SourceFile, bio: Copy, text: string): Rewriting {
  const found = aligned(plainBio(bio), text, heldStretches(bio));
  if ('lost' in found) return found;
  const { hunks } = found;
  if (hunks.length === 0) return { sources: [source] };
  const lineEnd = /\r\n|\n|\r/.exec(source.text)?.[0] ?? '\n';
  const fine = fineChanges(source, bio, hunks, lineEnd);
  const anew = paragraphsAnew(source, bio, facedAnew(bio, text, hunks), lineEnd);
  return {
    sources: [
      ...(fine === null ? [] : [splice(source, fine)]),
      ...(anew === null ? [] : [splice(source, [anew])]),
    ],
  };
}

/** Stretches of held words in the plain bio; neighbouring runs under one hold are one. */
function heldStretches(bio: Copy): readonly Stretch[] {
  const stretches: { from: number; to: number; hold: string }[] = [];
  let at = 0;
  for (const [index, paragraph] of bio.entries()) {
    if (index > 0) at += 2;
    for (const { text, hold } of paragraph) {
      const last = stretches.at(-1);
      if (hold !== null) {
        if (last?.to === at && last.hold === hold) last.to += text.length;
        else stretches.push({ from: at, to: at + text.length, hold });
      }
      at += text.length;
    }
  }
  return stretches;
}

/** Changes of single words; null where the place of one cannot be told. */
function fineChanges(
  source: SourceFile,
  bio: Copy,
  hunks: readonly Hunk[],
  lineEnd: string,
): readonly Change[] | null {
  const units = unitsOf(source, bio);
  if (units === null) return null;
  const changes: Change[] = [];
  for (const hunk of hunks) {
    const own = hunk.from === hunk.to ? insertion(units, hunk) : replacement(units, hunk);
    if (own === null) return null;
    for (const [at, { from, to }] of own.entries()) {
      const startsLine = /(?:^|[\r\n])[ \t]*$/.test(source.text.slice(0, from));
      const text = at === 0 ? written(hunk.words, startsLine, lineEnd) : '';
      changes.push({ spot: { source, from, to }, text });
    }
  }
  return changes;
}

/** Within the words before it, or those after it: never where it may fall into held words. */
function insertion(units: readonly Unit[], { from }: Stretch): readonly Stretch[] | null {
  const [before, after] = [units[from - 1], units[from]];
  if (before?.run?.hold === null) return [{ from: before.to, to: before.to }];
  if (after?.run?.hold === null) return [{ from: after.from, to: after.from }];
  return null;
}

/** The stretches of the source that stand for units, one for each run. */
function replacement(units: readonly Unit[], { from, to }: Stretch): readonly Stretch[] {
  const stretches: { from: number; to: number; run: Run | null }[] = [];
  for (const unit of units.slice(from, to)) {
    const last = stretches.at(-1);
    if (last?.run === unit.run && last.to === unit.from) last.to = unit.to;
    else stretches.push({ from: unit.from, to: unit.to, run: unit.run });
  }
  return stretches;
}

/** The new words with their faces, by paragraph. */
function facedAnew(bio: Copy, text: string, hunks: readonly Hunk[]): readonly (readonly Faced[])[] {
  const old = bio.flatMap((paragraph, index) => [
    ...(index === 0 ? [] : [PARTING, PARTING]),
    ...facedRuns(paragraph),
  ]);
  const units: Faced[] = [];
  let was = 0;
  for (const hunk of hunks) {
    units.push(...old.slice(was, hunk.from));
    const face = faceFor(old, hunk);
    units.push(...hunk.words.split('').map((sign) => ({ sign, face })));
    was = hunk.to;
  }
  units.push(...old.slice(was));
  let from = 0;
  return text.split('\n\n').map((paragraph) => {
    const own = units.slice(from, from + paragraph.length);
    from += paragraph.length + 2;
    return own;
  });
}

const PARTING: Faced = { sign: '\n', face: PLAIN };

/** Of what it stands in for, else of what it comes after; never that of held words. */
function faceFor(old: readonly Faced[], { from, to }: Stretch): Face {
  const near = from < to ? old[from] : (old[from - 1] ?? old[from]);
  return near === undefined ? PLAIN : { ...near.face, hold: null };
}
