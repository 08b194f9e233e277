import type { Seen } from '../../schema/index.js';
import { NEVER, instantOf, writeInstant, type Instant } from '../model/index.js';
import type { SeenSchedule } from './schedule.js';

/** A schedule as it is kept in files: instants in the property's zone. */
export function writeSeen({ openings, inHands, shows }: SeenSchedule, zone: string): Seen {
  const say = (at: Instant): string => (Number.isFinite(at) ? writeInstant(at, zone) : 'never');
  return {
    openings: [...openings].flatMap(([what, { opens, absent }]) =>
      // What was always open cannot open earlier.
      opens === -Infinity ? [] : [{ what, opens: say(opens), absent }],
    ),
    inHands: say(inHands),
    shows: [...shows].sort(),
  };
}

/** A schedule as it was kept. */
export function readSeen({ openings, inHands, shows }: Seen): SeenSchedule {
  const read = (text: string): Instant => (text === 'never' ? NEVER : instantOf(text));
  return {
    openings: new Map(
      openings.map(({ what, opens, absent }) => [what, { opens: read(opens), absent }]),
    ),
    inHands: read(inHands),
    shows: new Set(shows),
  };
}
