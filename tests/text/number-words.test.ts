import { expect, test } from 'vitest';

import { countInWords } from '../../pipeline/text/index.js';

// British English usage, from memory: hyphens from twenty-one to ninety-nine, "and" after hundred.
test.each([
  [0, 'no'],
  [1, 'one'],
  [13, 'thirteen'],
  [19, 'nineteen'],
  [20, 'twenty'],
  [21, 'twenty-one'],
  [40, 'forty'],
  [84, 'eighty-four'],
  [99, 'ninety-nine'],
  [100, 'one hundred'],
  [101, 'one hundred and one'],
  [126, 'one hundred and twenty-six'],
  [340, 'three hundred and forty'],
  [999, 'nine hundred and ninety-nine'],
  [1000, '1000'],
])('%i is %s', (count, words) => {
  expect(countInWords(count)).toBe(words);
});

test.each([-1, 1.5, NaN])('%d is no count', (count) => {
  expect(() => countInWords(count)).toThrow(RangeError);
});
