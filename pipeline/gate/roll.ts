import { identityOf } from '../model/index.js';
import type { Released } from '../select/index.js';
import { viewCard } from './card.js';
import { lensOf, type Audience } from './lens.js';
import { TABLES } from './tables.js';
import { viewSet } from './set.js';

/** What a view does with each card, by `set/subset/id`: for the team's own records. */
export interface Roll {
  readonly shown: readonly string[];
  readonly placeholders: readonly string[];
  /** Cards that leave no trace in the view. */
  readonly left: readonly string[];
}

/** Calls the roll of all cards for an audience. House matter: it names what is held. */
export function roll(released: Released, audience: Audience): Roll {
  const lens = lensOf(released.property, audience);
  const entries = released.sets.flatMap((set) => {
    const setGone = viewSet(set, lens, TABLES) === null;
    return set.cards.map((card) => {
      const subset = set.plan.value.subsets.find((candidate) => candidate.id === card.subset);
      const seen = subset && !setGone ? viewCard(card, set, subset, lens, TABLES) : null;
      return { key: `${set.id}/${identityOf(card)}`, state: seen?.state ?? 'left' };
    });
  });
  const having = (...states: string[]): string[] =>
    entries.filter((entry) => states.includes(entry.state)).map((entry) => entry.key);
  return {
    shown: having('shown', 'not issued'),
    placeholders: having('placeholder'),
    left: having('left'),
  };
}
