import { expectedPacks, packsForChances } from './collecting.js';
import { drawsForChances, expectedDraws, type Likelihood } from './drawing.js';
import { approximately, compare, type Fraction } from './fraction.js';
import type { Opening } from './openings.js';
import type { LineReport, ProductReport } from './report.js';
import { boxOfSequence, type BoxOfSequence, type InOrder } from './sequence.js';

/** How a set is completed from packs of one product, and by which model that was worked out. */
export type Completion = Completing & (ByChance | BySequence);

interface Completing {
  /** Null for the base set. */
  readonly kind: string | null;
  readonly title: string;
  /** Cards of the set. A variation stands for its parent. */
  readonly cards: number;
}

export interface ByChance {
  /**
   * `packs`: cards alike in number come by chance, no two alike in a pack: exact. `draws`: some are
   * rarer than others, and come one by one. `trading`: the same among collectors who trade what they
   * have twice, for each of them.
   */
  readonly model: 'packs' | 'draws' | 'trading';
  /** Packs that it takes on average: what is expected, not promised. */
  readonly expected: number;
  /**
   * Packs after which half, 90 and 99 of a hundred collectors have it; null while trading, and where
   * more packs are expected than are made.
   */
  readonly points: Points | null;
}

export interface Points {
  readonly half: number;
  readonly ninety: number;
  readonly ninetyNine: number;
}

export interface BySequence {
  /** Cards run in their order from pack to pack. */
  readonly model: 'sequenced';
  readonly box: BoxOfSequence;
}

const CHANCES = [0.5, 0.9, 0.99];

/**
 * How the base set and each subset and parallel of a product is completed, line by line.
 * @param traders collectors who buy alike and trade everything that they have twice.
 * @throws RangeError if `traders` is no whole number from 1 on.
 */
export function completing(product: ProductReport, traders = 1): readonly Completion[] {
  return product.lines.flatMap((line): readonly Completion[] => {
    const subjects = subjectsOf(line);
    const cards = subjects.reduce((sum, { cards: own }) => sum + own, 0);
    if (line.what === 'decoy' || cards === 0 || line.copies === 0) return [];
    const about = { kind: line.kind, title: line.title, cards };
    if (product.collation === 'sequenced') {
      const box = boxOfSequence(subjects, line.aBox);
      const isMade = box.boxesForSet !== null && box.boxesForSet <= product.boxes;
      return [{ ...about, model: 'sequenced', box: isMade ? box : { ...box, boxesForSet: null } }];
    }
    return [{ ...about, ...byChance(line, subjects, product.packs, traders) }];
  });
}

/** The cards of a line by their copies, as the report has them. */
export function subjectsOf({ cards }: LineReport): readonly InOrder[] {
  return cards
    .filter(({ filling }) => filling.over > 0n)
    .map(({ cards: own, filling }) => ({ cards: own.length, copies: filling }));
}

function byChance(
  line: LineReport,
  subjects: readonly InOrder[],
  packs: number,
  traders: number,
): ByChance {
  const aPack = approximately(line.aPack);
  const first = subjects[0];
  const same = subjects.every(
    ({ copies }) => first !== undefined && compare(copies, first.copies) === 0,
  );
  const cards = subjects.reduce((sum, each) => sum + each.cards, 0);
  if (traders > 1 || !same) {
    const likelihoods = likelihoodsOf(subjects);
    const expected = expectedDraws(likelihoods, traders) / traders / aPack;
    if (traders > 1) return { model: 'trading', expected, points: null };
    const draws = expected > packs ? null : drawsForChances(likelihoods, CHANCES);
    return { model: 'draws', expected, points: pointsOf(draws?.map((each) => each / aPack)) };
  }
  const collecting = { cards, openings: openingsOf(line.aPack, cards) };
  const expected = expectedPacks(collecting);
  const points = expected > packs ? undefined : packsForChances(collecting, CHANCES);
  return { model: 'packs', expected, points: pointsOf(points) };
}

function pointsOf(packs: readonly number[] | undefined): Points | null {
  if (packs === undefined) return null;
  const [half = 0, ninety = 0, ninetyNine = 0] = packs.map(Math.ceil);
  return { half, ninety, ninetyNine };
}

function likelihoodsOf(subjects: readonly InOrder[]): readonly Likelihood[] {
  const copies = subjects.map((each) => approximately(each.copies));
  const all = subjects.reduce((sum, { cards }, at) => sum + cards * (copies[at] ?? 0), 0);
  return subjects.map(({ cards }, at) => ({ cards, chance: (copies[at] ?? 0) / all }));
}

/** Packs hold one of the two whole numbers beside the average, in the proportion that gives it. */
export function openingsOf(aPack: Fraction, cards: number): readonly Opening[] {
  const fewer = Number(aPack.over / aPack.under);
  const more = approximately({ over: aPack.over % aPack.under, under: aPack.under });
  if (fewer >= cards) return [{ inPack: cards, chance: 1 }];
  return [
    { inPack: fewer, chance: 1 - more },
    { inPack: fewer + 1, chance: more },
  ].filter(({ inPack, chance }) => inPack > 0 && chance > 0);
}
