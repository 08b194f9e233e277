import type { ViewCard, ViewOdds, ViewSet, ViewSubset } from '../../gate/index.js';
import { expectedPacks, fraction, openingsOf, packsForChances } from '../../packs/index.js';
import { SHARES } from './curves.js';

/** What the public can work out of a set: made of its view alone, and of nothing internal. */
export interface ToldFigures {
  /** Runs that are told, from most copies of each card to fewest. */
  readonly made: readonly ToldRun[];
  readonly products: readonly ToldProduct[];
}

export interface ToldRun {
  /** The title of the parallel or subset; "Crew and Craft, 17b" for one card of a subset. */
  readonly title: string;
  /** Cards that are listed. */
  readonly cards: number;
  /** Copies of each. */
  readonly copies: number;
}

/** A product of the view, in the order of the view; its lists are empty where it tells no odds. */
export interface ToldProduct {
  readonly id: string;
  readonly title: string;
  /** How often something is found, from most often to rarest: one in so many packs. */
  readonly found: readonly { readonly title: string; readonly packs: number }[];
  /**
   * What it takes to have all cards of a subset, from fewest packs to most, where as many are printed
   * of each as far as is told, and it takes no more packs than anybody opens.
   */
  readonly complete: readonly ToldCompletion[];
}

/** Whole packs, rounded up. */
export interface ToldCompletion {
  /** Id of the subset. */
  readonly subset: string;
  readonly title: string;
  /** Cards of the subset that are listed; a variation stands for its card. */
  readonly cards: number;
  /** Packs that it takes on average. */
  readonly expected: number;
  /** Packs after which 50, 90 and 99 of a hundred collectors who do not trade have them all. */
  readonly half: number;
  readonly ninety: number;
  readonly ninetyNine: number;
  /** The same for 5, 10, … 95, and 99 of a hundred (`SHARES`). */
  readonly curve: readonly number[];
}

/** Groups whose cards carry something: they are made singly, not printed alike. */
const CARRYING: ReadonlySet<string> = new Set(['autographs', 'relics', 'sketches']);

/** Nobody opens more packs than this: nothing is worked out where it takes more on average. */
const MOST_PACKS = 20_000;

/**
 * What a view tells of the packs of a set, for the pictures of odds and runs.
 *
 * Completing is worked out as if each card of a subset were as common as the others, and a pack
 * brought one of them with the chance 1 in N that is told: odds are rounded up, so it is never too
 * few. Base cards are the rest of a pack, of which no odds are told, so nothing is said of them.
 */
export function toldFigures(set: ViewSet): ToldFigures {
  const subsets = new Map(set.subsets.map((subset) => [subset.id, subset]));
  return {
    made: [...runsOfParallels(set, subsets), ...set.subsets.flatMap(runsOfCards)].sort(
      (a, b) => b.copies - a.copies,
    ),
    products: set.products.map(({ id, title, odds }) => ({
      id,
      title,
      found: odds
        .map((line) => ({ title: line.title, packs: line.packs }))
        .sort((a, b) => a.packs - b.packs),
      complete: odds
        .flatMap((line) => completionOf(line, subsets) ?? [])
        .sort((a, b) => a.expected - b.expected),
    })),
  };
}

type Subsets = ReadonlyMap<string, ViewSubset>;

function runsOfParallels({ parallels }: ViewSet, subsets: Subsets): readonly ToldRun[] {
  return parallels.flatMap(({ title, of, run }) => {
    const cards = [...new Set(of)].reduce((sum, id) => sum + countOf(subsets.get(id)), 0);
    return run === null || cards === 0 ? [] : [{ title, cards, copies: run }];
  });
}

/** The cards of a subset whose run is told, those of one run together. */
function runsOfCards(subset: ViewSubset): readonly ToldRun[] {
  const byRun = new Map<number, readonly ViewCard[]>();
  for (const card of subset.cards.filter(isIssued)) {
    if (card.run !== null) byRun.set(card.run, [...(byRun.get(card.run) ?? []), card]);
  }
  return [...byRun].map(([copies, cards]) => ({
    title: titleOf(subset, cards),
    cards: cards.length,
    copies,
  }));
}

function titleOf({ title }: ViewSubset, cards: readonly ViewCard[]): string {
  const [only, another] = cards;
  if (only?.number == null || another !== undefined) return title;
  return `${title}, ${only.number}${only.letter ?? ''}`;
}

function completionOf(
  { subset: id, title, packs }: ViewOdds,
  subsets: Subsets,
): ToldCompletion | null {
  const subset = subsets.get(id ?? '');
  if (subset === undefined || !isAlike(subset)) return null;
  const cards = countOf(subset);
  if (cards < 2) return null;
  const collecting = { cards, openings: openingsOf(fraction(1n, BigInt(packs)), cards) };
  const expected = expectedPacks(collecting);
  if (expected > MOST_PACKS) return null;
  const curve = packsForChances(collecting, SHARES);
  const at = (share: number): number => curve[SHARES.indexOf(share)] ?? 0;
  return {
    subset: subset.id,
    title,
    cards,
    expected: roundedUp(expected),
    half: at(0.5),
    ninety: at(0.9),
    ninetyNine: at(0.99),
    curve,
  };
}

/** Whether as many are printed of each card, as far as is told, and each is in packs itself. */
function isAlike({ group, found, artists, cards }: ViewSubset): boolean {
  return (
    !CARRYING.has(group) &&
    artists.length === 0 &&
    // What a redemption is exchanged for, its odds do not tell.
    found !== 'redemption' &&
    cards.filter(isIssued).every(({ signers, run, shortPrint }) => {
      return signers.length === 0 && run === null && shortPrint === null;
    })
  );
}

/** Cards that are listed, shown or to come: a variation bears the number of its card. */
function countOf(subset: ViewSubset | undefined): number {
  const issued = subset?.cards.filter(isIssued) ?? [];
  const numbers = new Set(issued.flatMap(({ number }) => number ?? []));
  return (
    numbers.size + issued.filter((card) => card.number === null && card.letter === null).length
  );
}

function isIssued({ state }: ViewCard): boolean {
  return state !== 'not issued';
}

/** Sums of fractions are rounded by the machine: what is whole but for that stays as it is. */
function roundedUp(packs: number): number {
  return Math.ceil(packs - 1e-9 * packs);
}
