import {
  identityOf,
  instantOf,
  spotOf,
  subsetOf,
  writeInstant,
  type Card,
  type CardSet,
} from '../../model/index.js';
import { packedOf } from './plan.js';
import type { Remark } from '../rule.js';
import type { Subject } from '../subject.js';

/** Redemptions that say another day than the cards that are sent for them. */
export function redemptionDays({ sets, property }: Subject): readonly Remark[] {
  return sets.flatMap((set) => {
    const { redemptions = [] } = set.plan.value;
    if (redemptions.length === 0) return [];
    const cards = new Map(set.cards.map((card) => [identityOf(card), card]));
    return redemptions.flatMap(({ sends, ships }, at): readonly Remark[] => {
      if (ships === undefined) return [];
      for (const id of sends) {
        const sent = sentOn(set, cards.get(id), property.zone);
        if (sent === null || sent.day === ships) continue;
        return [
          {
            spot: spotOf(set.plan.source, ['redemptions', at, 'ships']),
            message: `${id} is sent on another day than this redemption says`,
            found: ships,
            expected: sent.day,
            related: [{ message: 'the day on which it is sent', spot: sent.spot() }],
          },
        ];
      }
      return [];
    });
  });
}

interface Sent {
  /** YYYY-MM-DD in the property's zone, or unset. */
  readonly day: string;
  readonly spot: () => Remark['spot'];
}

/** When a card is sent, if it or its subset says so. */
function sentOn({ plan }: CardSet, card: Card | undefined, zone: string): Sent | null {
  if (card === undefined) return null;
  const { ships } = card.front;
  if (ships !== undefined) {
    return { day: dayOf(ships, zone), spot: () => spotOf(card.source, ['ships']) };
  }
  const ofSubset = subsetOf(plan.value, card.subset)?.ships;
  if (ofSubset === undefined) return null;
  const at = plan.value.subsets.findIndex(({ id }) => id === card.subset);
  return {
    day: dayOf(ofSubset, zone),
    spot: () => spotOf(plan.source, ['subsets', at, 'ships']),
  };
}

const DAY_LENGTH = 'YYYY-MM-DD'.length;

function dayOf(ships: string, zone: string): string {
  return ships === 'unset' ? ships : writeInstant(instantOf(ships), zone).slice(0, DAY_LENGTH);
}

/** Lines of subsets that are found by redemption, of which no terms are said. */
export function redemptionsUnsaid({ sets }: Subject): readonly Remark[] {
  return sets.flatMap((set) => {
    if (packedOf(set) === null) return [];
    const { subsets, products = [], redemptions = [] } = set.plan.value;
    const said = new Set(redemptions.map(({ found }) => found));
    const asked = new Set(
      subsets
        .filter(({ found, id }) => found === 'redemption' && !said.has(id))
        .map(({ id }) => id),
    );
    return products.flatMap(({ title, contents = [] }, at) =>
      contents.flatMap(({ of }, position): readonly Remark[] => {
        if (!asked.delete(of)) return [];
        return [
          {
            spot: spotOf(set.plan.source, ['products', at, 'contents', position, 'of']),
            message: `\`${title}\`: \`${of}\` is found by redemption, and nothing says what is sent, and when`,
            found: of,
            expected: `\`redemptions: [{ found: ${of}, sends, ships, redeemBy }]\``,
          },
        ];
      }),
    );
  });
}
