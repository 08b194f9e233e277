import { diffWordsWithSpace } from 'diff';

/** A stretch of the base, in UTF-16 units, and the words that somebody wrote there instead. */
interface Hunk {
  readonly from: number;
  readonly to: number;
  readonly words: string;
}

/**
 * A text in which two people's changes of one base stand together; null where both changed the same
 * words, or words that touch: then a person decides.
 */
export function merged(base: string, yours: string, theirs: string): string | null {
  if (yours === theirs || theirs === base) return yours;
  if (yours === base) return theirs;
  const [mine, others] = [hunksOf(base, yours), hunksOf(base, theirs)];
  const all = [...mine, ...others].sort((a, b) => a.from - b.from || a.to - b.to);
  let text = '';
  let done = -1;
  for (const [at, hunk] of all.entries()) {
    if (at > 0 && hunk.from <= done) {
      const before = all[at - 1];
      const isSame =
        before?.from === hunk.from && before.to === hunk.to && before.words === hunk.words;
      if (!isSame) return null;
      continue;
    }
    text += base.slice(Math.max(done, 0), hunk.from) + hunk.words;
    done = hunk.to;
  }
  return text + base.slice(Math.max(done, 0));
}

function hunksOf(base: string, text: string): readonly Hunk[] {
  const hunks: { from: number; to: number; words: string }[] = [];
  let at = 0;
  for (const { added, removed, value } of diffWordsWithSpace(base, text)) {
    if (added || removed) {
      const last = hunks.at(-1);
      const hunk = last?.to === at ? last : { from: at, to: at, words: '' };
      if (hunk !== last) hunks.push(hunk);
      if (added) hunk.words += value;
      else hunk.to += value.length;
    }
    if (!added) at += value.length;
  }
  return hunks;
}
