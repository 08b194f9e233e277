import type { Parallel, Subset } from '../../../schema/index.js';
import {
  identityOf,
  isIssued,
  isVariation,
  numberOf,
  plannedNumbers,
  type Card,
  type CardSet,
} from '../../model/index.js';
import type { Kind, PlannedCard } from '../../packs/index.js';

/** The group whose subsets are the rest of each pack. */
const BASE_GROUP = 'base';

/**
 * The subsets and parallels of a plan as kinds that are packed. A subset of the group `base` that no
 * line names is the rest of each pack.
 */
export function packedKinds(set: CardSet): readonly Kind[] {
  const { subsets, parallels = [], products = [] } = set.plan.value;
  const named = new Set(products.flatMap(({ contents = [] }) => contents.map(({ of }) => of)));
  const folders = new Map<string, Card[]>();
  for (const card of set.cards) {
    const folder = folders.get(card.subset);
    if (folder) folder.push(card);
    else folders.set(card.subset, [card]);
  }
  const cards = new Map<string, readonly PlannedCard[]>();
  const ofSubsets = subsets.flatMap((subset): readonly Kind[] => {
    if (cards.has(subset.id)) return [];
    const own = cardsOfSubset(set, subset, folders.get(subset.id) ?? []);
    cards.set(subset.id, own);
    const base = subset.group === BASE_GROUP && !named.has(subset.id);
    return [kindOfSubset(subset, own, base)];
  });
  return [...ofSubsets, ...parallels.map((parallel) => kindOfParallel(parallel, cards))];
}

function kindOfSubset(
  { id, title, places, copies, reserve, sheet }: Subset,
  cards: readonly PlannedCard[],
  base: boolean,
): Kind {
  const known = new Set(cards.map((card) => card.id));
  return {
    id,
    title,
    what: 'subset',
    base,
    cards,
    ...(places === undefined ? {} : { places }),
    ...(copies === undefined ? {} : { stated: copies }),
    ...(reserve === undefined ? {} : { reserve }),
    ...(sheet === undefined
      ? {}
      : { sheet: { ...sheet, doubled: sheet.doubled?.filter((card) => known.has(card)) ?? [] } }),
  };
}

/** A parallel is of the cards of its subsets, and of no variation of one. */
function kindOfParallel(
  { id, title, of, places, run, copies, reserve }: Parallel,
  cards: ReadonlyMap<string, readonly PlannedCard[]>,
): Kind {
  const parents = [...new Set(of)]
    .flatMap((subset) => cards.get(subset) ?? [])
    .filter(({ variationOf }) => variationOf === undefined);
  return {
    id,
    title,
    what: 'parallel',
    cards: parents.map((card) => ({ id: `${id}/${card.id}`, label: card.label })),
    ...(places === undefined ? {} : { places }),
    ...(run === undefined ? {} : { run }),
    ...(copies === undefined ? {} : { stated: copies }),
    ...(reserve === undefined ? {} : { reserve }),
  };
}

function cardsOfSubset(
  set: CardSet,
  subset: Subset,
  cards: readonly Card[],
): readonly PlannedCard[] {
  if (subset.roster !== undefined) return artistsOf(set, subset);
  const { reserve = 0 } = subset;
  const varied = variationsOf(cards, reserve);
  const taken = new Map<string, number>();
  for (const { variationOf, copies } of varied) {
    taken.set(variationOf, (taken.get(variationOf) ?? 0) + copies);
  }
  const parents = parentsOf(subset, cards).map((parent): PlannedCard => {
    if (!('front' in parent)) return parent;
    const { run, shortPrint } = parent.front;
    const id = identityOf(parent);
    return {
      id,
      label: labelOf(parent),
      ...(run === undefined ? {} : { copies: run - reserve + (taken.get(id) ?? 0), stated: run }),
      ...(shortPrint === undefined ? {} : { shortPrint }),
    };
  });
  const known = new Set(parents.map(({ id }) => id));
  return [...parents, ...varied.filter(({ variationOf }) => known.has(variationOf))];
}

/** Whoever draws its cards: each stands for a card of his or her own. */
function artistsOf(set: CardSet, { id, roster = '' }: Subset): readonly PlannedCard[] {
  return (set.rosters.get(roster)?.value.artists ?? [])
    .filter(({ state }) => state !== 'withdrawn')
    .map(({ name }, at) => ({ id: `${id}/artist ${String(at + 1)}`, label: name }));
}

type Parent = Card | PlannedCard;

/**
 * As many cards as the plan gives numbers to, without those that are not issued: what is missing or
 * misnumbered is told by the rules about numbers, and is packed all the same.
 */
function parentsOf({ id, numbers }: Subset, cards: readonly Card[]): readonly Parent[] {
  const parents = cards.filter((card) => !isVariation(card));
  const planned = plannedNumbers(numbers);
  if (planned === null) return parents.filter(isIssued);
  const bearers = new Map<string, Card>();
  const others: Card[] = [];
  const wanted = new Set(planned);
  for (const card of parents) {
    const number = numberOf(card) ?? '';
    if (wanted.has(number) && !bearers.has(number)) bearers.set(number, card);
    else others.push(card);
  }
  let next = 0;
  return planned.flatMap((number): readonly Parent[] => {
    const card = bearers.get(number) ?? others[next];
    if (!bearers.has(number)) next += 1;
    if (card === undefined) return [{ id: `${id}/${number}`, label: number }];
    return isIssued(card) ? [card] : [];
  });
}

type PlannedVariation = PlannedCard & Required<Pick<PlannedCard, 'variationOf' | 'copies'>>;

/** Variations of which it is said how many there are. */
function variationsOf(cards: readonly Card[], reserve: number): readonly PlannedVariation[] {
  return cards.filter(isIssued).flatMap((card): readonly PlannedVariation[] => {
    const { variation, run } = card.front;
    if (variation === undefined || run === undefined) return [];
    const { of: variationOf } = variation;
    const label = labelOf(card);
    return [{ id: identityOf(card), label, variationOf, copies: run - reserve, stated: run }];
  });
}

function labelOf(card: Card): string {
  const letter = card.front.variation?.letter;
  return `${numberOf(card) ?? card.front.name}${letter === undefined ? '' : ` ${letter}`}`;
}
