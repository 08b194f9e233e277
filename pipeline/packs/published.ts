import { compare, whole, type Fraction } from './fraction.js';
import { oddsOf } from './odds.js';

/**
 * How round published odds are: any whole number, or only what is on a list of numbers that people
 * read easily. The coarser the step, the less the odds tell of how many cases are made.
 */
export type OddsStep = 'whole' | 'fine' | 'round' | 'coarse';

/** From the finest to the coarsest. */
export const ODDS_STEPS: readonly OddsStep[] = ['whole', 'fine', 'round', 'coarse'];

/** The numbers from 10 to 99 of each list, those of a coarser one being in the finer ones; ten times, a hundred times them and so on follow. */
const TENS: Readonly<Record<Exclude<OddsStep, 'whole'>, readonly number[]>> = {
  fine: [10, 12, 15, 16, 18, 20, 24, 30, 36, 40, 45, 48, 50, 60, 64, 72, 80, 90, 96],
  round: [10, 12, 15, 20, 24, 30, 40, 50, 60, 80],
  coarse: [10, 20, 50],
};

/** The numbers below 10. */
const ONES: Readonly<Record<Exclude<OddsStep, 'whole'>, readonly number[]>> = {
  fine: [1, 2, 3, 4, 5, 6, 7, 8, 9],
  round: [1, 2, 3, 4, 5, 6, 8],
  coarse: [1, 2, 5],
};

/**
 * The least number of a step that is not below these whole odds: never better than they are.
 * @throws RangeError if `oneIn` is no whole number from 1 on.
 */
export function roundedOdds(oneIn: number, step: OddsStep): number {
  checkOdds(oneIn);
  if (step === 'whole') return oneIn;
  const one = ONES[step].find((each) => each >= oneIn);
  if (one !== undefined) return one;
  for (let scale = 1; ; scale *= 10) {
    const found = TENS[step].find((each) => each * scale >= oneIn);
    if (found !== undefined) return found * scale;
  }
}

/** The greatest number of a step below this one, from which no truth is rounded to it; 0 if none is. */
export function oddsBelow(oneIn: number, step: OddsStep): number {
  checkOdds(oneIn);
  if (step === 'whole') return oneIn - 1;
  let best = ONES[step].findLast((each) => each < oneIn) ?? 0;
  for (let scale = 1; scale * 10 < oneIn; scale *= 10) {
    const tens = TENS[step].findLast((each) => each * scale < oneIn);
    if (tens !== undefined) best = tens * scale;
  }
  return best;
}

/**
 * Odds as the public reads them, who sees the number alone: they are taken to be of the coarsest step
 * that has it, so the truth is above the number of that step below it.
 */
export function asRead(oneIn: number): { readonly oneIn: number; readonly above: number } {
  const step = ODDS_STEPS.findLast((each) => roundedOdds(oneIn, each) === oneIn) ?? 'whole';
  return { oneIn, above: oddsBelow(oneIn, step) };
}

function checkOdds(oneIn: number): void {
  if (!Number.isSafeInteger(oneIn) || oneIn < 1) {
    throw new RangeError('odds are a whole number of packs, from 1 on');
  }
}

/** What may be said of so many copies in so many packs, from the finest step to the coarsest; null if there is none. */
export function oddsToPublish(
  copies: Fraction,
  packs: number,
): Readonly<Record<OddsStep, number>> | null {
  const { oneIn } = oddsOf(copies, packs);
  if (oneIn === null) return null;
  return {
    whole: oneIn,
    fine: roundedOdds(oneIn, 'fine'),
    round: roundedOdds(oneIn, 'round'),
    coarse: roundedOdds(oneIn, 'coarse'),
  };
}

export interface StatedVerdict {
  /** `better` than the truth, which nobody may say; `coarse`: worse than the coarsest step makes it. */
  readonly verdict: 'true' | 'better' | 'coarse' | 'none';
  /** The best that may be said, and the same at the coarsest step; 0 if there is no copy. */
  readonly oneIn: number;
  readonly coarsest: number;
}

/** How stated odds of 1 in `said` packs stand beside the truth. */
export function compareStated(said: number, copies: Fraction, packs: number): StatedVerdict {
  const odds = oddsToPublish(copies, packs);
  if (odds === null || compare(copies, whole(0)) <= 0) {
    return { verdict: 'none', oneIn: 0, coarsest: 0 };
  }
  const verdict = said < odds.whole ? 'better' : said > odds.coarse ? 'coarse' : 'true';
  return { verdict, oneIn: odds.whole, coarsest: odds.coarse };
}
