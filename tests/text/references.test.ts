import { describe, expect, test } from 'vitest';

import { foldedWords } from '../../pipeline/text/index.js';

/** How HTML readers take them: WHATWG HTML, "Named character references" and 13.2.5.72 to 80. */
describe('character references', () => {
  test.each([
    ['Ys&#111;lde', 'ysolde'],
    ['Ys&#111lde', 'ysolde'],
    ['Ys&#0000000111;lde', 'ysolde'],
    ['Ys&#x6F;lde', 'ysolde'],
    ['Ys&#X006f;lde', 'ysolde'],
    ['Ys&ouml;lde', 'ysolde'],
    ['Ys&oumllde', 'ysolde'],
    ['&Yfr;solde', 'ysolde'],
    ['Yso&shylde', 'ysolde'],
    ['Yso&ZeroWidthSpace;lde', 'ysolde'],
    ['Ysolde&nbsp;Marrack', 'ysolde marrack'],
    ['Ysolde&#160Marrack', 'ysolde marrack'],
    ['Widow&rsquo;s', "widow's"],
    ['Old & Oar', 'old & oar'],
    ['Old &; Oar', 'old & oar'],
    ['Old &unknown; Oar', 'old & unknown oar'],
    ['&#0; and &#x110000;', '& 0 and & xlloooo'],
  ])('%s is read as %s', (text, words) => {
    const read = foldedWords(text).map(({ folded }) => folded);
    expect(read.join(' ')).toBe(words);
  });

  test('stand where they were typed', () => {
    const text = 'A lamp of Ys&#111;lde.';
    const word = foldedWords(text).at(-1);
    expect(text.slice(word?.from, word?.to)).toBe('Ys&#111;lde');
  });
});
