/** Cards of one likelihood: so many of them, each with this chance in a draw. */
export interface Likelihood {
  readonly cards: number;
  readonly chance: number;
}

/**
 * The expected number of draws, one card at a time, until each card was drawn `copies` times. Draws
 * that come as a Poisson process make the cards independent, so it is the integral over time of the
 * chance that something is still missing: Newman and Shepp, American Mathematical Monthly 67 (1960),
 * 58-61, with unequal chances as by von Schelling, the same, 61 (1954), 306-311. Its integrand lies
 * between 0 and 1 and nothing cancels out.
 * @param copies of each card: 1 for one collector, k for k who trade everything that they have twice.
 * @throws RangeError for chances that do not add up to 1, and for counts that are none.
 */
export function expectedDraws(likelihoods: readonly Likelihood[], copies = 1): number {
  checkLikelihoods(likelihoods, copies);
  const missing = (time: number): number => {
    const complete = likelihoods.reduce(
      (sum, { cards, chance }) => sum + cards * Math.log1p(-tooFew(chance * time, copies)),
      0,
    );
    return -Math.expm1(complete);
  };
  return integralToZero(missing, Math.min(...likelihoods.map(({ chance }) => 1 / chance)));
}

/**
 * After how many draws, as a real number, all cards were drawn with each of these chances, as if it were
 * independent which cards are missing. That is nearly so: for ten cards and more it is within two draws
 * or a hundredth of the exact number.
 * @param chances above 0 and below 1.
 * @throws RangeError for chances that are none.
 */
export function drawsForChances(
  likelihoods: readonly Likelihood[],
  chances: readonly number[],
): readonly number[] {
  checkLikelihoods(likelihoods, 1);
  if (!chances.every((chance) => chance > 0 && chance < 1)) {
    throw new RangeError('chances are above 0 and below 1');
  }
  const complete = (time: number): number =>
    likelihoods.reduce(
      (sum, { cards, chance }) => sum + cards * Math.log(-Math.expm1(Math.log1p(-chance) * time)),
      0,
    );
  return chances.map((chance) => {
    const asked = Math.log(chance);
    let above = 1;
    while (complete(above) < asked) above *= 2;
    let below = above / 2;
    for (let halved = 0; halved < HALVINGS; halved += 1) {
      const middle = (below + above) / 2;
      if (complete(middle) < asked) below = middle;
      else above = middle;
    }
    return above;
  });
}

/** After so many the two ends of a number of 53 bits are the same. */
const HALVINGS = 53;

/** The chance that a Poisson variable of this mean is below a count. */
function tooFew(mean: number, count: number): number {
  let term = Math.exp(-mean);
  let sum = 0;
  for (let drawn = 0; drawn < count; drawn += 1) {
    sum += term;
    term *= mean / (drawn + 1);
  }
  return Math.min(sum, 1);
}

/** Where what is left of an integrand no longer matters. */
const NOTHING = 1e-15;
/** Points of Gauss and Legendre with their weights, for half of a step: the other half mirrors them. */
const POINTS: readonly (readonly [at: number, weight: number])[] = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
];

/**
 * The integral from 0 on of a function that falls from 1 to nothing, in steps of this length; by the
 * rule of Gauss and Legendre of order 8 (Abramowitz and Stegun, table 25.4).
 */
function integralToZero(falls: (at: number) => number, step: number): number {
  let sum = 0;
  for (let from = 0; ; from += step) {
    const middle = from + step / 2;
    for (const [at, weight] of POINTS) {
      const apart = (at * step) / 2;
      sum += (weight * (falls(middle - apart) + falls(middle + apart)) * step) / 2;
    }
    if (falls(from + step) < NOTHING) return sum;
  }
}

/** Chances that were worked out as fractions add up to 1 but for rounding. */
const ROUNDING = 1e-9;

function checkLikelihoods(likelihoods: readonly Likelihood[], copies: number): void {
  const counts = [copies, ...likelihoods.map(({ cards }) => cards)];
  if (!counts.every((count) => Number.isInteger(count) && count > 0)) {
    throw new RangeError('there is at least one card, and one copy of each is wanted');
  }
  const whole = likelihoods.reduce((sum, { cards, chance }) => sum + cards * chance, 0);
  if (!likelihoods.every(({ chance }) => chance > 0) || Math.abs(whole - 1) > ROUNDING) {
    throw new RangeError('the chances of all cards are above 0 and add up to 1');
  }
}
