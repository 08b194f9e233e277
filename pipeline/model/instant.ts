import { Temporal } from 'temporal-polyfill';

/** Milliseconds since 1970-01-01T00:00Z. `Infinity` stands for an instant that never comes. */
export type Instant = number;

export const NEVER: Instant = Infinity;

export type InstantReading =
  | { readonly ok: true; readonly at: Instant; readonly zone: string }
  | { readonly ok: false; readonly why: string };

const SHAPE =
  /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:(?<seconds>\d{2})([.]\d{1,9})?)?(?<offset>Z|[+-]\d{2}:\d{2})(?<annotations>\[.+\])$/;

/**
 * Reads an RFC 9557 instant that has both an offset and a zone. Refused, with a reason: a date that
 * does not exist, a leap second (it cannot be told from the second before), an offset that
 * contradicts the zone, a time that the zone skips, an unknown critical annotation.
 */
export function readInstant(text: string): InstantReading {
  const parts = SHAPE.exec(text)?.groups;
  if (!parts) return { ok: false, why: 'it is not a date and time with offset and [zone]' };
  if (parts['seconds'] === '60') return { ok: false, why: 'leap seconds are not understood' };
  try {
    const zoned = Temporal.ZonedDateTime.from(text, {
      overflow: 'reject',
      disambiguation: 'reject',
      offset: 'reject',
    });
    return { ok: true, at: zoned.epochMilliseconds, zone: zoned.timeZoneId };
  } catch {
    return { ok: false, why: whyRefused(text) };
  }
}

function whyRefused(text: string): string {
  try {
    const [, wall = '', stated = '', zone = ''] =
      /^(.{16,}?)(Z|[+-]\d{2}:\d{2})\[!?([^\]=]+)\]/.exec(text) ?? [];
    const local = Temporal.PlainDateTime.from(wall, { overflow: 'reject' });
    const there = local.toZonedDateTime(zone, { disambiguation: 'earlier' });
    if (!there.toPlainDateTime().equals(local)) return `${zone} skips that time`;
    if (there.offset !== stated && stated !== 'Z')
      return `its offset is ${stated}, but ${zone} is at ${there.offset} then`;
    return 'it has an annotation that is not understood';
  } catch {
    return 'there is no such date, time or zone';
  }
}

/**
 * An instant that is known to be well formed (the schema has checked it).
 * @throws RangeError if it is not.
 */
export function instantOf(text: string): Instant {
  const reading = readInstant(text);
  if (!reading.ok) throw new RangeError(`${text}: ${reading.why}`);
  return reading.at;
}

/** The instant, or `NEVER` for `unset`. */
export function instantOrNever(text: string): Instant {
  return text === 'unset' ? NEVER : instantOf(text);
}

/** Writes an instant as RFC 9557 in a zone, to the second. */
export function writeInstant(at: Instant, zone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(at)
    .toZonedDateTimeISO(zone)
    .toString({ smallestUnit: 'second' });
}

/** Whether the machine knows the zone by this name. */
export function isZone(name: string): boolean {
  if (!/^[A-Za-z]/.test(name)) return false;
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(name);
    return true;
  } catch {
    return false;
  }
}

/** "14 May 2027, 20:00" in the zone. */
export function sayInstant(at: Instant, zone: string): string {
  const zoned = Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(zone);
  const month = MONTHS[zoned.month - 1];
  const time = zoned.toPlainTime().toString({ smallestUnit: 'minute' });
  return `${String(zoned.day)} ${month ?? ''} ${String(zoned.year)}, ${time}`;
}

/** "14 May 2027" in the zone. */
export function sayDay(at: Instant, zone: string): string {
  return sayInstant(at, zone).replace(/, .*$/, '');
}

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
