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

/**
 * The expected number of packs until none is missing.
 * @param missing cards that are missing at first: all of them, if it is not said.
 * @throws RangeError for what is no such set.
 */
export function expectedPacks(collecting: Collecting, missing = collecting.cards): number {
  const { cards, inPack, chance } = checked(collecting);
  if (!Number.isInteger(missing) || missing < 0 || missing > cards) {
    throw new RangeError('no more cards are missing than there are, and none in part');
  }
  const expected = [0];
  for (let short = 1; short <= missing; short += 1) {
    const brings = broughtBy(cards, inPack, short);
    const after = brings.reduce(
      (sum, probability, found) =>
        found === 0 ? sum : sum + probability * (expected[short - found] ?? 0),
      0,
    );
    const none = brings[0] ?? 0;
    expected.push((1 / chance + after) / (1 - none));
  }
  return expected[missing] ?? 0;
}

/**
 * After how many packs the set is complete with at least each of these chances.
 * @param chances rising, above 0 and below 1.
 * @throws RangeError for what is no such set, and for chances that are none.
 */
export function packsForChances(
  collecting: Collecting,
  chances: readonly number[],
): readonly number[] {
  if (chances.some((each, at) => !(each > (chances[at - 1] ?? 0) && each < 1))) {
    throw new RangeError('chances rise, above 0 and below 1');
  }
  const { cards, inPack, chance } = checked(collecting);
  const brings = Array.from({ length: cards + 1 }, (_, short) => broughtBy(cards, inPack, short));
  let standing = new Float64Array(cards + 1);
  standing[cards] = 1;
  const packs: number[] = [];
  for (let opened = 0; packs.length < chances.length; opened += 1) {
    while (packs.length < chances.length && (standing[0] ?? 0) >= (chances[packs.length] ?? 1)) {
      packs.push(opened);
    }
    standing = afterPack(standing, brings, chance);
  }
  return packs;
}

/** The chances of how many cards are missing, after one pack more. */
function afterPack(
  standing: Float64Array<ArrayBuffer>,
  brings: readonly (readonly number[])[],
  chance: number,
): Float64Array<ArrayBuffer> {
  const after = new Float64Array(standing.length);
  for (const [short, probability] of standing.entries()) {
    if (probability === 0) continue;
    after[short] = (after[short] ?? 0) + probability * (1 - chance);
    for (const [found, share] of (brings[short] ?? []).entries()) {
      const left = short - found;
      after[left] = (after[left] ?? 0) + probability * chance * share;
    }
  }
  return after;
}

/**
 * The chances that a pack brings 0, 1, 2, … of the cards that are missing: hypergeometric, by the
 * ratio of each term to the one before.
 */
function broughtBy(cards: number, inPack: number, missing: number): readonly number[] {
  const had = cards - missing;
  const least = Math.max(0, inPack - had);
  const most = Math.min(inPack, missing);
  const weights = Array.from({ length: most + 1 }, () => 0);
  let weight = 1;
  for (let found = least; found <= most; found += 1) {
    weights[found] = weight;
    weight *= ((missing - found) * (inPack - found)) / ((found + 1) * (had - inPack + found + 1));
  }
  const whole = weights.reduce((sum, each) => sum + each, 0);
  return weights.map((each) => each / whole);
}

function checked({ cards, inPack, chance = 1 }: Collecting): Required<Collecting> {
  if (!Number.isInteger(cards) || cards < 1) throw new RangeError('a set has at least one card');
  if (!Number.isInteger(inPack) || inPack < 1 || inPack > cards) {
    throw new RangeError('a pack has at least one card of the set, and no two alike');
  }
  if (!(chance > 0 && chance <= 1)) throw new RangeError('a chance is above 0 and at most 1');
  return { cards, inPack, chance };
}
