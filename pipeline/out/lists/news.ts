import type {
  PublicCard,
  PublicData,
  PublicNews,
  PublicParallel,
  PublicSet,
  PublicSubset,
} from '../../../schema/index.js';

type NewsCard = PublicNews['cards'][number];

/** A card of which a step of time told something, with where it stands. */
export interface NewCard {
  readonly set: PublicSet;
  readonly subset: PublicSubset;
  readonly card: PublicCard;
  readonly what: NewsCard['what'];
  readonly fields: NewsCard['fields'];
}

/** The cards that a step told of. */
export function newCards({ sets }: PublicData, news: PublicNews): readonly NewCard[] {
  return news.cards.flatMap(({ set: setId, subset: subsetId, at, what, fields }) => {
    const set = sets.find(({ id }) => id === setId);
    const subset = set?.subsets.find(({ id }) => id === subsetId);
    const card = subset?.cards[at];
    return set && subset && card ? [{ set, subset, card, what, fields }] : [];
  });
}

/** The parallels that a step told of, with their sets. */
export function newParallels(
  { sets }: PublicData,
  news: PublicNews,
): readonly { readonly set: PublicSet; readonly parallel: PublicParallel }[] {
  return news.parallels.flatMap(({ set: setId, id: parallelId }) => {
    const set = sets.find(({ id }) => id === setId);
    const parallel = set?.parallels.find(({ id }) => id === parallelId);
    return set && parallel ? [{ set, parallel }] : [];
  });
}
