import type { PlanFile, Subset } from '../../schema/index.js';
import type { Card, CardSet } from './content.js';
import { holdNamed, join, statedHold, type Hold, type Schedule } from './hold.js';
import { NEVER, instantOf, instantOrNever, type Instant } from './instant.js';

/** The plan's entry for a folder of cards. */
export function subsetOf(plan: PlanFile, id: string): Subset | undefined {
  return plan.subsets.find((subset) => subset.id === id);
}

/** The hold of a subset: its own and that of its set. */
export function subsetHold(schedule: Schedule, plan: PlanFile, subset: string): Hold {
  return join(statedHold(schedule, plan), statedHold(schedule, subsetOf(plan, subset) ?? {}));
}

/** The hold of a card: its own, its subset's and its set's. */
export function cardHold(schedule: Schedule, plan: PlanFile, card: Card): Hold {
  return join(subsetHold(schedule, plan, card.subset), statedHold(schedule, card.front));
}

/**
 * What `holds` says of a field, added to the card's hold. `facts` holds every `facts.X` too; and
 * `signers.X`, part of a field that has no parts here, holds all of `signers`.
 */
export function fieldHold(schedule: Schedule, hold: Hold, card: Card, field: string): Hold {
  if (card.front.holds === undefined) return hold;
  const [whole = field] = field.split('.');
  const part = `${field}.`;
  return Object.entries(card.front.holds).reduce(
    (sum, [key, id]) =>
      key === whole || key === field || key.startsWith(part)
        ? join(sum, holdNamed(schedule, id))
        : sum,
    hold,
  );
}

/** When a set is first in shops anywhere; never if the plan has no street date. */
export function streetOf(plan: PlanFile): Instant {
  if (plan.street === undefined) return NEVER;
  if (typeof plan.street === 'string') return instantOf(plan.street);
  return Math.min(...Object.values(plan.street).map(instantOf));
}

/** When a card is in hands: its own `ships`, else its subset's, else the set's street date. */
export function inHands(plan: PlanFile, card: Card): Instant {
  const stated = card.front.ships ?? subsetOf(plan, card.subset)?.ships;
  return stated === undefined ? streetOf(plan) : instantOrNever(stated);
}

/** Cards of a subset, in the order of the set. */
export function cardsOf(set: CardSet, subset: string): readonly Card[] {
  return set.cards.filter((card) => card.subset === subset);
}
