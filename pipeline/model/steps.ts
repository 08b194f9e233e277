import type { CardSet } from './content.js';
import { instantOf, type Instant } from './instant.js';
import type { PropertyFile } from '../../schema/index.js';
import { liftOf, scheduleOf, statedHold } from './hold.js';
import { streetOf } from './when.js';

/**
 * The steps of time up to an instant, in order, each once: `since`, every lift, and the street
 * instant of each set that is open by then. Nothing public depends on an instant but through them.
 */
export function stepsUntil(
  property: PropertyFile,
  sets: readonly CardSet[],
  at: Instant,
): readonly Instant[] {
  const schedule = scheduleOf(property);
  const since = instantOf(property.since);
  const lifts = [...schedule.levels, ...schedule.embargoes.values()].map((opening) => opening.lift);
  const streets = sets
    .filter((set) => liftOf(schedule, statedHold(schedule, set.plan.value)) <= at)
    .map((set) => streetOf(set.plan.value));
  const steps = [since, ...lifts, ...streets].filter((step) => step >= since && step <= at);
  return [...new Set(steps)].sort((a, b) => a - b);
}

/** The latest step at or before an instant; null before `since`, when nothing is public. */
export function asOf(
  property: PropertyFile,
  sets: readonly CardSet[],
  at: Instant,
): Instant | null {
  return stepsUntil(property, sets, at).at(-1) ?? null;
}
