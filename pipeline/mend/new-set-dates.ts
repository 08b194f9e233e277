import { isZone, readInstant, writeInstant, type Instant } from '../model/index.js';
import { answerOf, answersOf, type Answers, type Ground } from './new-set-answers.js';
import { instantText } from './new-set-instant.js';

/** The zone in which days are written; UTC until there is a readable answer. */
export function zoneOf(answers: Answers, { home }: Ground): string {
  const zone = home?.zone ?? answerOf(answers, 'zone');
  return zone !== null && isZone(zone) ? zone : 'UTC';
}

/** The street date of a set: one instant, or one for each region, such as `au=2027-04-17`. */
export type Street = string | Readonly<Record<string, string>> | null;

/** Reads street dates in the zone of the property; `unset` is none. */
export function streetOf(answers: Answers, ground: Ground): Street {
  const zone = zoneOf(answers, ground);
  const texts = answersOf(answers, 'street').flatMap((text) => text.split(';'));
  const [first] = texts;
  if (first === undefined || first.trim() === 'unset') return null;
  if (texts.length === 1 && !/^[a-z]+=/.test(first.trim())) return instantText(first, zone);
  return Object.fromEntries(
    texts.map((text) => {
      const at = text.indexOf('=');
      return [text.slice(0, Math.max(at, 0)).trim(), instantText(text.slice(at + 1), zone)];
    }),
  );
}

/** The earliest instant of a street date, as it was written; null if none of it can be read. */
function earliestOf(street: Street): string | null {
  const texts =
    street === null ? [] : typeof street === 'string' ? [street] : Object.values(street);
  const read = texts.flatMap((text) => {
    const reading = readInstant(text);
    return reading.ok ? [{ text, at: reading.at }] : [];
  });
  return read.sort((a, b) => a.at - b.at)[0]?.text ?? null;
}

/** From when anything is public: as it is said, else when the cards come into shops. */
export function sinceOf(answers: Answers, ground: Ground): string | null {
  const said = answerOf(answers, 'since');
  if (said !== null) return instantText(said, zoneOf(answers, ground));
  return earliestOf(streetOf(answers, ground));
}

/** Now, to the minute, in the zone: what holds the place of an instant that nobody has said yet. */
export function nowText(now: Instant, zone: string): string {
  return writeInstant(Math.floor(now / 60_000) * 60_000, zone);
}
