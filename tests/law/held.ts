import type { Person } from '../../schema/index.js';
import type { Static } from 'typebox';
import type { Plain, PlainCard, PlainSet } from './plain.js';

/**
 * What is held, worked out anew from the words of the law, so that the tests share no mistake with
 * the gate. Nothing here imports from the pipeline.
 */

/** Who looks, and when (milliseconds since 1970). */
export interface Eye {
  readonly at: number;
  /** Earlier instants at which they looked too, and still know what they saw; none if not said. */
  readonly before?: readonly number[];
  /** Null for the public. */
  readonly person: Static<typeof Person> | null;
}

/** Each time that somebody looks, by itself. */
export function looks({ at, before = [], person }: Eye): Eye[] {
  return [at, ...before].map((instant) => ({ at: instant, person }));
}

export type Standing = 'open' | 'placeholder' | 'absent';

/** A thing that states a hold: by its own keys, or the id that `holds` and `held:` name. */
export type Stating = string | { spoiler?: string; embargo?: string[] };

interface Opening {
  readonly id: string;
  /** When it lifts; Infinity for never. */
  readonly lift: number;
  readonly absent: boolean;
  readonly announced: boolean;
}

/** Milliseconds of an RFC 9557 instant; the offset alone says when it is. */
export function momentOf(text: string): number {
  return Date.parse(text.replace(/\[.*$/, ''));
}

function liftOf(stated: string | undefined, first: boolean): number {
  if (stated === undefined) return first ? -Infinity : Infinity;
  return stated === 'unset' ? Infinity : momentOf(stated);
}

/** Everything that holds what lies in these things: the highest level, and each embargo. */
function openings(plain: Plain, things: readonly Stating[]): Opening[] {
  const { levels, embargoes = [] } = plain.property;
  const ids = things.flatMap((thing) =>
    typeof thing === 'string' ? [thing] : [thing.spoiler ?? [], thing.embargo ?? []].flat(),
  );
  const highest = Math.max(0, ...ids.map((id) => levels.findIndex((level) => level.id === id)));
  const named = [...new Set(ids)].filter((id) => !levels.some((level) => level.id === id));
  const known = named.flatMap((id) => embargoes.find((embargo) => embargo.id === id) ?? []);
  const unknown = named.filter((id) => !embargoes.some((embargo) => embargo.id === id));
  return [
    ...levels.filter((_, index) => index === highest),
    ...known,
    ...unknown.map((id) => ({ id, lift: 'unset', held: 'absent' as const, announce: false })),
  ].map((stated) => {
    const lift = liftOf(stated.lift, stated === levels[0]);
    const absent = stated.held === 'absent';
    const announced = stated.announce !== false && !absent && lift !== Infinity;
    return { id: stated.id, lift, absent, announced };
  });
}

/** Whether someone may know of a level or an embargo before it lifts. */
function cleared(plain: Plain, id: string, { person }: Eye): boolean {
  if (person === null) return false;
  const order = plain.property.levels.map((level) => level.id);
  if (!order.includes(id)) return person.knows?.includes(id) ?? false;
  return order.indexOf(id) <= order.indexOf(person.clearance);
}

export function standing(plain: Plain, eye: Eye, ...things: readonly Stating[]): Standing {
  const held = openings(plain, things).filter(
    ({ id, lift }) => lift > eye.at && !cleared(plain, id, eye),
  );
  if (held.length === 0) return 'open';
  return held.some(({ absent }) => absent) ? 'absent' : 'placeholder';
}

/** The announced opening of what these things hold; null if there is none. */
export function announcedOpening(
  plain: Plain,
  eye: Eye,
  ...things: readonly Stating[]
): number | null {
  const held = openings(plain, things).filter(({ lift }) => lift > eye.at);
  if (held.length === 0 || held.some(({ announced }) => !announced)) return null;
  return Math.max(...held.map(({ lift }) => lift));
}

/** What a subset lies in and is. */
export function aboutSubset(set: PlainSet, id: string): Stating[] {
  return [set.plan, ...set.plan.subsets.filter((subset) => subset.id === id)];
}

/**
 * Whether the odds of what a product packs are told: of a subset that is open, or that is held and in
 * the packs of a shop by now; of an open parallel of anything listed; of nothing that is no part of
 * the set.
 */
export function oddsStanding(plain: Plain, eye: Eye, { plan }: PlainSet, of: string): Standing {
  const isListed = (id: string): boolean =>
    plan.subsets.some(
      (subset) => subset.id === id && standing(plain, eye, plan, subset) !== 'absent',
    );
  const subset = plan.subsets.find(({ id }) => id === of);
  if (subset) {
    const is = standing(plain, eye, plan, subset);
    const { street } = plan;
    const streets = typeof street === 'object' ? Object.values(street) : [street ?? []].flat();
    const isInShops = eye.person === null && streets.some((at) => momentOf(at) <= eye.at);
    return is === 'placeholder' && isInShops ? 'open' : is;
  }
  const parallel = (plan.parallels ?? []).find(({ id }) => id === of);
  if (!parallel || standing(plain, eye, plan, parallel) !== 'open') return 'absent';
  return parallel.of.some(isListed) ? 'open' : 'absent';
}

/** What a card lies in and is. */
export function aboutCard(set: PlainSet, card: PlainCard): Stating[] {
  return [...aboutSubset(set, card.subset), card.front];
}

/** What a field of a card lies in and is: `facts` holds every `facts.X` too. */
export function aboutField(set: PlainSet, card: PlainCard, field: string): Stating[] {
  const holds = card.front.holds ?? {};
  const whole = field.replace(/\..*$/, '');
  const own = [...new Set([whole, field])].flatMap((key) => holds[key] ?? []);
  return [...aboutCard(set, card), ...own];
}

/** A card with its set and how it stands. */
export interface Placed {
  readonly set: PlainSet;
  readonly card: PlainCard;
  readonly standing: Standing;
}

/** Every card of the content, as it stands for an audience. */
export function placed(plain: Plain, eye: Eye): Placed[] {
  return plain.sets.flatMap((set) =>
    set.cards.map((card) => ({
      set,
      card,
      standing: standing(plain, eye, ...aboutCard(set, card)),
    })),
  );
}

/** Whether a card is among those sent to a person; whom it depicts counts only if that is open. */
export function sent(plain: Plain, eye: Eye, set: PlainSet, card: PlainCard): boolean {
  const where = eye.person?.sees;
  if (!where) return true;
  const subset = set.plan.subsets.find((candidate) => candidate.id === card.subset);
  const known = standing(plain, eye, ...aboutField(set, card, 'image.depicts')) === 'open';
  const depicted = known ? (card.front.image?.depicts ?? []) : [];
  return (
    (where.subset?.includes(card.subset) ?? true) &&
    (where.group?.includes(subset?.group ?? '') ?? true) &&
    (where.depicts?.some((name) => depicted.includes(name)) ?? true)
  );
}

export function isCoded(set: PlainSet, card: PlainCard): boolean {
  const subset = set.plan.subsets.find((candidate) => candidate.id === card.subset);
  return subset !== undefined && typeof subset.numbers === 'object' && 'codes' in subset.numbers;
}

/** Whether the licence lets the public see a kind of field; persons see all kinds. */
export function shows(plain: Plain, eye: Eye, kind: 'bio' | 'art' | 'facts' | 'credits'): boolean {
  if (eye.person !== null) return true;
  const stated = plain.property.site?.shows;
  if (stated === undefined || stated === 'none') return false;
  return stated[kind] !== undefined && stated[kind] !== 'none';
}
