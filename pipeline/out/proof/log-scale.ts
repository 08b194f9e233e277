/** A logarithmic scale over a length. */
export interface LogScale {
  /** Powers of ten that have a line. */
  readonly ticks: readonly number[];
  /** How far along the length a value lies. */
  readonly along: (value: number) => number;
}

/** Of a decade before 1, so that what is 1 has a bar too. */
const BEFORE_ONE = 0.5;

/** A scale for bars from 1 to the power of ten that is not below `most`; `length` in points. */
export function barScale(most: number, length: number): LogScale {
  const decades = Math.max(1, Math.ceil(Math.log10(most)));
  return {
    ticks: powers(0, decades),
    along: (value) =>
      ((Math.log10(Math.max(1, value)) + BEFORE_ONE) / (decades + BEFORE_ONE)) * length,
  };
}

/** A scale between the powers of ten around two values, of which the least counts as 1 or more. */
export function curveScale(least: number, most: number, length: number): LogScale {
  const from = Math.floor(Math.log10(Math.max(1, least)));
  const span = Math.max(1, Math.ceil(Math.log10(Math.max(1, most))) - from);
  return {
    ticks: powers(from, from + span),
    along: (value) => ((Math.log10(Math.max(1, value)) - from) / span) * length,
  };
}

function powers(from: number, to: number): readonly number[] {
  return Array.from({ length: to - from + 1 }, (_, at) => 10 ** (from + at));
}
