import { expect, test } from 'vitest';

import { tallyFits, type Fit } from '../../pipeline/typeset/index.js';

function fit(capacity: number, free: number, more: Partial<Fit> = {}): Fit {
  return {
    size: 7,
    leading: 9,
    capacity,
    lineCount: capacity - free,
    overset: 0,
    free,
    tight: free === 0,
    wide: 0,
    fits: true,
    wordsToCut: 0,
    shrunk: false,
    missing: [],
    ...more,
  };
}

function filledAt(...steps: readonly number[]): number[] {
  return Array.from({ length: 20 }, (_, at) => steps.filter((step) => step === at).length);
}

test('a text counts where its last line ends', () => {
  // 1 of 20 lines is 5 %, 10 of 20 are 50 %, 11 of 20 are 55 %, all are 100 %.
  const tally = tallyFits([fit(20, 19), fit(20, 10), fit(20, 9), fit(20, 0)]);
  expect(tally).toStrictEqual({ texts: 4, filled: filledAt(0, 9, 10, 19), tight: 1, overset: 0 });
});

test('a text between two steps counts in the one above', () => {
  // 2 of 3 lines are 66.7 %: above 65 %, up to 70 %.
  expect(tallyFits([fit(3, 1)]).filled).toStrictEqual(filledAt(13));
});

test('a zone without a word in it counts as the emptiest', () => {
  expect(tallyFits([fit(8, 8, { lineCount: 0 })]).filled).toStrictEqual(filledAt(0));
});

test('what has a line or a word over is overset, and not among those that fit', () => {
  const over = fit(8, 0, { overset: 1, lineCount: 9, fits: false, tight: false });
  const wide = fit(8, 3, { wide: 1, fits: false });
  expect(tallyFits([over, wide, fit(8, 0)])).toStrictEqual({
    texts: 3,
    filled: filledAt(19),
    tight: 1,
    overset: 2,
  });
});
