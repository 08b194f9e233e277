import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import {
  copyText,
  fenceOf,
  heldSpans,
  paragraphText,
  placeOf,
  type Place,
  type Run,
} from '../../pipeline/model/index.js';

/** Line and column by cutting the text into lines; between CR and LF no line has ended yet. */
function naivePlace(text: string, offset: number): Place {
  const before = text.slice(0, offset);
  const inPair = before.endsWith('\r') && text[offset] === '\n';
  const lines = (inPair ? `${before.slice(0, -1)}x` : before).split(/\r\n|\r|\n/);
  return { line: lines.length, column: (lines.at(-1) ?? '').length + 1 };
}

describe('line and column', () => {
  test('are those of the text cut into lines, at every offset and in every way of ending lines', () => {
    const bit = fc.constantFrom('a', 'é', '🚢', '\n', '\r', '\r\n', '\t', '\u2028', ' ');
    fc.assert(
      fc.property(fc.array(bit, { maxLength: 20 }), (bits) => {
        const text = bits.join('');
        for (let offset = 0; offset <= text.length; offset++) {
          expect(placeOf(text, offset)).toStrictEqual(naivePlace(text, offset));
        }
      }),
      { numRuns: 500 },
    );
  });

  test('of an offset past the end are those of the end', () => {
    expect(placeOf('a\nbc', 99)).toStrictEqual({ line: 2, column: 3 });
  });
});

describe('the fence of a file', () => {
  test.each([
    ['---\na\n---\nb', ['a\n', 'b']],
    ['---\r\na\r\n---\r\nb', ['a\r\n', 'b']],
    ['---\n---\n', ['', '']],
    ['---\na\n---', ['a\n', '']],
    ['---\na: |\n  ---\n---\n---\nb', ['a: |\n  ---\n', '---\nb']],
    ['---\na\n----\n---\n', null],
    ['---\na\n---b\n---\n', null],
    ['---\na\n--- \n---\n', null],
    ['---\na\u2028---\n---\nb', ['a\u2028---\n', 'b']],
    ['---\na\r---\n---\nb', ['a\r---\n', 'b']],
    ['---\ra\r---\r', null],
    ['--\na\n--\n', null],
    ['', null],
  ])('%j', (text, expected) => {
    const fence = fenceOf(text);
    const parts = fence && [text.slice(fence.yamlFrom, fence.yamlTo), text.slice(fence.bodyFrom)];
    expect(parts).toStrictEqual(expected);
  });
});

describe('the values of copy', () => {
  const run = (text: string, hold: string | null = null, from = 0): Run => ({
    text,
    italic: false,
    bold: false,
    hold,
    count: null,
    from,
    to: from + text.length,
  });

  test('a hard break reads as a space, and paragraphs are parted by a blank line', () => {
    const paragraph = [run('one'), run('\n'), run('two')];
    expect(paragraphText(paragraph)).toBe('one two');
    expect(copyText([paragraph, [run('three')]])).toBe('one two\n\nthree');
    expect(copyText([])).toBe('');
  });

  test('neighbours under one hold are one span, and no span goes over a paragraph', () => {
    const copy = [
      [run('a', null, 0), run('b', 'x', 1), run('c', 'x', 2), run('d', 'y', 3), run('e', 'x', 4)],
      [run('f', 'x', 7), run('g', null, 8), run('h', 'x', 9)],
    ];
    expect(heldSpans(copy)).toStrictEqual([
      { hold: 'x', text: 'bc', from: 1, to: 3 },
      { hold: 'y', text: 'd', from: 3, to: 4 },
      { hold: 'x', text: 'e', from: 4, to: 5 },
      { hold: 'x', text: 'f', from: 7, to: 8 },
      { hold: 'x', text: 'h', from: 9, to: 10 },
    ]);
  });
});
