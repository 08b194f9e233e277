import {
  NEVER,
  inHands,
  instantOrNever,
  opensLater,
  streetOf,
  type CardSet,
  type Hold,
  type Instant,
} from '../../model/index.js';
import { bySubtraction, type PublicOdds } from '../../packs/index.js';
import type { Holder } from './holder.js';
import { kindsOf } from './odds-kinds.js';
import type { SaidOdds } from './odds-read.js';
import type { ClaimText } from './texts.js';
import { knownHold, traceHold } from '../known-hold.js';
import type { Subject } from '../subject.js';

/** What follows from odds that a text says: that there is some of it. */
export interface ToldKind {
  readonly id: string;
  readonly hold: Hold;
}

type Product = NonNullable<CardSet['plan']['value']['products']>[number];

/** What is held until later than a text, of the kinds in the packs of a set. */
type HeldKinds = ReadonlyMap<string, Hold>;

/**
 * Something held whose odds follow by subtraction from what a text says and from the odds that are
 * public then: null if nothing does. Of what is held with a placeholder odds are public once the set
 * is in shops, since it is in the packs then; of what is absent never. It looks at no card.
 */
export function toldByOdds(
  said: SaidOdds,
  text: ClaimText,
  span: readonly [from: number, to: number],
  own: string | null,
  subject: Subject,
): ToldKind | null {
  const hold = text.told.holdOf(...span);
  for (const set of text.sets) {
    const held = heldThen(set, hold, instantOfText(text, set), subject);
    if (held.size === 0) continue;
    for (const whats of said.readings) {
      const kinds = kindsOf(whats, set) ?? [];
      const told = toldOf(kinds, said, productsOf(set, said.product ?? own), held);
      if (told) return told;
    }
  }
  return null;
}

/** When a text is read: cards, wrappers and boxes when the set is in shops, other texts when they go. */
function instantOfText({ sales, card }: ClaimText, { plan }: CardSet): Instant {
  if (card) return inHands(plan.value, card);
  const isPrinted = !sales || sales.front.kind === 'wrapper' || sales.front.kind === 'box';
  return isPrinted ? streetOf(plan.value) : instantOrNever(sales.front.goes);
}

function heldThen({ plan }: CardSet, hold: Hold, at: Instant, { schedule }: Subject): HeldKinds {
  const isInShops = at !== NEVER && at >= streetOf(plan.value);
  const held = new Map<string, Hold>();
  for (const subset of plan.value.subsets) {
    const of = knownHold(schedule, plan.value, subset);
    if (of && opensLater(isInShops ? traceHold(schedule, of) : of, hold)) held.set(subset.id, of);
  }
  for (const parallel of plan.value.parallels ?? []) {
    const of = knownHold(schedule, plan.value, parallel);
    if (of && opensLater(of, hold)) held.set(parallel.id, of);
  }
  return held;
}

function productsOf({ plan }: CardSet, product: string | null): readonly Product[] {
  return (plan.value.products ?? []).filter(({ id }) => product === null || id === product);
}

/** Everything held of a sum together, under a name that no plan has. */
const HELD = 'what is held';

function toldOf(
  kinds: readonly string[],
  said: SaidOdds,
  products: readonly Product[],
  held: HeldKinds,
): ToldKind | null {
  const among = products.filter(({ contents = [] }) =>
    contents.some(({ of }) => kinds.includes(of)),
  );
  const first = among
    .flatMap(({ contents = [] }) => contents)
    .find(({ of }) => kinds.includes(of) && held.has(of));
  const hold = first && held.get(first.of);
  if (!first || !hold) return null;
  return among.every((product) => isMoreThanOpen(kinds, said, product, held))
    ? { id: first.of, hold }
    : null;
}

/** Whether a product must hold more of these kinds than what is public of them. */
function isMoreThanOpen(
  kinds: readonly string[],
  said: SaidOdds,
  product: Product,
  held: HeldKinds,
): boolean {
  const lines = (product.contents ?? []).filter(({ of }) => !held.has(of));
  const open = lines.flatMap(({ of, odds }): readonly PublicOdds[] =>
    odds === undefined ? [] : [{ kinds: [of], oneIn: odds, step: 'whole' }],
  );
  const own = lines.map(({ of }) => of).filter((of) => kinds.includes(of));
  const oneIn = packsForOne(said, product);
  if (oneIn === null) return false;
  const sum: PublicOdds = { kinds: [...own, HELD], oneIn, step: 'whole' };
  return bySubtraction([HELD], [...open, sum]).some(({ told }) => told);
}

/** Packs for one, rounded up; null where the size of a box or case is not said. */
function packsForOne({ rate, count }: SaidOdds, product: Product): number | null {
  const packs = packsIn(rate.unit, product);
  return packs === null ? null : Math.max(1, Math.ceil((rate.per * packs) / count));
}

function packsIn(unit: Holder, { box, case: boxes }: Product): number | null {
  if (unit === 'pack') return 1;
  if (box === undefined) return null;
  if (unit === 'box') return box;
  return boxes === undefined ? null : box * boxes;
}
