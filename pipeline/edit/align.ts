import { diffChars, diffWordsWithSpace } from 'diff';

/** A stretch of a text, in UTF-16 units. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Units of the old text from `from` to `to`, and the words that stand there now. */
export interface Hunk extends Stretch {
  /** Where the new words start in the new text. */
  readonly at: number;
  readonly words: string;
}

/** What differs between two texts, or the words that had to stay and are not there as they were. */
export type Alignment = { readonly hunks: readonly Hunk[] } | { readonly lost: string };

/**
 * What differs between two texts, word by word, where some stretches of the old one must come out
 * as they were. A stretch whose words cannot be told from others like them is lost, and so is one whose
 * words stand somewhere else besides.
 */
export function aligned(old: string, text: string, kept: readonly Stretch[]): Alignment {
  const places = placesOf(old, text);
  const hunks: Hunk[] = [];
  let [oldFrom, newFrom] = [0, 0];
  for (const stretch of kept) {
    const words = old.slice(stretch.from, stretch.to);
    const at = placeOf(words, stretch, text, places, newFrom);
    if (at === null || timesIn(text, words) > timesIn(old, words)) return { lost: words };
    hunks.push(
      ...hunksOf(old.slice(oldFrom, stretch.from), oldFrom, text.slice(newFrom, at), newFrom),
    );
    [oldFrom, newFrom] = [stretch.to, at + words.length];
  }
  hunks.push(...hunksOf(old.slice(oldFrom), oldFrom, text.slice(newFrom), newFrom));
  return { hunks };
}

function timesIn(text: string, words: string): number {
  return text.split(words).length - 1;
}

/** Where a stretch stands in the new text; null if it does not, or nobody can tell where. */
function placeOf(
  words: string,
  { from }: Stretch,
  text: string,
  places: readonly number[],
  after: number,
): number | null {
  const start = places.indexOf(from);
  const isWhole =
    words !== '' && words.split('').every((_, step) => places[start + step] === from + step);
  if (start >= after && isWhole) return start;
  const first = text.indexOf(words, after);
  return first >= 0 && text.indexOf(words, first + 1) < 0 ? first : null;
}

/** For each unit of the new text the unit of the old one that it is; -1 for what is added. */
function placesOf(old: string, text: string): readonly number[] {
  let at = 0;
  return diffChars(old, text).flatMap(({ added, removed, value }) => {
    const units = value.split('');
    if (added) return units.map(() => -1);
    const from = at;
    at += value.length;
    return removed ? [] : units.map((_, step) => from + step);
  });
}

function hunksOf(old: string, oldFrom: number, text: string, newFrom: number): readonly Hunk[] {
  const hunks: { from: number; to: number; at: number; words: string }[] = [];
  let [was, now] = [oldFrom, newFrom];
  for (const { added, removed, value } of diffWordsWithSpace(old, text)) {
    if (added || removed) {
      const last = hunks.at(-1);
      const isNext = last?.to === was && last.at + last.words.length === now;
      const hunk = isNext ? last : { from: was, to: was, at: now, words: '' };
      if (!isNext) hunks.push(hunk);
      if (added) hunk.words += value;
      else hunk.to += value.length;
    }
    if (!added) was += value.length;
    if (!removed) now += value.length;
  }
  return hunks;
}
