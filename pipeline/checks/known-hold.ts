import {
  OPEN,
  fieldHold,
  join,
  statedHold,
  type Card,
  type Hold,
  type Schedule,
  type Stated,
} from '../model/index.js';

/**
 * What things that lie in one another state together; null if one of them names a level or an
 * embargo that is not there. Such a thing is held for ever, and `level-unknown` alone speaks of it.
 */
export function knownHold(schedule: Schedule, ...things: readonly Stated[]): Hold | null {
  let hold = OPEN;
  for (const stated of things) {
    const level = stated.spoiler ?? stated.level;
    if (level !== undefined && !schedule.levels.some(({ id }) => id === level)) return null;
    if (stated.embargo?.some((id) => !schedule.embargoes.has(id)) === true) return null;
    hold = join(hold, statedHold(schedule, stated));
  }
  return hold;
}

/** The hold of a field inside that of its card; null if it names something that is not there. */
export function knownField(
  card: Card,
  field: string,
  around: Hold,
  schedule: Schedule,
): Hold | null {
  const hold = fieldHold(schedule, around, card, field);
  return hold.embargoes.every((id) => schedule.embargoes.has(id)) ? hold : null;
}

/**
 * When a thing leaves its first trace: what holds it and shows no placeholder. The titles of a set
 * and a subset, a number of a range and a `publicName` are read from then on.
 */
export function traceHold(schedule: Schedule, { level, embargoes }: Hold): Hold {
  return {
    level: schedule.levels[level]?.absent === true ? level : OPEN.level,
    embargoes: embargoes.filter((id) => schedule.embargoes.get(id)?.absent === true),
  };
}

/** What holds all of several things: who knows one of them knows what it holds. */
export function leastHold(holds: readonly Hold[]): Hold {
  const [first = OPEN, ...others] = holds;
  return {
    level: Math.min(first.level, ...others.map(({ level }) => level)),
    embargoes: first.embargoes.filter((id) =>
      others.every(({ embargoes }) => embargoes.includes(id)),
    ),
  };
}
