import { faultsOf } from './faults.js';
import type { Rule } from './rule.js';
import { edited } from './sample.js';

/** Markup that copy does not use, and held spans that are not closed. */
export const copyMarkup: Rule = {
  id: 'copy-markup',
  about: 'copy',
  severity: 'error',
  why: 'A held span that does not parse would print on the site as plain words.',
  acceptable: false,
  lookRaw: (content) => faultsOf(content, 'copy-markup'),
  examples: {
    passes: [
      {
        says: 'emphasis, a held span and a count',
        files: edited('one/cards/base/a2.md', [
          'A lamp that nobody lit',
          'A *lamp* [that nobody lit](held:later), [one](count:extra),',
        ]),
      },
    ],
    fails: [
      {
        says: 'HTML',
        files: edited('one/cards/base/a2.md', ['burning', '<b>burning']),
        gives: {
          at: 'one/cards/base/a2.md:7:27',
          covers: '<b>',
          message: 'HTML is not used in copy',
          found: '<b>',
          expected: 'paragraphs, *emphasis*, **strong**, line breaks, held spans and counts',
        },
      },
      {
        says: 'a held span with a space in it',
        files: edited('one/cards/base/a2.md', ['nobody lit', '[nobody lit] (held:later)']),
        gives: {
          at: 'one/cards/base/a2.md:7:24',
          covers: '] (',
          message: 'this looks like a held span or a count that was not closed',
          found: '] (',
          expected: '[words](held:LEVEL) or [number](count:SUBSET)',
        },
      },
    ],
  },
};
