/** What of a text must change so that it becomes another: everything around it stays. */
export interface Replacement {
  readonly from: number;
  readonly to: number;
  readonly insert: string;
}

/** The one shortest stretch that differs, so that cursor and marks outside it stay where they are. */
export function narrowest(before: string, after: string): Replacement | null {
  if (before === after) return null;
  const shorter = Math.min(before.length, after.length);
  let head = 0;
  while (head < shorter && before[head] === after[head]) head += 1;
  let tail = 0;
  while (
    tail < shorter - head &&
    before[before.length - 1 - tail] === after[after.length - 1 - tail]
  ) {
    tail += 1;
  }
  return {
    from: head,
    to: before.length - tail,
    insert: after.slice(head, after.length - tail),
  };
}
