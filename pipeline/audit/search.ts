import { fold, letters, type Folded } from './fold.js';
import { marksOf, RUN, searchRuns, type RunSearch, type SharedRun } from './fingerprint.js';
import type { Target } from './target.js';
import { searchWords, type Needle } from './words.js';

/** Something held that a text holds. */
export interface Hit {
  readonly target: Target;
  /** Where in the text it begins. */
  readonly at: number;
}

/** What of the held words a text holds. */
export type Search = (text: string) => readonly Hit[];

/**
 * A search for held words: short ones whole, of long ones every run of at least RUN letters. What open
 * texts say in their own right is left out, but for what is looked for always.
 */
export function searchFor(targets: readonly Target[], open: readonly string[]): Search {
  const isLong = ({ words }: Target): boolean => letters(words).length >= RUN;
  const short = searchShort(
    targets.filter((each) => !isLong(each)),
    open,
  );
  const long = searchLong(targets.filter(isLong), open);
  let folded = fold('');
  return (text) => {
    folded = fold(text, folded);
    return [...short(text, folded), ...long(folded)];
  };
}

/** Targets that are the same words. */
interface Alike extends Needle {
  readonly targets: readonly Target[];
}

function searchShort(
  targets: readonly Target[],
  open: readonly string[],
): (text: string, folded: Folded) => Hit[] {
  const wanted = notSaidIn(open, alikeOf(targets));
  const innocent = wanted.flatMap((of) =>
    of.targets.flatMap(({ except }) => except).map((words) => ({ words, exact: false, of })),
  );
  const search = searchWords([...wanted, ...innocent]);
  return (text, folded) => {
    const found = search(folded, text);
    return found.flatMap(({ needle, from, to }) => {
      const alike = wanted[needle];
      const isExcused = found.some(
        (other) =>
          innocent[other.needle - wanted.length]?.of === alike &&
          other.from <= from &&
          other.to >= to,
      );
      if (!alike || isExcused) return [];
      return alike.targets.map((target) => ({ target, at: folded.at[from] ?? 0 }));
    });
  };
}

function alikeOf(targets: readonly Target[]): Alike[] {
  const alike = new Map<string, Target[]>();
  for (const target of targets) {
    const key = `${String(target.exact)} ${target.words}`;
    const there = alike.get(key);
    if (there) there.push(target);
    else alike.set(key, [target]);
  }
  return [...alike.values()].flatMap((all) => {
    const [first] = all;
    return first ? [{ words: first.words, exact: first.exact, targets: all }] : [];
  });
}

/** What open texts do not say; of what they say only what is looked for always. */
function notSaidIn(open: readonly string[], all: readonly Alike[]): Alike[] {
  const search = searchWords(all);
  const said = new Set<number>();
  let folded = fold('');
  for (const text of open) {
    folded = fold(text, folded);
    for (const { needle } of search(folded, text)) said.add(needle);
  }
  return all
    .map((alike, index) => ({
      ...alike,
      targets: alike.targets.filter(({ always }) => always || !said.has(index)),
    }))
    .filter(({ targets }) => targets.length > 0);
}

/**
 * Letters in a row of a run that must be in nothing open. A shared phrase that is open may go on for
 * a letter or two in both texts by chance.
 */
const TELLING = 8;

function searchLong(
  targets: readonly Target[],
  open: readonly string[],
): (folded: Folded) => Hit[] {
  const known = targets.map(({ words }) => letters(words));
  const marks = marksOf(known);
  const told = toldIn(open, searchRuns(known, marks));
  // A telling run has TELLING letters in it that are not told, and so a run of RUN letters has that
  // is a part of it: a fingerprint that stands in no such run is of no use.
  const telling = marks.filter(({ text, at }) => {
    if (targets[text]?.always === true) return true;
    const to = Math.min(at + RUN, known[text]?.length ?? 0);
    return isTelling({ from: Math.max(0, at - RUN), to }, told.get(text) ?? []);
  });
  const search = searchRuns(known, telling);
  return (folded) =>
    search(folded).flatMap((run) => {
      const each = targets[run.text];
      if (!each) return [];
      if (!each.always && !isTelling(run, told.get(run.text) ?? [])) return [];
      return [{ target: each, at: folded.at[run.at] ?? 0 }];
    });
}

/** From which letter to which, the last not among them. */
type Stretch = Pick<SharedRun, 'from' | 'to'>;

/** By known text, the stretches of it that open texts tell: in order, none touching another. */
function toldIn(
  open: readonly string[],
  search: RunSearch,
): ReadonlyMap<number, readonly Stretch[]> {
  let folded = fold('');
  const runs: SharedRun[] = [];
  for (const text of open) {
    folded = fold(text, folded);
    runs.push(...search(folded));
  }
  const told = new Map<number, Stretch[]>();
  for (const { text, from, to } of runs.sort((one, other) => one.from - other.from)) {
    const stretches = told.get(text) ?? [];
    const last = stretches.at(-1);
    if (last && from <= last.to) {
      stretches[stretches.length - 1] = { from: last.from, to: Math.max(last.to, to) };
    } else {
      stretches.push({ from, to });
    }
    told.set(text, stretches);
  }
  return told;
}

function isTelling(run: Stretch, open: readonly Stretch[]): boolean {
  let told = run.from;
  for (const { from, to } of open) {
    if (to <= told) continue;
    if (from >= run.to) break;
    if (from - told >= TELLING) return true;
    told = to;
  }
  return run.to - told >= TELLING;
}
