import { WITH_LAYOUT, withLayout } from './fit-sample.js';
import { layoutZones, onZone } from './layout-remarks.js';
import type { Remark, Rule } from './rule.js';
import type { Subject } from './subject.js';

/**
 * Sizes in points below which print on a card back is hard to read. Common practice, no source:
 * text 6 to 7.5 pt and seldom under 5.5, legal lines 3.5 to 5 pt. Local law may ask for more.
 */
const SMALLEST = { text: 5.5, legal: 3.5 } as const;

/** Type that is smaller than people can read, or may shrink to that. */
export const typeSmall: Rule = {
  id: 'type-small',
  about: 'fit',
  severity: 'warning',
  why: 'Small print that nobody can read protects nobody; for children’s products the law may ask for more.',
  look: smallTypes,
  examples: {
    passes: [{ says: 'a bio of 7 points and a legal line of 5', files: WITH_LAYOUT }],
    fails: [
      {
        says: 'a legal line of 3 points',
        files: withLayout('size: 5, leading: 6', 'size: 3, leading: 4'),
        gives: {
          at: 'backs/small.yaml:9:65',
          covers: '3',
          message: '`legal` is set in 3 pt',
          found: '3',
          expected: '3.5 pt or more',
          severity: 'warning',
        },
      },
      {
        says: 'a bio that may shrink too far',
        files: withLayout('leading: 9 }', 'leading: 9, shrink: { to: 5 } }'),
        gives: {
          at: 'backs/small.yaml:8:87',
          covers: 'to',
          message: '`bio` may shrink to 5 pt',
          found: '5',
          expected: '5.5 pt or more',
          severity: 'warning',
        },
      },
    ],
  },
};

function* smallTypes(subject: Subject): Generator<Remark> {
  for (const placed of layoutZones(subject)) {
    const { name, zone } = placed;
    const least = name === 'legal' ? SMALLEST.legal : SMALLEST.text;
    const expected = `${String(least)} pt or more`;
    if (zone.size < least) {
      const size = String(zone.size);
      yield onZone(placed, 'size', {
        message: `\`${name}\` is set in ${size} pt`,
        found: size,
        expected,
      });
    } else if (zone.shrink && zone.shrink.to < least) {
      const size = String(zone.shrink.to);
      yield onZone(placed, 'shrink', {
        message: `\`${name}\` may shrink to ${size} pt`,
        found: size,
        expected,
      });
    }
  }
}
