import type { Static } from 'typebox';

import type { Person, PropertyFile, Subset } from '../../schema/index.js';
import {
  liftOf,
  openingsOf,
  scheduleOf,
  type Hold,
  type Instant,
  type Opening,
  type Schedule,
} from '../model/index.js';
import { showsOf } from '../review/index.js';
import type { Decision } from './decision.js';
import type { AudienceKind } from './view.js';

export type Audience =
  | { readonly kind: 'house' }
  | { readonly kind: 'person'; readonly person: Static<typeof Person>; readonly at: Instant }
  | { readonly kind: 'public'; readonly at: Instant };

/** Which kinds of field an audience gets at all. */
export interface Showing {
  readonly bio: boolean;
  readonly art: boolean;
  readonly facts: boolean;
  readonly credits: boolean;
}

/** How something stands for an audience at an instant. */
export type Standing = 'open' | 'placeholder' | 'absent';

/** An audience at an instant, as questions that the gate asks of it. */
export interface Lens {
  readonly kind: AudienceKind;
  readonly property: PropertyFile;
  readonly schedule: Schedule;
  readonly at: Instant;
  readonly showing: Showing;
  standing(hold: Hold): Standing;
  /** How much of the story something open tells, as the public is told it; 0 for others. */
  told(hold: Hold): number;
  /** Whether keys with these decisions are ever shown to this audience. */
  admits(...decisions: readonly Decision[]): boolean;
  /** Whether a card of this subset is among what this audience is sent, by whom it depicts. */
  sent(subset: Subset, depicted: readonly string[]): boolean;
}

const ALL: Showing = { bio: true, art: true, facts: true, credits: true };

export function lensOf(property: PropertyFile, audience: Audience): Lens {
  const schedule = scheduleOf(property);
  const at = audience.kind === 'house' ? Infinity : audience.at;
  return {
    kind: audience.kind,
    property,
    schedule,
    at,
    showing: audience.kind === 'public' ? siteShowing(property) : ALL,
    standing: (hold) =>
      audience.kind === 'house'
        ? 'open'
        : standingOf(schedule, hold, clearedFor(schedule, audience)),
    told: (hold) => (audience.kind === 'public' ? hold.level : 0),
    admits: (...decisions) => decisions.every((decision) => admitsKey(audience.kind, decision)),
    sent: (subset, depicted) =>
      audience.kind !== 'person' || seesCard(audience.person, subset, depicted),
  };
}

/** What the site shows of any card, in words, as the schedule that a reviewer sees keeps it. */
export function siteShows(property: PropertyFile): readonly string[] {
  return [...showsOf(property)].sort();
}

/** What the licence lets the site show; nothing, unless the property says otherwise. */
function siteShowing(property: PropertyFile): Showing {
  const shows = property.site?.shows;
  if (shows === undefined || shows === 'none') {
    return { bio: false, art: false, facts: false, credits: false };
  }
  return {
    bio: shows.bio === 'full',
    art: shows.art === 'front' || shows.art === 'both',
    facts: shows.facts === 'full',
    credits: shows.credits === 'full',
  };
}

/** Labels of the levels that have lifted, in their order. */
export function liftedLabels({ kind, schedule, at }: Lens): readonly string[] {
  if (kind !== 'public') return [];
  return schedule.levels.filter(({ lift }) => lift <= at).map(({ label }) => label);
}

type Cleared = (opening: Opening) => boolean;

function clearedFor(schedule: Schedule, audience: Exclude<Audience, { kind: 'house' }>): Cleared {
  if (audience.kind === 'public') return (opening) => opening.lift <= audience.at;
  const { person, at } = audience;
  const clearance = schedule.levels.findIndex((level) => level.id === person.clearance);
  const cleared = new Set([
    ...schedule.levels.slice(0, clearance + 1),
    ...(person.knows ?? []).flatMap((id) => schedule.embargoes.get(id) ?? []),
  ]);
  return (opening) => opening.lift <= at || cleared.has(opening);
}

function standingOf(schedule: Schedule, hold: Hold, cleared: Cleared): Standing {
  const held = openingsOf(schedule, hold).filter((opening) => !cleared(opening));
  if (held.length === 0) return 'open';
  return held.some((opening) => opening.absent) ? 'absent' : 'placeholder';
}

function admitsKey(kind: AudienceKind, decision: Decision): boolean {
  if (decision === 'decides' || decision === 'never') return false;
  if (decision === 'house') return kind === 'house';
  return decision === 'reviewer' ? kind !== 'public' : true;
}

function seesCard(
  person: Static<typeof Person>,
  subset: Subset,
  depicted: readonly string[],
): boolean {
  const where = person.sees;
  if (!where) return true;
  return (
    (where.depicts?.some((name) => depicted.includes(name)) ?? true) &&
    (where.subset?.includes(subset.id) ?? true) &&
    (where.group?.includes(subset.group) ?? true)
  );
}

/**
 * The announced opening of something held: the latest lift among those not lifted; null if one of
 * them has no date, leaves no trace or is not announced.
 */
export function announcedOpening(lens: Lens, hold: Hold): Instant | null {
  const held = openingsOf(lens.schedule, hold).filter((opening) => opening.lift > lens.at);
  if (held.length === 0 || !held.every((opening) => opening.announced)) return null;
  return Math.max(...held.map((opening) => opening.lift));
}

/** When something that is open was revealed: its lift; null for what was never held. */
export function revealedAt(lens: Lens, hold: Hold): Instant | null {
  const lift = liftOf(lens.schedule, hold);
  return Number.isFinite(lift) && lift <= lens.at ? lift : null;
}
