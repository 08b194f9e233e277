import fc from 'fast-check';
import { expect, it } from 'vitest';

import { redline } from '../../pipeline/out/packet/redline.js';
import { escapeMarkup } from '../../pipeline/text/index.js';

const OUT = '<del><span class="heard">taken out: </span>';
const IN = '<ins><span class="heard">put in: </span>';

it('tells word by word what was taken out and what was put in', () => {
  expect(redline('She rows at night.', 'She sails at <night>.')).toBe(
    `She ${OUT}rows</del>${IN}sails</ins> at ${IN}&lt;</ins>night${IN}&gt;</ins>.`,
  );
  expect(redline('', 'One\n\nTwo')).toBe(`${IN}One<br><br>Two</ins>`);
  expect(redline('Same & same', 'Same & same')).toBe('Same &amp; same');
});

it('has both texts whole, whatever they are', () => {
  const text = fc.string({ unit: fc.constantFrom('a', 'b', ' ', '<', '&', '.', 'é', '\n') });
  fc.assert(
    fc.property(text, text, (was, now) => {
      const marked = redline(was, now).replaceAll('<br>', '\n');
      const without = (tag: string): string =>
        marked
          .replace(new RegExp(`<${tag}>.*?</${tag}>`, 'gs'), '')
          .replace(/<span class="heard">.*?<\/span>/g, '')
          .replace(/<\/?(?:ins|del)>/g, '');
      expect(without('ins')).toBe(escapeMarkup(was));
      expect(without('del')).toBe(escapeMarkup(now));
    }),
  );
});
