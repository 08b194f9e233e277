import type { RevealsReport } from '../../schema/index.js';
import { writeInstant } from '../model/index.js';
import type { Released } from '../select/index.js';
import { timeline } from '../status/index.js';

/** What opens at each step of time, as `reveals --format json` prints it. */
export function revealsReport(released: Released): RevealsReport {
  const { zone } = released.property;
  return {
    steps: timeline(released).map(({ at, opens, inShops, titles, names, cards, ...counts }) => ({
      at: writeInstant(at, zone),
      opens: [...opens],
      inShops: [...inShops],
      titles: [...titles],
      names: [...names],
      cards: cards.map((card) => ({ ...card, fields: [...card.fields] })),
      ...counts,
    })),
    difference: null,
  };
}
