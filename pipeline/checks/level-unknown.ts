import { holdReferences } from './hold-references.js';
import type { Rule } from './rule.js';
import { edited } from './sample.js';

/** A level or an embargo that property.yaml does not have. */
export const levelUnknown: Rule = {
  id: 'level-unknown',
  about: 'levels',
  severity: 'error',
  why: 'What an unknown level holds would never open, and nobody would know why.',
  acceptable: false,
  look: holdReferences,
  examples: {
    passes: [
      {
        says: 'levels and embargoes that there are',
        files: edited(
          'one/cards/base/a2.md',
          ['spoiler: open', 'spoiler: open\nholds: { name: later }'],
          ['nobody lit', '[nobody lit](held:later)'],
        ),
      },
    ],
    fails: [
      {
        says: 'a level with two letters swapped',
        files: edited('one/cards/base/a2.md', ['spoiler: open', 'spoiler: laetr']),
        gives: {
          at: 'one/cards/base/a2.md:4:10',
          covers: 'laetr',
          message: 'there is no level `laetr`',
          found: 'laetr',
          expected: '`later`',
          fix: 'later',
        },
      },
      {
        says: 'an embargo where a level must stand',
        files: edited('one/cards/base/a2.md', ['spoiler: open', 'spoiler: guest']),
        gives: {
          at: 'one/cards/base/a2.md:4:10',
          covers: 'guest',
          message: '`guest` is an embargo, and a level stands here',
          found: 'guest',
          expected: '`open`, `later` or `last`',
        },
      },
      {
        says: 'a held span of a level that there is none of',
        files: edited('one/cards/base/a2.md', ['nobody lit', '[nobody lit](held:lost)']),
        gives: {
          at: 'one/cards/base/a2.md:7:31',
          covers: 'lost',
          message: 'there is no level or embargo `lost`',
          found: 'lost',
          expected: '`last`',
          fix: 'last',
        },
      },
    ],
  },
};
