import {
  OPEN,
  join,
  liftOf,
  spotOf,
  subsetOf,
  type CardSet,
  type Hold,
  type Instant,
  type Spot,
  type Stated,
} from '../../model/index.js';
import { amount } from '../amount.js';
import { knownHold, traceHold } from '../known-hold.js';
import { showsOf } from './odds-tell-listed.js';
import type { Packed } from './plan.js';
import type { Subject } from '../subject.js';

/** Something that the copies or odds of a kind are of, and that the public does not see. */
export interface Unseen {
  /** "Night Signals", "2 cards of Night Signals". */
  readonly what: string;
  /** How many things that is: 1, or so many cards. */
  readonly count: number;
  readonly hold: Hold;
  readonly spot: Spot;
}

/** What the public does not see at an instant of all that a kind is of or is packed in. */
export function unseenOf(
  id: string,
  at: Instant,
  set: CardSet,
  packed: Packed,
  subject: Subject,
): readonly Unseen[] {
  const { source, value } = set.plan;
  const { subsets, parallels = [], products = [] } = value;
  const holdOf = (stated: Stated): Hold => knownHold(subject.schedule, value, stated) ?? OPEN;
  const of = new Set(parallels.find((parallel) => parallel.id === id)?.of ?? [id]);
  const ofSubsets = subsets.flatMap((subset, position): readonly Unseen[] => {
    if (!of.has(subset.id) || subsetOf(value, subset.id) !== subset) return [];
    const spot = spotOf(source, ['subsets', position, 'id']);
    if (showsOf(subset, set, subject).traced > at) {
      return [{ what: subset.title, count: 1, hold: holdOf(subset), spot }];
    }
    const holds = hiddenCards(subset.id, at, packed, subject);
    const count = holds.length;
    const what = `${amount(count, 'card')} of ${subset.title}`;
    return count === 0 ? [] : [{ what, count, hold: holds.reduce(join), spot }];
  });
  const ofProducts = products.flatMap((product, position): readonly Unseen[] => {
    const holdsSome = product.contents?.some((line) => line.of === id) ?? false;
    if (!holdsSome || showsOf(product, set, subject).open <= at) return [];
    const spot = spotOf(source, ['products', position, 'id']);
    return [{ what: product.title, count: 1, hold: holdOf(product), spot }];
  });
  return [...ofSubsets, ...ofProducts];
}

/** The holds of packed cards of a subset that leave no trace yet. */
function hiddenCards(
  subset: string,
  at: Instant,
  { plan, cards }: Packed,
  { holds, schedule }: Subject,
): readonly Hold[] {
  const planned = plan.kinds.find(({ id }) => id === subset)?.cards ?? [];
  return planned.flatMap(({ id }) => {
    const card = cards.get(id);
    const hold = card && holds.get(card);
    return hold && liftOf(schedule, traceHold(schedule, hold)) > at ? [hold] : [];
  });
}
