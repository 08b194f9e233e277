import type { TextPrint } from './shingles.js';

/** How a text is like an earlier one: by its words, its opening, its last sentence, or its shape. */
export interface Likeness {
  readonly kind: 'words' | 'opening' | 'ending' | 'shape';
  /** Positions in the list of texts; the earlier is the first. */
  readonly earlier: number;
  readonly later: number;
  /** Of the runs of the shorter text, from 0 to 1; 1 for an opening or ending. */
  readonly share: number;
}

/** A text, and the group within which openings and endings are to differ. */
export interface Printed {
  readonly print: TextPrint;
  readonly group: string;
}

/**
 * Texts below this many words have too few runs to judge by. `tests/checks/alike.test.ts` holds what
 * these shares find and what they leave alone.
 */
const LEAST_WORDS = 12;
const WORDS_SHARE = 0.25;
const SHAPE_SHARE = 0.5;
/** So few runs in common may be a turn of phrase. */
const LEAST_SHARED = 5;
/** Texts by which a run is known; a run that more have in common is a formula of the set. */
const MOST_BEARERS = 4;

/** The first likeness of each text to an earlier one, in one pass: no text is compared with all. */
export function likenesses(
  texts: readonly Printed[],
  areRelated: (earlier: number, later: number) => boolean,
): readonly Likeness[] {
  const runs = new Bearers();
  const shapes = new Bearers();
  const openings = new Map<string, number>();
  const endings = new Map<string, number>();
  return texts.flatMap(({ print, group }, later): Likeness[] => {
    if (print.words < LEAST_WORDS) return [];
    const like =
      nearest('words', print.runs, runs, WORDS_SHARE) ??
      same('opening', `${group} ${print.opening}`, openings) ??
      (print.ending === '' ? null : same('ending', `${group} ${print.ending}`, endings)) ??
      nearest('shape', print.shape, shapes, SHAPE_SHARE);
    runs.add(print.runs, later);
    shapes.add(print.shape, later);
    addFirst(openings, `${group} ${print.opening}`, later);
    if (print.ending !== '') addFirst(endings, `${group} ${print.ending}`, later);
    return like ? [like] : [];

    function same(
      kind: 'opening' | 'ending',
      key: string,
      of: Map<string, number>,
    ): Likeness | null {
      const earlier = of.get(key);
      if (earlier === undefined || areRelated(earlier, later)) return null;
      return { kind, earlier, later, share: 1 };
    }

    function nearest(
      kind: 'words' | 'shape',
      own: readonly number[],
      of: Bearers,
      least: number,
    ): Likeness | null {
      const best = of.best(own, (earlier) => !areRelated(earlier, later));
      if (!best || best.shared < LEAST_SHARED) return null;
      const other = texts[best.text]?.print[kind === 'words' ? 'runs' : 'shape'].length ?? 0;
      const share = best.shared / Math.max(1, Math.min(own.length, other));
      return share < least ? null : { kind, earlier: best.text, later, share };
    }
  });
}

function addFirst(to: Map<string, number>, key: string, text: number): void {
  if (!to.has(key)) to.set(key, text);
}

/** Which texts have a run, by its hash. */
class Bearers {
  private readonly byRun = new Map<number, number | number[]>();

  add(runs: readonly number[], text: number): void {
    for (const run of runs) {
      const known = this.byRun.get(run);
      if (known === undefined) this.byRun.set(run, text);
      else if (typeof known === 'number') this.byRun.set(run, [known, text]);
      else if (known.length < MOST_BEARERS) known.push(text);
    }
  }

  /** The text that has most of these runs; of several, the first. */
  best(
    runs: readonly number[],
    counts: (text: number) => boolean,
  ): { readonly text: number; readonly shared: number } | null {
    const shared = new Map<number, number>();
    for (const run of runs) {
      const known = this.byRun.get(run);
      if (known === undefined) continue;
      for (const text of typeof known === 'number' ? [known] : known) {
        shared.set(text, (shared.get(text) ?? 0) + 1);
      }
    }
    let most = 0;
    let nearest = -1;
    for (const [text, count] of shared) {
      const isNearer = count > most || (count === most && text < nearest);
      if (isNearer && counts(text)) [most, nearest] = [count, text];
    }
    return most === 0 ? null : { text: nearest, shared: most };
  }
}
