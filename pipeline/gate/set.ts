import type { PlanFile, Product, Subset } from '../../schema/index.js';
import {
  cardsOf,
  compareNumbers,
  identityOf,
  instantOf,
  statedHold,
  subsetHold,
  join,
  type CardSet,
} from '../model/index.js';
import { viewCard } from './card.js';
import { revealedAt, type Lens } from './lens.js';
import { viewSales } from './sales.js';
import type { Tables } from './tables.js';
import type {
  ViewCard,
  ViewCorrection,
  ViewMerge,
  ViewOdds,
  ViewParallel,
  ViewProduct,
  ViewSet,
  ViewSubset,
  ViewWords,
} from './view.js';

/** A set as an audience may see it; null if it leaves no trace there. */
export function viewSet(set: CardSet, lens: Lens, tables: Tables): ViewSet | null {
  const plan = set.plan.value;
  if (lens.standing(statedHold(lens.schedule, plan)) === 'absent') return null;
  if (!lens.admits(tables.plan.id, tables.plan.title, tables.plan.subsets)) return null;
  const subsets = plan.subsets.flatMap((subset) => viewSubset(set, subset, lens, tables) ?? []);
  const parallels = lens.admits(tables.plan.parallels)
    ? viewParallels(plan, subsets, lens, tables)
    : [];
  const street = lens.admits(tables.plan.street) ? viewStreet(plan) : [];
  const listed = { subsets, parallels, isInShops: street.some(({ at }) => at <= lens.at) };
  return {
    id: plan.id,
    title: plan.title,
    short: (lens.admits(tables.plan.short) ? plan.short : undefined) ?? plan.title,
    street,
    listed: subsets.reduce((sum, subset) => sum + subset.listed, 0),
    products: lens.admits(tables.plan.products) ? viewProducts(plan, listed, lens, tables) : [],
    subsets,
    parallels,
    corrections: viewCorrections(set, lens, tables),
    sales: viewSales(set, lens, tables),
    merge: lens.admits(tables.plan.merge) ? viewMerge(plan) : null,
  };
}

function viewMerge({ merge }: PlanFile): ViewMerge | null {
  if (merge === undefined) return null;
  return {
    columns: merge.columns.map(({ column, from }) => ({ column, from })),
    paragraph: merge.paragraph ?? ' ',
  };
}

function viewStreet(plan: PlanFile): ViewSet['street'] {
  if (plan.street === undefined) return [];
  if (typeof plan.street === 'string') return [{ region: null, at: instantOf(plan.street) }];
  return Object.entries(plan.street)
    .map(([region, at]) => ({ region, at: instantOf(at) }))
    .sort((a, b) => a.at - b.at || compareNumbers(a.region, b.region));
}

function viewSubset(set: CardSet, subset: Subset, lens: Lens, tables: Tables): ViewSubset | null {
  const hold = subsetHold(lens.schedule, set.plan.value, subset.id);
  const standing = lens.standing(hold);
  if (standing === 'absent') return null;
  if (!lens.admits(tables.subset.id, tables.subset.title, tables.subset.group)) return null;
  const cards = cardsOf(set, subset.id)
    .flatMap((card) => viewCard(card, set, subset, lens, tables) ?? [])
    .sort(byNumber);
  const rostered = standing === 'open' || tables.subset.roster === 'open';
  return {
    id: subset.id,
    title: subset.title,
    group: subset.group,
    found: (lens.admits(tables.subset.found) ? subset.found : undefined) ?? null,
    listed: cards.filter((card) => card.state !== 'not issued').length,
    words: lens.admits(tables.subset.bio) && standing === 'open' ? viewWords(subset) : null,
    artists: rostered ? viewArtists(set, subset, lens, tables) : [],
    cards,
  };
}

/** What the plan asks of the length of a bio. */
function viewWords({ bio }: Subset): ViewWords | null {
  const words = bio === 'none' ? undefined : bio?.words;
  return words === undefined ? null : { min: words.min ?? null, max: words.max ?? null };
}

/** Artists who are in, in the order of their names. */
function viewArtists(set: CardSet, subset: Subset, lens: Lens, tables: Tables): readonly string[] {
  if (subset.roster === undefined) return [];
  if (!lens.admits(tables.subset.roster, tables.roster.artists, tables.artist.name)) return [];
  return (set.rosters.get(subset.roster)?.value.artists ?? [])
    .filter((artist) => artist.state === 'signed')
    .map((artist) => artist.name)
    .sort(compareNumbers);
}

/**
 * By printed number; what shows no number comes last, placeholders at the very end; then by letter
 * and by the name that it shows. Only what the audience sees decides the order.
 */
