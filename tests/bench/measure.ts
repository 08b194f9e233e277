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
  clock: Clock = processorTime,
): Promise<{ job: number; floor: number }> {
  const best = { job: Infinity, floor: Infinity };
  for (let round = 0; round < rounds; round++) {
    best.floor = Math.min(best.floor, await timed(floor, clock));
    best.job = Math.min(best.job, await timed(job, clock));
  }
  return best;
}

/** A reading in milliseconds, from any start. */
export type Clock = () => number;

/** Processor time of this process: what others do on the machine counts for little in it. */
export const processorTime: Clock = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** Time as it passes: for jobs that have processes of their own. */
export const wallTime: Clock = () => performance.now();

async function timed(job: () => unknown, clock: Clock): Promise<number> {
  const start = clock();
  await job();
  return clock() - start;
}

/** The middle one of some times, which a few that were disturbed do not move. */
export function median(times: readonly number[]): number {
  const sorted = times.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NaN;
}

/** A result as a line: name, ratio, goal, and the times behind them. */
export function sayResult({ name, milliseconds, floor, floorMilliseconds, goal }: Result): string {
  const ratio = milliseconds / floorMilliseconds;
  const verdict = ratio <= goal ? 'met' : 'MISSED';
  const times = `${milliseconds.toFixed(0)} ms beside ${floorMilliseconds.toFixed(0)} ms (${floor})`;
  return `${name.padEnd(44)} ${ratio.toFixed(2)}  goal ${goal.toFixed(2)} ${verdict}  ${times}`;
}
