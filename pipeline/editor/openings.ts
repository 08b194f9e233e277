import {
  NEVER,
  holdNamed,
  knows,
  liftOf,
  openingsOf,
  sayInstant,
  type Hold,
  type Instant,
  type Schedule,
} from '../model/index.js';

/** By what time, and in which zone, openings are told. */
export interface Clock {
  readonly now: Instant;
  readonly zone: string;
}

/** "open", "held until 16 April 2027, 20:00 London time", or "held, no date yet". */
export function sayOpening(schedule: Schedule, hold: Hold, { now, zone }: Clock): string {
  const lift = liftOf(schedule, hold);
  const traceless = openingsOf(schedule, hold).some((each) => each.absent && each.lift > now);
  const trace = traceless ? ', and leaves no trace until then' : '';
  if (lift === NEVER) return `held, no date yet${trace}`;
  return lift <= now
    ? 'open'
    : `held until ${sayInstant(lift, zone)} ${placeOfZone(zone)} time${trace}`;
}

/** The opening of one level or embargo; null for an id that is neither. */
export function sayOpeningOf(schedule: Schedule, id: string, clock: Clock): string | null {
  return knows(schedule, id) ? sayOpening(schedule, holdNamed(schedule, id), clock) : null;
}

/** "Europe/London" is London's time. */
function placeOfZone(zone: string): string {
  return (zone.split('/').at(-1) ?? zone).replaceAll('_', ' ');
}
