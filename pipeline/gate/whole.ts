import type { CardFront, Decision } from '../../schema/index.js';
import { cardHold, identityOf, type Card, type CardSet } from '../model/index.js';
import { CARD_PARTS, COVERED_BY, type CardPart } from '../review/index.js';
import type { Released } from '../select/index.js';
import { viewCard } from './card.js';
import { heldFields, heldWords } from './held-apart.js';
import { lensOf, type Audience, type Lens } from './lens.js';
import { isSalesWhole } from './sales.js';
import { viewSet } from './set.js';
import { TABLES } from './tables.js';

/**
 * The parts of each card and sales text of which nothing is hidden from an audience, so that they can
 * decide on them: by `set/subset/id` and `set/sales/id`. House matter: a part that is missing tells
 * that something of it is held.
 */
export function shownWhole(
  released: Released,
  audience: Audience,
): ReadonlyMap<string, readonly Decision['part'][]> {
  const lens = lensOf(released.property, audience);
  return new Map(
    released.sets
      .filter((set) => viewSet(set, lens, TABLES) !== null)
      .flatMap((set) => [
        ...set.cards.map((card): [string, readonly Decision['part'][]] => [
          `${set.id}/${identityOf(card)}`,
          wholeParts(card, set, lens),
        ]),
        ...set.sales.map((text): [string, readonly Decision['part'][]] => [
          `${set.id}/sales/${text.id}`,
          isSalesWhole(text, set, lens) ? ['sales'] : [],
        ]),
      ]),
  );
}

/** A card that is not issued has nothing to decide on. */
function wholeParts(card: Card, set: CardSet, lens: Lens): readonly CardPart[] {
  const subset = set.plan.value.subsets.find(({ id }) => id === card.subset);
  const seen = subset ? viewCard(card, set, subset, lens, TABLES) : null;
  if (seen?.state !== 'shown') return [];
  const hidden = hiddenKeys(card, set, lens);
  return CARD_PARTS.filter((part) =>
    part === 'web' ? hidden.size === 0 : keysOf(part).every((key) => !hidden.has(key)),
  );
}

/** Keys of the front matter of which something is held from whoever looks; `bio` for held words. */
function hiddenKeys(card: Card, set: CardSet, lens: Lens): ReadonlySet<string> {
  const apart = { card, hold: cardHold(lens.schedule, set.plan.value, card), lens };
  const fields = heldFields(apart).filter(([, hold]) => lens.standing(hold) !== 'open');
  const words = heldWords(apart).filter(([, hold]) => lens.standing(hold) !== 'open');
  return new Set([
    ...fields.map(([field]) => field.split('.')[0] ?? field),
    ...(words.length > 0 ? ['bio'] : []),
  ]);
}

/** The legal lines that a card prints depend on whoever is in its picture. */
function keysOf(part: CardPart): readonly string[] {
  const table: Readonly<Record<keyof CardFront, readonly CardPart[]>> = COVERED_BY;
  const own = Object.entries(table).flatMap(([key, parts]) => (parts.includes(part) ? [key] : []));
  return part === 'layout' ? [...own, 'image'] : own;
}
