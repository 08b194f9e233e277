import fc from 'fast-check';
import type { Font } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { Shaper } from '../../pipeline/typeset/shaper.js';

/** What a made-up font does with two neighbours. */
interface Rules {
  /** Kerning by pair. */
  readonly kern: Readonly<Record<string, number>>;
  /** Letters that take another, wider glyph between `b` and a space, and others that do so after one. */
  readonly before: string;
  readonly after: string;
}

/** A font of which every character is a glyph 10 units wide, with rules as font files have them. */
function madeUp({ kern, before, after }: Rules): Font {
  const layout = (text: string) => {
    const ids = Array.from(text, (letter, at) => {
      const wide =
        (text[at - 1] === ' ' && after.includes(letter) && text[at + 1] === 'b') ||
        (text[at + 1] === ' ' && before.includes(letter) && text[at - 1] === 'b');
      if (letter === '\uffff') return 0;
      return letter.charCodeAt(0) + (wide ? 1000 : 0);
    });
    const positions = ids.map((id, at) => ({
      xAdvance: 10 + (id > 1000 ? 3 : 0) + (kern[text.slice(at, at + 2)] ?? 0),
    }));
    const advanceWidth = positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
    return { glyphs: ids.map((id) => ({ id })), positions, advanceWidth };
  };
  const font = {
    layout,
    glyphForCodePoint: (code: number) => ({ id: code === 0xffff ? 0 : code }),
    hasGlyphForCodePoint: (code: number) => code < 0x7f,
  };
  return font as unknown as Font;
}

/** Width of a text by its words and gaps. */
function added(shaper: Shaper, text: string): number {
  const words = text.split(' ').map((each) => shaper.word(each));
  return words.reduce((sum, word, index) => {
    const next = words[index + 1];
    return sum + word.units + (next ? shaper.gap(word, ' ', next).units : 0);
  }, 0);
}

describe('widths kept by word', () => {
  const letters = fc.constantFrom('a', 'b', 'A', 'V', ' ', '\uffff');
  const pair = fc.tuple(letters, letters);
  const rules = fc.record({
    kern: fc
      .array(fc.tuple(pair, fc.integer({ min: -4, max: 4 })), { maxLength: 12 })
      .map((list) => Object.fromEntries(list.map(([two, by]) => [two.join(''), by]))),
    before: fc.constantFrom('', 'a'),
    after: fc.constantFrom('', 'V'),
  });
  const texts = fc.array(
    fc.array(fc.stringMatching(/^[abAV]{1,4}$/u), { minLength: 1, maxLength: 6 }),
    { minLength: 1, maxLength: 5 },
  );

  it('add up to the width of the whole text, whatever font and order', () => {
    fc.assert(
      fc.property(rules, texts, fc.boolean(), (made, list, together) => {
        const font = madeUp(made);
        const shaper = new Shaper(font, 'latn', true);
        for (const words of list) {
          const text = words.join(' ');
          if (together) shaper.prepare(words);
          expect(added(shaper, text)).toBe(font.layout(text).advanceWidth);
        }
      }),
      { numRuns: 400 },
    );
  });
});
