import { machineOf } from './machine.js';
import { fold, type Folded } from './fold.js';

/** Words with fewer characters than this are found only as whole words: "Ash" is not in "flash". */
const WHOLE_BELOW = 6;

/** Words to look for, whole. */
export interface Needle {
  readonly words: string;
  /** Capitals count: the words are common ones too. */
  readonly exact: boolean;
}

/** A needle that a text holds: places of its first and last letter. */
export interface WordsFound {
  /** Which of the needles. */
  readonly needle: number;
  readonly from: number;
  readonly to: number;
}

/** Finds all needles in a text at once. */
export type WordSearch = (folded: Folded, text: string) => readonly WordsFound[];

interface Prepared {
  readonly folded: Folded;
  readonly whole: boolean;
  /** Places of the letters that must be capitals. */
  readonly capitals: readonly number[];
}

/**
 * A search for words, each whole, over letters alone, so that it does not matter what stands between
 * two words. Nothing may stand within a word; two words may be joined (a tag, an address), but
 * not in needles of fewer than WHOLE_BELOW characters.
 */
export function searchWords(needles: readonly Needle[]): WordSearch {
  const prepared = needles.map(prepare);
  const machine = machineOf(prepared.map(({ folded }) => folded));
  return (folded, text) => {
    const found: WordsFound[] = [];
    const { units, length } = folded;
    const { classes, width, next, ends, shorter, stops } = machine;
    let state = 0;
    for (let at = 0; at < length; at += 1) {
      state = next[state * width + (classes[units[at] ?? 0] ?? 0)] ?? 0;
      if (stops[state] === 0) continue;
      for (let node = state; node > 0; node = shorter[node] ?? 0) {
        for (const needle of ends.get(node) ?? []) {
          const wanted = prepared[needle];
          if (!wanted) continue;
          const from = at - wanted.folded.length + 1;
          if (stands(wanted, folded, from, text)) found.push({ needle, from, to: at });
        }
      }
    }
    return found;
  };
}

function prepare({ words, exact }: Needle): Prepared {
  const folded = fold(words);
  let parts = 0;
  for (let at = 1; at < folded.length; at += 1) parts += folded.parted[at] ?? 0;
  const capitals: number[] = [];
  for (let at = 0; exact && at < folded.length; at += 1) {
    if (isCapital(words, folded, at)) capitals.push(at);
  }
  return { folded, whole: folded.length + parts < WHOLE_BELOW, capitals };
}

/** Whether letters that are alike also stand as words do. */
function stands(wanted: Prepared, text: Folded, from: number, words: string): boolean {
  const { folded, whole, capitals } = wanted;
  for (let at = 1; at < folded.length; at += 1) {
    const apart = text.parted[from + at] === 1;
    const mayBeApart = folded.parted[at] === 1;
    if (apart ? !mayBeApart : mayBeApart && whole) return false;
  }
  if (whole && !(text.parted[from] === 1 && endsWord(text, from + folded.length - 1, words))) {
    return false;
  }
  return capitals.every((at) => isCapital(words, text, from + at));
}

function endsWord(text: Folded, at: number, words: string): boolean {
  if (at + 1 >= text.length || text.parted[at + 1] === 1) return true;
  return /['‘’‛`´]/.test(words.charAt((text.at[at] ?? 0) + 1));
}

function isCapital(words: string, folded: Folded, at: number): boolean {
  return /\p{Lu}/u.test(words.charAt(folded.at[at] ?? 0));
}
