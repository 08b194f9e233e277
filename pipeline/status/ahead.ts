import type { OpeningStatus } from '../../schema/index.js';
import { readInstant, writeInstant, type Instant } from '../model/index.js';
import type { Rehearsal } from '../release/index.js';
import type { Released } from '../select/index.js';
import type { CardChange } from './changes.js';
import { ALWAYS, timeline, type TimelineStep } from './timeline.js';

/** What opens at each instant to come, and how much more the public sees from it on. */
export function openingsAhead(
  released: Released,
  rehearsal: Rehearsal | null,
  now: Instant,
): OpeningStatus[] {
  return timeline(released, { ...ALWAYS, from: now }).map((step) => ({
    at: writeInstant(step.at, released.property.zone),
    opens: [...step.opens],
    inShops: [...step.inShops],
    listed: changed(step, 'listed'),
    revealed: changed(step, 'revealed'),
    moreShown: changed(step, 'more shown'),
    rehearsed: rehearsed(rehearsal, step.at),
  }));
}

function changed({ cards }: TimelineStep, kind: CardChange): number {
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
