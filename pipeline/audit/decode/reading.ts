/** A text as one way of reading gives it, and the place in its source of each place in it. */
export interface Reading {
  readonly text: string;
  readonly sourceOf: (at: number) => number;
}

/** A text as it stands. */
export function asItStands(text: string): Reading {
  return { text, sourceOf: (at) => at };
}

/** A stretch of a text, `to` not in it, and what stands in its place. */
export interface Change {
  readonly from: number;
  readonly to: number;
  readonly by: string;
}

/** Replaces every match of a pattern (which is global); the same reading if nothing is replaced. */
export function rewritten(
  reading: Reading,
  pattern: RegExp,
  replace: (found: string) => string,
): Reading {
  return changed(reading, (text, start) => {
    pattern.lastIndex = start;
    const [found] = pattern.exec(text) ?? [];
    if (found === undefined) return null;
    return { from: pattern.lastIndex - found.length, to: pattern.lastIndex, by: replace(found) };
  });
}

/**
 * Makes changes to a text one after the other; the same reading if there are none.
 * @param find the first change at a place of the text or after it
 */
export function changed(
  reading: Reading,
  find: (text: string, start: number) => Change | null,
): Reading {
  const { text } = reading;
  const pieces: string[] = [];
  const starts: number[] = [0];
  const sources: number[] = [0];
  let length = 0;
  let last = 0;
  for (let change = find(text, 0); change; change = find(text, change.to)) {
    const { from, to, by } = change;
    pieces.push(text.slice(last, from), by);
    length += from - last;
    last = to;
    // What stands for a stretch begins where the stretch does.
    starts.push(length);
    sources.push(from);
    length += by.length;
    starts.push(length);
    sources.push(last);
  }
  if (pieces.length === 0) return reading;
  pieces.push(text.slice(last));
  const before = (at: number): number => {
    const index = lastAtOrBefore(starts, at);
    const source = (sources[index] ?? 0) + at - (starts[index] ?? 0);
    return Math.min(source, sources[index + 1] ?? source);
  };
  return { text: pieces.join(''), sourceOf: (at) => reading.sourceOf(before(at)) };
}

function lastAtOrBefore(sorted: readonly number[], value: number): number {
  let low = 0;
  let high = sorted.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((sorted[middle] ?? 0) <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}
