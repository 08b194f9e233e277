import type { CardFront, Subset } from '../../schema/index.js';
import { OPEN, fieldHold, type Card, type CardSet, type Hold } from '../model/index.js';
import type { Lens, Showing, Standing } from './lens.js';
import type { Tables } from './tables.js';

/** Which field of `site.shows` a key of a card goes with. */
const GOES_WITH: Partial<Record<keyof CardFront, keyof Showing>> = {
  bio: 'bio',
  texts: 'bio',
  image: 'art',
  facts: 'facts',
  credits: 'credits',
};

/** A card with what the gate has worked out about it. */
export interface Looked {
  readonly card: Card;
  readonly set: CardSet;
  readonly subset: Subset;
  readonly hold: Hold;
  readonly open: boolean;
  readonly lens: Lens;
  readonly tables: Tables;
}

/** Whether the audience ever gets a key of the card, however it is held. */
export function admitted({ lens, tables }: Looked, key: keyof CardFront): boolean {
  const goesWith = GOES_WITH[key];
  return lens.admits(tables.card[key]) && (goesWith === undefined || lens.showing[goesWith]);
}

/** How a field stands: what is open on a placeholder too has no hold but what `holds` says. */
export function standingOf(looked: Looked, key: keyof CardFront, field: string): Standing {
  return looked.lens.standing(holdOf(looked, key, field));
}

/** Whether a field is shown: the tables admit its key, and nothing holds it. */
export function see(looked: Looked, key: keyof CardFront, field: string = key): boolean {
  return admitted(looked, key) && standingOf(looked, key, field) === 'open';
}

/** The value of a key, if it is shown: what is held is as if it were not there. */
export function read<K extends keyof CardFront>(looked: Looked, key: K): CardFront[K] | undefined {
  return see(looked, key) ? looked.card.front[key] : undefined;
}

/** How much of the story a field tells that is shown. */
export function toldBy(looked: Looked, key: keyof CardFront, field: string = key): number {
  return looked.lens.told(holdOf(looked, key, field));
}

function holdOf({ card, hold, lens, tables }: Looked, key: keyof CardFront, field: string): Hold {
  const base = tables.card[key] === 'open' ? OPEN : hold;
  return fieldHold(lens.schedule, base, card, field);
}
