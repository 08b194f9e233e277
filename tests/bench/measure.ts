/** One goal of the bench: a time as a ratio to another in the same run. */
export interface Result {
  readonly name: string;
  readonly milliseconds: number;
  readonly floor: string;
  readonly floorMilliseconds: number;
  readonly goal: number;
}

/**
 * Runs two jobs in turn, so that both see the same weather, and keeps the best time of each: the
 * least disturbed.
 */
export async function inTurn(
  rounds: number,
  job: () => unknown,
  floor: () => unknown,
): Promise<{ job: number; floor: number }> {
  const best = { job: Infinity, floor: Infinity };
  for (let round = 0; round < rounds; round++) {
    best.floor = Math.min(best.floor, await timed(floor));
    best.job = Math.min(best.job, await timed(job));
  }
  return best;
}

/** Milliseconds that a job takes. */
export async function timed(job: () => unknown): Promise<number> {
  globalThis.gc?.();
  const start = performance.now();
  await job();
  return performance.now() - start;
}

/** A result as a line: name, ratio, goal, and the times behind them. */
export function sayResult({ name, milliseconds, floor, floorMilliseconds, goal }: Result): string {
  const ratio = milliseconds / floorMilliseconds;
  const verdict = ratio <= goal ? 'met' : 'MISSED';
  const times = `${milliseconds.toFixed(0)} ms beside ${floorMilliseconds.toFixed(0)} ms (${floor})`;
  return `${name.padEnd(44)} ${ratio.toFixed(2)}  goal ${goal.toFixed(2)} ${verdict}  ${times}`;
}
