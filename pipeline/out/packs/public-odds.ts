import type { PacksPublic } from '../../../schema/index.js';
import type { View, ViewProduct } from '../../gate/index.js';
import { sayInstant, writeInstant } from '../../model/index.js';
import { BEFORE_ODDS_PRINT, ODDS_CAUTIONS } from '../wording/index.js';

/**
 * The odds that the public may be told, from its view: those of what is held are not in it.
 * @param preview whether the instant is still to come, so that it is not to be passed on.
 * @param only the id of one set; all, if it is not said.
 */
export function publicOdds(
  { sets, asOf, property }: View,
  { preview, only }: { readonly preview: boolean; readonly only?: string },
): PacksPublic {
  const told = sets
    .filter(({ id }) => only === undefined || id === only)
    .map(({ id, title, products }) => ({
      id,
      title,
      products: products.filter(({ odds }) => odds.length > 0).map(productOf),
    }))
    .filter(({ products }) => products.length > 0);
  return {
    preview: preview && asOf !== null ? sayInstant(asOf, property.zone) : null,
    asOf: asOf === null ? null : writeInstant(asOf, property.zone),
    sets: told,
    cautions: [...ODDS_CAUTIONS],
    beforePrint: BEFORE_ODDS_PRINT,
  };
}

function productOf({
  id,
  title,
  pack,
  box,
  odds,
}: ViewProduct): PacksPublic['sets'][number]['products'][number] {
  return {
    id,
    title,
    pack,
    box,
    odds: odds.map((each) => ({ title: each.title, packs: each.packs })),
  };
}
