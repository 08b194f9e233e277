import type { Subset } from '../../schema/index.js';
import { isIssued, type Card } from '../model/index.js';

export type Carried = NonNullable<Subset['carries']>;

/** What cards of each kind are called. */
export const CALLED: Readonly<Record<Carried, string>> = {
  autograph: 'autographs',
  relic: 'relics',
  sketch: 'sketches',
};

/** What a subset shows that its cards carry, and by what it shows it; null if it shows nothing. */
export function carriedBy(
  plan: Subset,
  cards: readonly Card[],
): { readonly what: Carried; readonly by: string } | null {
  const issued = cards.filter(isIssued);
  if (issued.some(({ front }) => front.relic)) return { what: 'relic', by: 'cards with `relic`' };
  if (issued.some(({ front }) => front.signers)) {
    return { what: 'autograph', by: 'cards with `signers`' };
  }
  return plan.roster === undefined ? null : { what: 'sketch', by: 'a roster of artists' };
}