function byNumber(a: ViewCard, b: ViewCard): number {
  return (
    Number(a.number === null) - Number(b.number === null) ||
    compareNumbers(a.number ?? '', b.number ?? '') ||
    Number(a.state === 'placeholder') - Number(b.state === 'placeholder') ||
    compareNumbers(a.letter ?? '', b.letter ?? '') ||
    compareNumbers(a.name, b.name) ||
    compareText(JSON.stringify(a), JSON.stringify(b))
  );
}

/** By id. */
export function compareIds(a: ViewSet, b: ViewSet): number {
  return compareText(a.id, b.id);
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function viewParallels(
  plan: PlanFile,
  subsets: readonly ViewSubset[],
  lens: Lens,
  tables: Tables,
): readonly ViewParallel[] {
  if (!lens.admits(tables.parallel.id, tables.parallel.title, tables.parallel.of)) return [];
  const listed = new Set(subsets.map((subset) => subset.id));
  const base = statedHold(lens.schedule, plan);
  return (plan.parallels ?? [])
    .map((parallel) => ({ parallel, hold: join(base, statedHold(lens.schedule, parallel)) }))
    .filter(({ hold }) => lens.standing(hold) === 'open')
    .map(({ parallel, hold }) => ({
      id: parallel.id,
      title: parallel.title,
      of: parallel.of.filter((subset) => listed.has(subset)),
      run: (lens.admits(tables.parallel.run) ? parallel.run : undefined) ?? null,
      tell: (lens.admits(tables.parallel.tell) ? parallel.tell : undefined) ?? null,
      revealed: revealedAt(lens, hold),
    }))
    .filter((parallel) => parallel.of.length > 0);
}

/** What is sold of an open set; what is sold in secret is left out. */
function viewProducts(
  plan: PlanFile,
  listed: Listed,
  lens: Lens,
  tables: Tables,
): readonly ViewProduct[] {
  if (!lens.admits(tables.product.id, tables.product.title)) return [];
  const base = statedHold(lens.schedule, plan);
  return (plan.products ?? [])
    .filter((product) => lens.standing(join(base, statedHold(lens.schedule, product))) === 'open')
    .map((product) => ({
      id: product.id,
      title: product.title,
      pack: (lens.admits(tables.product.pack) ? product.pack : undefined) ?? null,
      box: (lens.admits(tables.product.box) ? product.box : undefined) ?? null,
      odds: lens.admits(tables.product.contents)
        ? viewOdds(plan, product, listed, lens, tables)
        : [],
    }));
}

/** What the view lists of a set, whose odds may be told. */
interface Listed {
  readonly subsets: readonly ViewSubset[];
  readonly parallels: readonly ViewParallel[];
  readonly isInShops: boolean;
}

/**
 * The odds that are said of what is listed. Of a subset that is held they are told once the set is
 * in shops, since it is in the packs then, and to the public alone; of an absent one never.
 */
function viewOdds(
  plan: PlanFile,
  { contents = [] }: Product,
  { subsets, parallels, isInShops }: Listed,
  lens: Lens,
  tables: Tables,
): readonly ViewOdds[] {
  if (!lens.admits(tables.content.of, tables.content.odds)) return [];
  return contents.flatMap(({ of, odds }): ViewOdds[] => {
    if (odds === undefined) return [];
    const subset = subsets.find(({ id }) => id === of);
    if (subset) {
      const isOpen = lens.standing(subsetHold(lens.schedule, plan, of)) === 'open';
      const isTold = isOpen || (lens.kind === 'public' && isInShops);
      return isTold ? [{ subset: of, parallel: null, title: subset.title, packs: odds }] : [];
    }
    const parallel = parallels.find(({ id }) => id === of);
    return parallel ? [{ subset: null, parallel: of, title: parallel.title, packs: odds }] : [];
  });
}

/** Corrections of cards that are shown. */
function viewCorrections(set: CardSet, lens: Lens, tables: Tables): readonly ViewCorrection[] {
  const { at: day, was: wrong, now: right } = tables.correction;
  if (!lens.admits(day, wrong, right)) return [];
  return (set.corrections?.value.corrections ?? [])
    .flatMap((correction) => {
      const card = set.cards.find((candidate) => identityOf(candidate) === correction.card);
      const subset = set.plan.value.subsets.find((candidate) => candidate.id === card?.subset);
      const shown = card && subset ? viewCard(card, set, subset, lens, tables) : null;
      if (!subset || !shown || shown.state === 'placeholder') return [];
      const { at, was, now } = correction;
      const note = (lens.admits(tables.correction.note) ? correction.note : undefined) ?? null;
      const { number, letter, level } = shown;
      return [{ subset: subset.id, number, letter, level, at, was, now, note }];
    })
    .sort((a, b) => compareText(b.at, a.at) || compareText(JSON.stringify(a), JSON.stringify(b)));
}
