import { problem, type About, type Problem } from './problem.js';
import { grouped } from './words.js';

/** Above this nothing is a count of cards, and products of counts stay exact below it. */
export const MOST = 1_000_000_000_000;

/** A figure that is no whole number, too small or too large. */
export function count(
  figure: number,
  least: 0 | 1,
  what: string,
  about: About,
): readonly Problem[] {
  if (Number.isInteger(figure) && figure >= least && figure <= MOST) return [];
  const asked =
    figure > MOST ? `at most ${grouped(MOST)}` : `a whole number from ${String(least)} on`;
  return [
    problem('figure-wrong', about, `${what} must be ${asked}, and is ${String(figure)}.`, {
      figure,
    }),
  ];
}
