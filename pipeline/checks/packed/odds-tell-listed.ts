import {
  OPEN,
  liftOf,
  subsetOf,
  type CardSet,
  type Instant,
  type Stated,
} from '../../model/index.js';
import type { PlannedCard } from '../../packs/index.js';
import { knownField, knownHold, traceHold } from '../known-hold.js';
import type { Packed } from './plan.js';
import type { Subject } from '../subject.js';

/** From when the public sees a thing of a set: its first trace, and all of it. */
export interface Shows {
  readonly traced: Instant;
  readonly open: Instant;
}

/** A card of a subset: from when it is listed, and from when its run is public. */
export interface ListedCard {
  readonly isVariation: boolean;
  /** Copies, those in reserve among them; null if nothing says how many. */
  readonly run: number | null;
  readonly listed: Instant;
  readonly told: Instant;
}

/** From when a subset, parallel or product shows; what names an unknown level is taken to be open. */
export function showsOf(stated: Stated, { plan }: CardSet, { schedule }: Subject): Shows {
  const hold = knownHold(schedule, plan.value, stated) ?? OPEN;
  return { traced: liftOf(schedule, traceHold(schedule, hold)), open: liftOf(schedule, hold) };
}

/** The cards of each subset that are packed. */
export function listedCards(
  set: CardSet,
  packed: Packed,
  subject: Subject,
): ReadonlyMap<string, readonly ListedCard[]> {
  return new Map(
    packed.plan.kinds
      .filter(({ what }) => what === 'subset')
      .map(({ id, cards }) => {
        const around = showsOf(subsetOf(set.plan.value, id) ?? {}, set, subject);
        return [id, cards.map((card) => listedCard(card, around, packed, subject))];
      }),
  );
}

/** A card that is planned and has no file yet shows with its subset. */
function listedCard(
  { id, variationOf, stated }: PlannedCard,
  around: Shows,
  { cards }: Packed,
  { holds, schedule }: Subject,
): ListedCard {
  const card = cards.get(id);
  const hold = card && holds.get(card);
  const own = hold && knownField(card, 'run', hold, schedule);
  return {
    isVariation: variationOf !== undefined,
    run: stated ?? null,
    listed: hold ? liftOf(schedule, traceHold(schedule, hold)) : around.traced,
    told: own ? liftOf(schedule, own) : around.open,
  };
}
