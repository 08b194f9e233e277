import { Temporal } from 'temporal-polyfill';

/** Days on which nobody works besides Saturdays and Sundays, as `2027-03-26`. */
export type Holidays = readonly string[];

/**
 * The day that lies so many working days after a day, which itself does not count.
 * @param day as `2027-03-15`. @param count a whole number, 0 or more; 0 is the day itself.
 * @throws RangeError for no day or no such count.
 */
export function workingDaysAfter(day: string, count: number, holidays: Holidays): string {
  return stepped(day, count, holidays, 1);
}

/** The day that lies so many working days before a day, which itself does not count. */
export function workingDaysBefore(day: string, count: number, holidays: Holidays): string {
  return stepped(day, count, holidays, -1);
}

/** Working days after a day up to and with another; below zero if that is past. */
export function workingDaysBetween(from: string, to: string, holidays: Holidays): number {
  const [start, end] = [Temporal.PlainDate.from(from), Temporal.PlainDate.from(to)];
  const isPast = Temporal.PlainDate.compare(end, start) < 0;
  const [first, last] = isPast ? [end, start] : [start, end];
  const days = last.since(first).days;
  const worked = Array.from({ length: days }, (_, at) => first.add({ days: at + 1 })).filter(
    (day) => isWorkingDay(day, holidays),
  ).length;
  return isPast && worked > 0 ? -worked : worked;
}

function stepped(day: string, count: number, holidays: Holidays, by: 1 | -1): string {
  if (!Number.isInteger(count) || count < 0) throw new RangeError(`${String(count)} is no count`);
  let at = Temporal.PlainDate.from(day);
  for (let left = count; left > 0;) {
    at = at.add({ days: by });
    if (isWorkingDay(at, holidays)) left -= 1;
  }
  return at.toString();
}

function isWorkingDay(day: Temporal.PlainDate, holidays: Holidays): boolean {
  return day.dayOfWeek <= 5 && !holidays.includes(day.toString());
}
