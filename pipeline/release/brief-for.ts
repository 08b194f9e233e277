import type { PeopleFile, PropertyFile } from '../../schema/index.js';
import { view } from '../gate/index.js';
import { scheduleOf, type Instant } from '../model/index.js';
import { briefOf, briefPage, ownBrief } from '../out/brief/index.js';
import type { Released } from '../select/index.js';

type Person = PeopleFile['people'][number];

/** A page for one person, to be sealed before it goes anywhere; or why there is none. */
export type PersonBriefing =
  | { readonly ok: true; readonly page: string }
  | {
      readonly ok: false;
      readonly why: 'nothing public' | 'not cleared by then' | 'sees some cards';
    };

/**
 * A brief for one person: what may be said at an instant, what they must not raise, and what they
 * take out of a stack. It tells them nothing that they may not know now: for an instant to come that
 * is so only if they are cleared for all that lifts until then and are sent every card.
 */
export function briefFor(
  released: Released,
  person: Person,
  { at, now }: { readonly at: Instant; readonly now: Instant },
): PersonBriefing {
  const { property } = released;
  if (at > now && person.sees) return { ok: false, why: 'sees some cards' };
  if (!isClearedUntil(property, person, at, now)) return { ok: false, why: 'not cleared by then' };
  const shown = view(released, { kind: 'public', at });
  const own = view(released, { kind: 'person', person, at });
  const anybody = view(released, { kind: 'person', person: uncleared(property, person), at });
  if (!shown || !own || !anybody) return { ok: false, why: 'nothing public' };
  return { ok: true, page: briefPage(briefOf(shown, at > now), ownBrief(own, anybody)) };
}

function isClearedUntil(
  property: PropertyFile,
  { clearance, knows = [] }: Person,
  at: Instant,
  now: Instant,
): boolean {
  const { levels, embargoes } = scheduleOf(property);
  const highest = levels.findIndex(({ id }) => id === clearance);
  const unknown = [
    ...levels.slice(highest + 1),
    ...[...embargoes.values()].filter(({ id }) => !knows.includes(id)),
  ];
  return unknown.every(({ lift }) => lift <= now || lift > at);
}

/** The same person before anybody told them anything. */
function uncleared({ levels }: PropertyFile, person: Person): Person {
  const [first] = levels;
  return { ...person, clearance: first?.id ?? '', knows: [] };
}
