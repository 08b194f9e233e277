import type { PropertyFile } from '../../schema/index.js';
import { subsetOf, type Instant } from '../model/index.js';
import type { See } from '../select/index.js';
import { viewCard } from './card.js';
import { lensOf, type Lens } from './lens.js';
import { TABLES } from './tables.js';

/** How the public of an instant sees single cards: what an approval is judged by. */
export function publicSight(at: Instant): See {
  const lenses = new Map<PropertyFile, Lens>();
  return (property, set, card) => {
    const lens = lenses.get(property) ?? lensOf(property, { kind: 'public', at });
    lenses.set(property, lens);
    const subset = subsetOf(set.plan.value, card.subset);
    const seen = subset ? viewCard(card, set, subset, lens, TABLES) : null;
    return seen && { state: seen.state, all: JSON.stringify(seen) };
  };
}
