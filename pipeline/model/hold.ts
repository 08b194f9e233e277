import type { Static } from 'typebox';

import type { Embargo, Level, PropertyFile } from '../../schema/index.js';
import { NEVER, instantOrNever, type Instant } from './instant.js';

type LevelShape = Static<typeof Level>;
type EmbargoShape = Static<typeof Embargo>;

/** What something is held by: a level (its position in the list) and a set of embargoes. */
export interface Hold {
  readonly level: number;
  /** Sorted, each once. */
  readonly embargoes: readonly string[];
}

/** Keys by which a thing states a hold of its own. */
export interface Stated {
  readonly spoiler?: string;
  readonly level?: string;
  readonly embargo?: readonly string[];
}

/** A level or an embargo with its instants worked out. */
export interface Opening {
  readonly id: string;
  readonly label: string;
  readonly lift: Instant;
  /** From when a product in shops may tell it. Never later than the lift. */
  readonly print: Instant;
  readonly absent: boolean;
  readonly announced: boolean;
}

export const OPEN: Hold = { level: 0, embargoes: [] };

/** The levels and embargoes of a property, with what follows from them. */
export interface Schedule {
  readonly levels: readonly Opening[];
  readonly embargoes: ReadonlyMap<string, Opening>;
}

export function scheduleOf(property: Pick<PropertyFile, 'levels' | 'embargoes'>): Schedule {
  return {
    levels: property.levels.map((level, index) => openingOf(level, index === 0)),
    embargoes: new Map(
      (property.embargoes ?? []).map((embargo) => [embargo.id, openingOf(embargo, false)]),
    ),
  };
}

function openingOf(stated: LevelShape | EmbargoShape, first: boolean): Opening {
  const lift =
    stated.lift === undefined ? (first ? -Infinity : NEVER) : instantOrNever(stated.lift);
  const print = stated.print === undefined ? lift : instantOrNever(stated.print);
  return {
    id: stated.id,
    label: stated.label ?? stated.id,
    lift,
    print,
    absent: stated.held === 'absent',
    announced: stated.announce !== false && stated.held !== 'absent' && lift !== NEVER,
  };
}

/** Whether an id is a level or an embargo here. */
export function knows(schedule: Schedule, id: string): boolean {
  return schedule.embargoes.has(id) || schedule.levels.some((level) => level.id === id);
}

/** The hold that a thing states; what it names and nobody knows never opens. */
export function statedHold(schedule: Schedule, stated: Stated): Hold {
  const id = stated.spoiler ?? stated.level;
  const hold = id === undefined ? OPEN : holdNamed(schedule, id);
  return join(hold, { level: 0, embargoes: [...new Set(stated.embargo ?? [])].sort() });
}

/** The hold of one level or embargo id, as `holds` and `held:` name it. Unknown ids fail closed. */
export function holdNamed(schedule: Schedule, id: string): Hold {
  const level = schedule.levels.findIndex((candidate) => candidate.id === id);
  if (level >= 0) return { level, embargoes: [] };
  return { level: 0, embargoes: [id] };
}

/** The hold of what lies in another thing: the higher level, all the embargoes. */
export function join(a: Hold, b: Hold): Hold {
  if (b.level <= a.level && b.embargoes.every((id) => a.embargoes.includes(id))) return a;
  return {
    level: Math.max(a.level, b.level),
    embargoes: [...new Set([...a.embargoes, ...b.embargoes])].sort(),
  };
}

/** The level and embargoes of a hold. One that nobody knows never opens and leaves no trace. */
export function openingsOf(schedule: Schedule, hold: Hold): Opening[] {
  return [
    schedule.levels[hold.level] ?? unknownOpening('no level'),
    ...hold.embargoes.map((id) => schedule.embargoes.get(id) ?? unknownOpening(id)),
  ];
}

function unknownOpening(id: string): Opening {
  return { id, label: id, lift: NEVER, print: NEVER, absent: true, announced: false };
}

/** Whether A opens later than B: by the list, not by instants, so that it is the same on every day. */
export function opensLater(a: Hold, b: Hold): boolean {
  return a.level > b.level || a.embargoes.some((id) => !b.embargoes.includes(id));
}

/** When everything that holds it has lifted. */
export function liftOf(schedule: Schedule, hold: Hold): Instant {
  return Math.max(...openingsOf(schedule, hold).map((opening) => opening.lift));
}

/** From when a product in shops may tell it. */
export function printOf(schedule: Schedule, hold: Hold): Instant {
  return Math.max(...openingsOf(schedule, hold).map((opening) => opening.print));
}

/** "spring (Episodes 4 to 7)": a hold in words, for the team. */
export function sayHold(schedule: Schedule, hold: Hold): string {
  const embargoes = hold.embargoes.map((id) => `embargo ${id}`);
  const level = schedule.levels[hold.level]?.id ?? 'no level';
  return [level, ...embargoes].join(' and ');
}
