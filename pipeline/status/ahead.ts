import type { OpeningStatus } from '../../schema/index.js';
import { readInstant, writeInstant, type Instant } from '../model/index.js';
import { publicSight } from '../gate/index.js';
import type { Rehearsal } from '../release/index.js';
import { selectForSite } from '../select/index.js';
import type { CardChange } from './changes.js';
import type { StatusGround } from './sheet.js';
import { ALWAYS, timeline, type TimelineStep } from './timeline.js';

/** What opens at each instant to come, and how much more the public sees from it on. */
export function openingsAhead(ground: StatusGround): OpeningStatus[] {
  const { released, rehearsal, now } = ground;
  return timeline(released, { ...ALWAYS, from: now }).map((step) => ({
    at: writeInstant(step.at, released.property.zone),
    opens: [...step.opens],
    inShops: [...step.inShops],
    listed: changed(step, 'listed'),
    revealed: changed(step, 'revealed'),
    moreShown: changed(step, 'more shown'),
    rehearsed: rehearsed(rehearsal, step.at),
    blocks: blocksOf(rehearsal, step.at),
    unapproved: unapprovedAt(step.at, ground),
  }));
}

function changed({ cards }: TimelineStep, kind: CardChange): number {
  return cards.filter(({ change }) => change === kind).length;
}

function rehearsed(rehearsal: Rehearsal | null, at: Instant): OpeningStatus['rehearsed'] {
  const lift = liftOf(rehearsal, at);
  if (!rehearsal || !lift) return 'not yet';
  if (!rehearsal.isCurrent) return 'on other content';
  return lift.digest === null ? 'refused on this content' : 'on this content';
}

function liftOf(
  rehearsal: Rehearsal | null,
  at: Instant,
): Rehearsal['record']['lifts'][number] | undefined {
  return rehearsal?.record.lifts.find((one) => {
    const reading = readInstant(one.at);
    return reading.ok && reading.at === at;
  });
}

/** What a rehearsal on other content found says nothing about this one. */
function blocksOf(rehearsal: Rehearsal | null, at: Instant): string[] {
  return rehearsal?.isCurrent === true ? [...(liftOf(rehearsal, at)?.blocks ?? [])] : [];
}

/** Cards that would keep the site from going out, by each role that has not approved them. */
function unapprovedAt(at: Instant, { reviewed }: StatusGround): OpeningStatus['unapproved'] {
  if (!reviewed) return [];
  const { content, approvals } = reviewed;
  const order = { content, approvals, policy: 'refuse', at, see: publicSight(at) } as const;
  const cards = selectForSite(order)?.refused ?? [];
  const roles = cards.flatMap(({ parts }) => [
    ...new Set(
      parts.flatMap((part) => part.roles.flatMap(({ role, lack }) => (lack ? [role] : []))),
    ),
  ]);
  return [...new Set(roles)].map((role) => {
    return { role, cards: roles.filter((each) => each === role).length };
  });
}
