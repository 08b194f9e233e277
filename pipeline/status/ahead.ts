import type { OpeningStatus } from '../../schema/index.js';
import { scheduleOf, streetOf, writeInstant, type Instant } from '../model/index.js';
import type { Released } from '../select/index.js';
import { timeline, type TimelineStep } from './timeline.js';

/** What opens at each instant to come, and how much more the public sees from it on. */
export function openingsAhead(released: Released, now: Instant): OpeningStatus[] {
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
    }));
}

function changed({ cards }: TimelineStep, kind: TimelineStep['cards'][number]['change']): number {
  return cards.filter(({ change }) => change === kind).length;
}
