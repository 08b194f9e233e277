import { describe, expect, test } from 'vitest';

import { renumbered, splice } from '../../pipeline/edit/index.js';

describe('another number', () => {
  test.each([
    ['double quotes', '"17"', '3', '"3"'],
    ['single quotes', "'17'", '3', "'3'"],
    ['none', '17', '3', '3'],
    ['a code without quotes', 'LC-4', 'LC-12', 'LC-12'],
    ['a code that needs quotes', 'LC-4', 'LC: 12', '"LC: 12"'],
  ])('stands in the quotes of the old one: %s', (_, was, number, now) => {
    const text = (value: string): string =>
      `---\r\nname: A  # the 17th\r\nnumber: ${value}  # as printed\r\nspoiler: open\r\n---\r\nCard 17.\r\n`;
    const source = { file: 'one/cards/base/a1.md', text: text(was) };
    expect(splice(source, [renumbered(source, number)]).text).toBe(text(now));
  });
});
