import type { PublicNews } from '../../../schema/index.js';
import { difference, type Change, type View, type ViewCard } from '../../gate/index.js';
import type { Instant } from '../../model/index.js';

type NewsCard = PublicNews['cards'][number];
type Field = NewsCard['fields'][number];

/** Of so many steps of time the site says what was new. */
export const STEPS_TOLD = 6;

const FIELDS = [
  'name',
  'bio',
  'facts',
  'texts',
  'image',
  'signers',
  'credits',
] as const satisfies readonly Field[];

/**
 * What each step of time told, newest first. What is still held at the newest view has no part in
 * it: how that stood before may tell what holds it. A step that told nothing is left out.
 * @param earlier the public's views of the steps before, newest first.
 */
export function newsOf(
  view: View,
  earlier: readonly View[],
  say: (at: Instant) => string,
): PublicNews[] {
  const later = [view, ...earlier];
  const news = earlier.map((before, index) => newsBetween(before, later[index] ?? view, view, say));
  return news.filter(({ cards, parallels }) => cards.length + parallels.length > 0);
}

function newsBetween(
  before: View,
  after: View,
  now: View,
  say: (at: Instant) => string,
): PublicNews {
  const { asOf } = after;
  const more = moreOf(difference(before, after).cards);
  return {
    at: say(asOf ?? 0),
    cards: now.sets.flatMap((set) =>
      set.subsets.flatMap((subset) =>
        subset.cards.flatMap((card, at): NewsCard[] => {
          const place = { set: set.id, subset: subset.id, at };
          if (card.revealed === asOf) return [{ ...place, what: 'revealed', fields: [] }];
          if (card.state !== 'shown') return [];
          const fields = more.get(placeOf(set.id, subset.id, card)) ?? [];
          return fields.length === 0 ? [] : [{ ...place, what: 'more', fields: [...fields] }];
        }),
      ),
    ),
    parallels: now.sets.flatMap(({ id: set, parallels }) =>
      parallels.filter(({ revealed }) => revealed === asOf).map(({ id }) => ({ set, id })),
    ),
  };
}

/** Which fields tell more, by the place of their card: of cards that were shown before, too. */
function moreOf(changes: readonly Change[]): ReadonlyMap<string, readonly Field[]> {
  return new Map(
    changes.flatMap(({ set, subset, before, after }) => {
      if (before?.state !== 'shown' || after?.state !== 'shown') return [];
      const fields = FIELDS.filter((field) => isMore(before[field], after[field]));
      return [[placeOf(set, subset, after), fields] as const];
    }),
  );
}

/** By number and letter; a card without a number by its name. */
function placeOf(set: string, subset: string, { number, letter, name }: ViewCard): string {
  return JSON.stringify([set, subset, number, letter, number === null ? name : null]);
}

function isMore(before: unknown, after: unknown): boolean {
  const isNothing = after === null || (Array.isArray(after) && after.length === 0);
  return !isNothing && JSON.stringify(before) !== JSON.stringify(after);
}
