import { isZone, readInstant, writeInstant } from '../model/index.js';

/** When things open if nobody says at what hour. */
const HOUR = '09:00';

/**
 * An instant as a file has it, of a day or of a day and time in a zone: `2027-04-16`,
 * `2027-04-16 20:00`. What is an instant already, and what is none, stays as it is: `check` then says
 * what is wrong with it.
 */
export function instantText(text: string, zone: string): string {
  const [, day, time = HOUR] =
    /^(\d{4}-\d{2}-\d{2})(?:[T ](\d{2}:\d{2})(?::00)?)?$/.exec(text.trim()) ?? [];
  if (day === undefined || !isZone(zone)) return text.trim();
  const wall = `${day}T${time}:00`;
  const guess = readInstant(`${wall}Z[${zone}]`);
  if (!guess.ok) return text.trim();
  // The offset near the hour that is meant; on the day of a change it may be the other one.
  const hours = [0, -14, 14].map((away) => guess.at + away * 3_600_000);
  const offsets = new Set(hours.map((at) => offsetIn(writeInstant(at, zone))));
  const written = [...offsets].map((offset) => `${wall}${offset}[${zone}]`);
  return written.find((each) => readInstant(each).ok) ?? written[0] ?? text.trim();
}

function offsetIn(instant: string): string {
  return /([+-]\d{2}:\d{2}|Z)\[/.exec(instant)?.[1] ?? 'Z';
}
