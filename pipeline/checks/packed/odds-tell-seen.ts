import { streetOf, type CardSet, type Instant } from '../../model/index.js';
import { asRead, type PublicKind, type SaidOdds } from '../../packs/index.js';
import { listedCards, showsOf, type ListedCard } from './odds-tell-listed.js';
import type { Packed } from './plan.js';
import type { Subject } from '../subject.js';

/** What the public reads of a kind. */
export interface SeenKind extends PublicKind {
  readonly id: string;
  readonly title: string;
  /** How many cards are listed: of a parallel those that it is of. */
  readonly cards: number;
  /** The run of each card of a parallel; null of a subset, whose cards have their own. */
  readonly run: number | null;
  /** Copies of each card of a parallel that are packed. */
  readonly each: number | null;
}

type Amounts = Omit<SeenKind, 'odds' | 'elsewhere'>;

/**
 * What the public reads, at an instant, of the kinds of a set whose odds it reads then: at `NEVER`
 * everything. Odds are read of open parallels and subsets in open products, and once the set is in
 * shops of subsets that show placeholders. A reserve is taken to be known.
 */
export function seenKinds(
  set: CardSet,
  packed: Packed,
  subject: Subject,
): (at: Instant) => readonly SeenKind[] {
  const { products = [], subsets, parallels = [] } = set.plan.value;
  const lists = listedCards(set, packed, subject);
  const street = streetOf(set.plan.value);
  const sold = products.map((product) => ({ product, shows: showsOf(product, set, subject) }));
  const ofSubsets = subsets.map((subset) => {
    const shows = showsOf(subset, set, subject);
    const from = Math.min(shows.open, Math.max(shows.traced, street));
    return { from, amounts: subsetAmounts(subset, lists.get(subset.id) ?? []) };
  });
  const ofParallels = parallels.map((parallel) => {
    const cards = [...new Set(parallel.of)]
      .flatMap((id) => lists.get(id) ?? [])
      .filter(({ isVariation }) => !isVariation);
    const from = showsOf(parallel, set, subject).open;
    return { from, amounts: parallelAmounts(parallel, cards) };
  });
  return (at) => {
    const open = sold.filter(({ shows }) => shows.open <= at).map(({ product }) => product);
    return [...ofSubsets, ...ofParallels].flatMap(({ from, amounts }) => {
      const seen = from <= at ? amounts(at) : null;
      return seen === null ? [] : withOdds(seen, open);
    });
  };
}

interface Kind {
  readonly id: string;
  readonly title: string;
  readonly run?: number;
  readonly reserve?: number;
}

type Planned = NonNullable<CardSet['plan']['value']['products']>[number];

/** Copies of a subset are known if a run is told of each card that is listed. */
function subsetAmounts({ id, title, reserve = 0 }: Kind, cards: readonly ListedCard[]) {
  return (at: Instant): Amounts => {
    const listed = cards.filter((card) => card.listed <= at);
    const runs = listed.flatMap(({ told, run }) => (run !== null && told <= at ? [run] : []));
    const isTold = runs.length === listed.length && runs.length > 0;
    const copies = runs.reduce((sum, run) => sum + run - reserve, 0);
    const parents = listed.filter(({ isVariation }) => !isVariation).length;
    return { id, title, cards: parents, run: null, each: null, copies: isTold ? copies : null };
  };
}

function parallelAmounts({ id, title, run, reserve = 0 }: Kind, cards: readonly ListedCard[]) {
  return (at: Instant): Amounts | null => {
    const listed = cards.filter((card) => card.listed <= at).length;
    if (listed === 0) return null;
    const each = run === undefined ? null : run - reserve;
    const copies = each === null ? null : each * listed;
    return { id, title, cards: listed, run: run ?? null, each, copies };
  };
}

/** Nothing of what is in no product with odds of it. */
function withOdds(seen: Amounts, products: readonly Planned[]): readonly SeenKind[] {
  const lines = products.flatMap(({ id: product, contents = [] }) =>
    contents.filter(({ of }) => of === seen.id).map(({ odds }) => ({ product, odds })),
  );
  const odds = lines.flatMap((line): readonly SaidOdds[] =>
    line.odds === undefined ? [] : [{ product: line.product, ...asRead(line.odds) }],
  );
  return odds.length === 0 ? [] : [{ ...seen, odds, elsewhere: odds.length < lines.length }];
}
