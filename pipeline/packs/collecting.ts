import { manyPacksForChances } from './many-packs.js';
import { broughtByOpenings, checkOpenings, type Opening } from './openings.js';

/**
 * How many packs it takes to complete a set whose cards come at random, no two alike in a pack.
 * The chance that a pack brings j of m missing cards is hypergeometric, so the number of missing
 * cards is a Markov chain that only falls: all sums are of positive terms, and nothing cancels out
 * (Stadje, Advances in Applied Probability 22, 1990, 866-882).
 */
export interface Collecting {
  /** Cards of the set, all equally likely. */
  readonly cards: number;
  /** Cards of the set in a pack, no two alike; from 1 to `cards`. */
  readonly inPack: number;
  /** The chance that a pack holds any of them, above 0 to 1: for an insert set. */
  readonly chance?: number;
}

/** The same where packs differ in how many cards of the set they hold. */
export interface MixedCollecting {
  readonly cards: number;
  readonly openings: readonly Opening[];
}

/**
 * The expected number of packs until none is missing.
 * @param missing cards that are missing at first: all of them, if it is not said.
 * @throws RangeError for what is no such set.
 */
export function expectedPacks(
  collecting: Collecting | MixedCollecting,
  missing = collecting.cards,
): number {
  const { cards, openings } = checked(collecting);
  if (!Number.isInteger(missing) || missing < 0 || missing > cards) {
    throw new RangeError('no more cards are missing than there are, and none in part');
  }
  const expected = [0];
  for (let short = 1; short <= missing; short += 1) {
    let any = 0;
    let after = 0;
    for (const [found, chance] of broughtByOpenings(cards, openings, short).entries()) {
      if (found === 0) continue;
      any += chance;
      after += chance * (expected[short - found] ?? 0);
    }
    expected.push((1 + after) / any);
  }
  return expected[missing] ?? 0;
}

/**
 * The variance of the number of packs until none is missing, from its second moments by the same
 * recursion.
 * @throws RangeError for what is no such set.
 */
export function varianceOfPacks(collecting: Collecting | MixedCollecting): number {
  const { cards, openings } = checked(collecting);
  const means = [0];
  const variances = [0];
  for (let short = 1; short <= cards; short += 1) {
    const brings = broughtByOpenings(cards, openings, short).map((chance, found) => ({
      chance,
      left: short - found,
    }));
    const some = brings.slice(1);
    const any = some.reduce((sum, { chance }) => sum + chance, 0);
    const shares = some.map(({ chance, left }) => ({ share: chance / any, left }));
    const after = shares.reduce((sum, { share, left }) => sum + share * (means[left] ?? 0), 0);
    // The packs until one brings something are geometric, and independent of what it brings.
    const within = shares.reduce((sum, { share, left }) => {
      const apart = (means[left] ?? 0) - after;
      return sum + share * ((variances[left] ?? 0) + apart * apart);
    }, 0);
    means.push(1 / any + after);
    variances.push((1 - any) / (any * any) + within);
  }
  return variances[cards] ?? 0;
}

/**
 * After how many packs the set is complete with at least each of these chances.
 * @param chances rising, above 0 and below 1.
 * @throws RangeError for what is no such set, and for chances that are none.
 */
export function packsForChances(
  collecting: Collecting | MixedCollecting,
  chances: readonly number[],
): readonly number[] {
  if (chances.some((each, at) => !(each > (chances[at - 1] ?? 0) && each < 1))) {
    throw new RangeError('chances rise, above 0 and below 1');
  }
  const { cards, openings } = checked(collecting);
  const brings = Array.from({ length: cards + 1 }, (_, short) =>
    broughtByOpenings(cards, openings, short),
  );
  if (expectedPacks(collecting) > ONE_BY_ONE) return manyPacksForChances(brings, chances);
  let standing = new Float64Array(cards + 1);
  standing[cards] = 1;
  const packs: number[] = [];
  for (let opened = 0; packs.length < chances.length; opened += 1) {
    while (packs.length < chances.length && (standing[0] ?? 0) >= (chances[packs.length] ?? 1)) {
      packs.push(opened);
    }
    standing = afterPack(standing, brings);
  }
  return packs;
}

/** Expected packs up to which they are gone through one by one. */
const ONE_BY_ONE = 5_000;

/** The chances of how many cards are missing, after one pack more. */
function afterPack(
  standing: Float64Array<ArrayBuffer>,
  brings: readonly (readonly number[])[],
): Float64Array<ArrayBuffer> {
  const after = new Float64Array(standing.length);
  for (let short = 0; short < standing.length; short += 1) {
    const probability = standing[short] ?? 0;
    if (probability === 0) continue;
    const shares = brings[short] ?? [];
    for (let found = 0; found < shares.length; found += 1) {
      const left = short - found;
      after[left] = (after[left] ?? 0) + probability * (shares[found] ?? 0);
    }
  }
  return after;
}

function checked(collecting: Collecting | MixedCollecting): MixedCollecting {
  const { cards } = collecting;
  const openings =
    'openings' in collecting
      ? collecting.openings
      : [{ inPack: collecting.inPack, chance: collecting.chance ?? 1 }];
  checkOpenings(cards, openings);
  return { cards, openings };
}
