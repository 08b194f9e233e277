import { expect, test } from 'vitest';

import { sentences } from '../../pipeline/text/index.js';

function cut(text: string): readonly string[] {
  return sentences(text).map(({ from, to }) => text.slice(from, to));
}

// UAX #29, rules SB6 to SB8 and SB11, as the standard tells them; titles are our own addition.
test.each<[string, string[]]>([
  ['One. Two! Three?', ['One. ', 'Two! ', 'Three?']],
  ['It is 3.5 fathoms deep.', ['It is 3.5 fathoms deep.']],
  ['“Go.” He went.', ['“Go.” ', 'He went.']],
  ['Mr. Hask and J. Prewett met. They left.', ['Mr. Hask and J. Prewett met. ', 'They left.']],
  ['So e.g. Hask did. They left.', ['So e.g. Hask did. ', 'They left.']],
  ['No stop', ['No stop']],
  ['A line\nand another', ['A line\n', 'and another']],
  ['', []],
])('%j', (text, parts) => {
  expect(cut(text)).toStrictEqual(parts);
});
