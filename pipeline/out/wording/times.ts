import { instantOf, sayDay, sayInstant, writeInstant } from '../../model/index.js';

/** Instants of the public data, RFC 9557, as lists write them. Each throws RangeError for another. */

/** "14 May 2027" in the zone. */
export function dayWords(instant: string, zone: string): string {
  return sayDay(instantOf(instant), zone);
}

/** "14 May 2027, 20:00 (London time)". */
export function momentWords(instant: string, zone: string): string {
  return `${sayInstant(instantOf(instant), zone)} (${zoneName(zone)})`;
}

/** "3 November 2026" for a date without a time, such as 2026-11-03. */
export function plainDayWords(date: string): string {
  return dayWords(`${date}T00:00:00Z[UTC]`, 'UTC');
}

/** "2027-05-14" in the zone: a date of ISO 8601. */
export function isoDay(instant: string, zone: string): string {
  return writeInstant(instantOf(instant), zone).slice(0, 10);
}

/** "2027-05-14T20:00:00+01:00": RFC 3339, in the zone. */
export function rfc3339(instant: string, zone: string): string {
  return writeInstant(instantOf(instant), zone).replace(/\[.*$/, '');
}

/** "2027-05-14T19:00:00Z": the same for one instant whatever the zone. */
export function utc(instant: string): string {
  return writeInstant(instantOf(instant), 'UTC').replace(/\+00:00\[UTC\]$/, 'Z');
}

/** "London time" for Europe/London. */
function zoneName(zone: string): string {
  const place = zone.split('/').at(-1)?.replaceAll('_', ' ') ?? zone;
  return zone.includes('/') ? `${place} time` : place;
}
