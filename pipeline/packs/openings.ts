/**
 * How many cards of a set a pack brings, no two alike: each number with its chance. What the chances
 * leave to 1 is the chance that it brings none.
 */
export interface Opening {
  readonly inPack: number;
  readonly chance: number;
}

/** Chances that were worked out as fractions add up to 1 but for rounding. */
const ROUNDING = 1e-9;

/** @throws RangeError for packs that there cannot be of a set of so many cards. */
export function checkOpenings(cards: number, openings: readonly Opening[]): void {
  if (!Number.isInteger(cards) || cards < 1) throw new RangeError('a set has at least one card');
  if (!openings.every(({ inPack }) => Number.isInteger(inPack) && inPack >= 1 && inPack <= cards)) {
    throw new RangeError('a pack has at least one card of the set, and no two alike');
  }
  const sum = openings.reduce((all, { chance }) => all + chance, 0);
  if (openings.length === 0 || !openings.every(({ chance }) => chance > 0) || sum > 1 + ROUNDING) {
    throw new RangeError('a chance is above 0 and at most 1');
  }
}

/**
 * The chances that a pack brings 0, 1, 2, … of the cards that are missing, over all openings.
 */
export function broughtByOpenings(
  cards: number,
  openings: readonly Opening[],
  missing: number,
): readonly number[] {
  const most = Math.min(missing, Math.max(...openings.map(({ inPack }) => inPack)));
  const brings = Array.from({ length: most + 1 }, () => 0);
  let none = 1;
  for (const { inPack, chance } of openings) {
    none -= chance;
    for (const [found, share] of broughtBy(cards, inPack, missing).entries()) {
      brings[found] = (brings[found] ?? 0) + chance * share;
    }
  }
  brings[0] = (brings[0] ?? 0) + Math.max(none, 0);
  return brings;
}

/** Where weights are scaled down, so that none ever becomes infinite. */
const LARGE = 1e200;

/**
 * The chances that a pack of so many cards brings 0, 1, 2, … of those that are missing:
 * hypergeometric, by the ratio of each term to the one before.
 */
export function broughtBy(cards: number, inPack: number, missing: number): readonly number[] {
  const had = cards - missing;
  const least = Math.max(0, inPack - had);
  const most = Math.min(inPack, missing);
  const weights = Array.from({ length: most + 1 }, () => 0);
  let weight = 1;
  for (let found = least; found <= most; found += 1) {
    weights[found] = weight;
    if (weight > LARGE) {
      for (let before = least; before <= found; before += 1) {
        weights[before] = (weights[before] ?? 0) / LARGE;
      }
      weight /= LARGE;
    }
    weight *= ((missing - found) * (inPack - found)) / ((found + 1) * (had - inPack + found + 1));
  }
  const whole = weights.reduce((sum, each) => sum + each, 0);
  return weights.map((each) => each / whole);
}
