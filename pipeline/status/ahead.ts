import type { OpeningStatus } from '../../schema/index.js';
import { readInstant, scheduleOf, streetOf, writeInstant, type Instant } from '../model/index.js';
import type { Rehearsal } from '../release/index.js';
import type { Released } from '../select/index.js';
import { timeline, type TimelineStep } from './timeline.js';

/** What opens at each instant to come, and how much more the public sees from it on. */
export function openingsAhead(
  released: Released,
  rehearsal: Rehearsal | null,
  now: Instant,
): OpeningStatus[] {
  const { property, sets } = released;
  const { levels, embargoes } = scheduleOf(property);
  const openings = [...levels, ...embargoes.values()];
  return timeline(released)
    .filter(({ at }) => at > now)
    .map((step) => ({
      at: writeInstant(step.at, property.zone),
      opens: openings.filter(({ lift }) => lift === step.at).map(({ label }) => label),
      inShops: sets
        .filter(({ plan }) => streetOf(plan.value) === step.at)
        .map(({ plan }) => plan.value.title),
      listed: changed(step, 'listed'),
      revealed: changed(step, 'revealed'),
      moreShown: changed(step, 'more shown'),
      rehearsed: rehearsed(rehearsal, step.at),
    }));
}

function changed({ cards }: TimelineStep, kind: TimelineStep['cards'][number]['change']): number {
  return cards.filter(({ change }) => change === kind).length;
}

function rehearsed(rehearsal: Rehearsal | null, at: Instant): OpeningStatus['rehearsed'] {
  const lift = rehearsal?.record.lifts.find((one) => {
    const reading = readInstant(one.at);
    return reading.ok && reading.at === at;
  });
  if (!rehearsal || !lift) return 'not yet';
  if (!rehearsal.isCurrent) return 'on other content';
  return lift.digest === null ? 'refused on this content' : 'on this content';
}
