import type { DateStatus, PropertyFile, WaitingStatus } from '../../schema/index.js';
import { writeInstant, type CardSet, type Instant } from '../model/index.js';
import { workingDaysAfter, workingDaysBefore, workingDaysBetween } from '../review/index.js';
import type { Released } from '../select/index.js';
import type { Pending } from './submitted.js';

/** Working days that a review takes where the property says nothing: common practice. */
const REVIEW_DAYS = 10;

const DATES = ['solicit', 'copyLock', 'toPrinter', 'ships'] as const;

/** The day of an instant in the zone, as `2027-03-30`. */
export function dayOf(at: Instant, zone: string): string {
  return writeInstant(at, zone).slice(0, 10);
}

/** How long it is to each date of a plan, and until when copy can be submitted for the printer. */
export function datesOf(
  { plan }: CardSet,
  property: PropertyFile,
  today: string,
): readonly DateStatus[] {
  const { days, holidays } = reviewOf(property);
  return DATES.flatMap((date) => {
    const on = plan.value.dates?.[date];
    if (on === undefined) return [];
    const isJudged = date === 'toPrinter' && property.approvals !== 'none';
    // A decision on the working day before is due so many working days after its submission.
    const by = workingDaysBefore(on, days + 1, holidays);
    const until = (day: string): number => workingDaysBetween(today, day, holidays);
    const submit = isJudged ? { by, workingDays: until(by) } : null;
    return [{ date, on, workingDays: until(on), submit }];
  });
}

/** What lies with whom, the earliest due first. */
export function waitingOf(
  pending: readonly Pending[],
  { property, people }: Released,
  today: string,
): WaitingStatus[] {
  const { days, holidays } = reviewOf(property);
  const packets = [...new Set(pending.map(({ packet }) => packet))];
  const waiting = packets.flatMap((packet) => {
    const parts = pending.filter((one) => one.packet === packet);
    const [first] = parts;
    if (!first) return [];
    const person = people.find(({ id }) => id === first.person);
    const since = dayOf(first.at, property.zone);
    const due = workingDaysAfter(since, days, holidays);
    return [
      {
        person: first.person,
        name: person?.name ?? first.person,
        role: person?.role ?? 'nobody of people.yaml',
        packet,
        round: first.round,
        since,
        due,
        overdue: Math.max(0, workingDaysBetween(due, today, holidays)),
        cards: new Set(parts.map(({ card }) => card)).size,
        parts: parts.length,
      },
    ];
  });
  return waiting.sort((one, other) => (one.due < other.due ? -1 : one.due > other.due ? 1 : 0));
}

function reviewOf({ review }: PropertyFile): {
  readonly days: number;
  readonly holidays: readonly string[];
} {
  return { days: review?.workingDays ?? REVIEW_DAYS, holidays: review?.holidays ?? [] };
}
