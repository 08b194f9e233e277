import {
  openingsOf,
  scheduleOf,
  type Content,
  type Hold,
  type Instant,
  type Opening,
  type Schedule,
} from '../model/index.js';

/** For whom an output is: the public at an instant, or whoever is cleared for a level besides. */
export interface Reader {
  readonly at: Instant;
  /** A level: what lies in it or before it is open to this reader. */
  readonly clearance?: string;
}

/** What is open to a reader: worked out anew from the model. */
export interface Standing {
  readonly schedule: Schedule;
  isLifted(opening: Opening): boolean;
  isOpen(hold: Hold): boolean;
  /** Held, and so that not even a placeholder may be seen. */
  isAbsent(hold: Hold): boolean;
}

export function standingOf(content: Content, reader: Reader): Standing | null {
  if (!content.property) return null;
  const schedule = scheduleOf(content.property.value);
  const cleared = schedule.levels.findIndex(({ id }) => id === reader.clearance);
  const known = new Set(schedule.levels.slice(0, cleared + 1));
  const isLifted = (opening: Opening): boolean => opening.lift <= reader.at || known.has(opening);
  return {
    schedule,
    isLifted,
    isOpen: (hold) => openingsOf(schedule, hold).every(isLifted),
    isAbsent: (hold) =>
      openingsOf(schedule, hold).some((opening) => opening.absent && !isLifted(opening)),
  };
}
