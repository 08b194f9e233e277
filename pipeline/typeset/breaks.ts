import LineBreaker from 'linebreak';

/**
 * Where a line may end in a text: offsets (UTF-16) at which the next line would start, in order,
 * the end of the text included. Behind an interface, because tables of Unicode age.
 */
export type FindBreaks = (text: string) => readonly number[];

/** Break opportunities of UAX #14 by the tables of `linebreak` (Unicode 13). */
export const unicodeBreaks: FindBreaks = (text) => {
  const breaker = new LineBreaker(text);
  const offsets: number[] = [];
  for (let next = breaker.nextBreak(); next; next = breaker.nextBreak()) {
    offsets.push(next.position);
  }
  return offsets;
};
