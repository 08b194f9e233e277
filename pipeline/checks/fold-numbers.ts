/** Most runs that a message lists. */
const MOST_RUNS = 12;

/**
 * "3, 7 to 9 and 12": numbers in the order of the plan, three or more neighbours folded.
 * @param planned all numbers of the plan, in order; `numbers` are some of them in the same order.
 */
export function foldNumbers(numbers: readonly string[], planned: readonly string[]): string {
  const places = new Map(planned.map((number, at) => [number, at]));
  const runs: string[][] = [];
  let last = -2;
  for (const number of numbers) {
    const place = places.get(number) ?? -2;
    const run = runs.at(-1);
    if (run && place === last + 1) run.push(number);
    else runs.push([number]);
    last = place;
  }
  return joined(runs.flatMap(sayRun));
}

function sayRun(run: readonly string[]): string[] {
  const [first = ''] = run;
  return run.length < 3 ? [...run] : [`${first} to ${run.at(-1) ?? ''}`];
}

function joined(parts: readonly string[]): string {
  if (parts.length > MOST_RUNS) {
    return `${parts.slice(0, MOST_RUNS).join(', ')} and ${parts.length - MOST_RUNS} more`;
  }
  const last = parts.at(-1) ?? '';
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(', ')} and ${last}`;
}
