import type { Folded } from './fold.js';

/**
 * A machine that finds all of many words in one pass: A. Aho and M. Corasick, "Efficient String
 * Matching: An Aid to Bibliographic Search", CACM 18 (1975). State 0 is where it begins; the others
 * are numbered in the order in which the words make them.
 */
export interface Machine {
  /** A class for each UTF-16 unit that is in some needle; 0 for all others. */
  readonly classes: Uint16Array;
  readonly width: number;
  /** By state and class: the next state. */
  readonly next: Int32Array;
  /** Needles that end in a state. */
  readonly ends: ReadonlyMap<number, readonly number[]>;
  /** By state: the longest shorter end of it in which a needle ends; 0 for none. */
  readonly shorter: Int32Array;
  /** By state: its longest shorter end that is a state (the paper's failure function). */
  readonly fall: Int32Array;
  /** 1 where the state or a shorter end of it ends a needle. */
  readonly stops: Uint8Array;
}

/** The machine of some words. */
export function machineOf(needles: readonly Folded[]): Machine {
  const { classes, width } = classesOf(needles);
  const size = 1 + needles.reduce((sum, needle) => sum + needle.length, 0);
  const next = new Int32Array(size * width);
  const ends = new Map<number, number[]>();
  let used = 1;
  for (const [index, { units, length }] of needles.entries()) {
    if (length === 0) continue;
    let state = 0;
    for (let at = 0; at < length; at += 1) {
      const edge = state * width + (classes[units[at] ?? 0] ?? 0);
      if (next[edge] === 0) next[edge] = used++;
      state = next[edge] ?? 0;
    }
    const there = ends.get(state);
    if (there) there.push(index);
    else ends.set(state, [index]);
  }
  return { classes, width, next, ends, ...linked(next, width, ends, used) };
}

function classesOf(needles: readonly Folded[]): { classes: Uint16Array; width: number } {
  const classes = new Uint16Array(0x10000);
  let width = 1;
  for (const { units, length } of needles) {
    for (let at = 0; at < length; at += 1) {
      const unit = units[at] ?? 0;
      if (classes[unit] === 0) classes[unit] = width++;
    }
  }
  return { classes, width };
}

/** Fills in, state by state from the shortest, where to go on when the next letter is another. */
function linked(
  next: Int32Array,
  width: number,
  ends: ReadonlyMap<number, readonly number[]>,
  used: number,
): Pick<Machine, 'fall' | 'shorter' | 'stops'> {
  const fall = new Int32Array(used);
  const shorter = new Int32Array(used);
  const stops = new Uint8Array(used);
  const order: number[] = [0];
  for (const state of order) {
    const back = fall[state] ?? 0;
    shorter[state] = ends.has(back) ? back : (shorter[back] ?? 0);
    stops[state] = state > 0 && (ends.has(state) || (shorter[state] ?? 0) > 0) ? 1 : 0;
    for (let kind = 0; kind < width; kind += 1) {
      const to = next[state * width + kind] ?? 0;
      const other = state === 0 ? 0 : (next[back * width + kind] ?? 0);
      if (to === 0) {
        next[state * width + kind] = other;
      } else {
        fall[to] = other;
        order.push(to);
      }
    }
  }
  return { fall, shorter, stops };
}
