import type { Decision, PlanFile, PropertyFile } from '../../schema/index.js';
import {
  cardHold,
  fieldHold,
  heldSpans,
  holdNamed,
  inHands,
  join,
  liftOf,
  openingsOf,
  scheduleOf,
  type Card,
  type Hold,
  type Instant,
  type Schedule,
} from '../model/index.js';

/** When something opens, and what it leaves until then. */
export interface SeenOpening {
  /** Infinity for never. */
  readonly opens: Instant;
  readonly absent: boolean;
}

/** What a person saw of when a card and its parts become public; a decision keeps it. */
export interface SeenSchedule {
  /** By what it is about: the card itself, a field, or held words. */
  readonly openings: ReadonlyMap<string, SeenOpening>;
  /** When the product is in shops, or the card in hands; Infinity for never. */
  readonly inHands: Instant;
  /** What the site shows of any card. */
  readonly shows: ReadonlySet<string>;
}

/** The schedule of a card as it stands. */
export function scheduleSeen(property: PropertyFile, plan: PlanFile, card: Card): SeenSchedule {
  const schedule = scheduleOf(property);
  const hold = cardHold(schedule, plan, card);
  const fields = Object.keys(card.front.holds ?? {}).map(
    (field) => [`field ${field}`, fieldHold(schedule, hold, card, field)] as const,
  );
  const spans = heldSpans(card.bio).map(
    (span) => [`words ${span.text}`, join(hold, holdNamed(schedule, span.hold))] as const,
  );
  return {
    openings: new Map(
      [['card', hold] as const, ...fields, ...spans].map(([what, own]) => [
        what,
        openingOf(schedule, own),
      ]),
    ),
    inHands: inHands(plan, card),
    shows: showsOf(property),
  };
}

function openingOf(schedule: Schedule, hold: Hold): SeenOpening {
  return {
    opens: liftOf(schedule, hold),
    absent: openingsOf(schedule, hold).some(({ absent }) => absent),
  };
}

/** What the site shows of any card: such as `bio front`, `art back`. */
export function showsOf({ site }: PropertyFile): ReadonlySet<string> {
  const shows = site?.shows;
  if (shows === undefined || shows === 'none') return new Set();
  return new Set(
    Object.entries(shows).flatMap(([what, how]) =>
      how === 'none' ? [] : how === 'both' ? [`${what} front`, `${what} back`] : [`${what} front`],
    ),
  );
}

/**
 * What of a card opens, shows or ships earlier now than a person saw it, in words; nothing if their
 * decision still holds. What was not held apart when they saw it opened with the card.
 */
export function earlierThanSeen(
  seen: SeenSchedule,
  now: SeenSchedule,
  part: Decision['part'] = 'web',
): readonly string[] {
  const card = seen.openings.get('card');
  const whole = now.openings.get('card');
  const openings = new Set([...seen.openings.keys(), ...now.openings.keys()]);
  return [
    ...[...openings].filter((what) => {
      if (!concerns(what, part)) return false;
      const was = seen.openings.get(what) ?? card;
      const is = now.openings.get(what) ?? whole;
      return was !== undefined && is !== undefined && isEarlier(was, is);
    }),
    ...(now.inHands < seen.inHands ? ['in hands'] : []),
    ...[...now.shows].filter((what) => !seen.shows.has(what)).map((what) => `site ${what}`),
  ];
}

/**
 * What shows at an instant although a person saw that it would not, in words; nothing if their
 * decision still holds for a site of that instant. What is still held then plays no part.
 */
export function shownBeforeSeen(
  seen: SeenSchedule,
  now: SeenSchedule,
  at: Instant,
): readonly string[] {
  const whole = seen.openings.get('card');
  const early = [...now.openings].filter(([what, { opens }]) => {
    const was = seen.openings.get(what) ?? whole;
    return opens <= at && was !== undefined && was.opens > at;
  });
  const isListed = now.openings.get('card')?.absent === false;
  return [
    ...early.map(([what]) => what),
    ...(isListed && whole?.absent === true && whole.opens > at ? ['card listed'] : []),
    ...[...now.shows].filter((what) => !seen.shows.has(what)).map((what) => `site ${what}`),
  ];
}

/** Whether a part is voided when this opens earlier: a picture has nothing to do with held words. */
function concerns(what: string, part: Decision['part']): boolean {
  if (what === 'card' || part === 'web') return true;
  const isOfPicture = /^field image(?:\.|$)/.test(what);
  if (part === 'image') return isOfPicture;
  return part === 'copy' && !isOfPicture;
}

/** Earlier, or with a placeholder where there was to be no trace. */
function isEarlier(was: SeenOpening, is: SeenOpening): boolean {
  return is.opens < was.opens || (was.absent && !is.absent);
}
