import { referencesIn } from './references.js';
import { packedWith } from './packed/sample.js';
import type { Rule } from './rule.js';
import { edited } from './sample.js';

/** An id that names no person, layout, document, cut, card, roster, subset, zone or font. */
export const idUnknown: Rule = {
  id: 'id-unknown',
  about: 'files',
  severity: 'error',
  why: 'An id that names nothing is a job for nobody, or a text that prints nowhere.',
  look: (subject) => referencesIn(subject),
  examples: {
    passes: [
      {
        says: 'ids that name something',
        files: edited('one/cards/base/a1.md', ['story: 1/1', 'story: 1/1\nwriter: jonah']),
      },
      {
        says: 'a variation of a card',
        files: {
          'one/cards/base/a1b.md':
            '---\nnumber: "1"\nname: The Quay\nspoiler: open\nvariation: { of: base/a1, letter: b, tell: The tide is out }\n---\nThe quay stands dry.\n',
        },
      },
    ],
    fails: [
      {
        says: 'a writer with a letter too few',
        files: edited('one/cards/base/a1.md', ['story: 1/1', 'story: 1/1\nwriter: jona']),
        gives: {
          at: 'one/cards/base/a1.md:6:9',
          covers: 'jona',
          message: 'there is no person `jona`',
          found: 'jona',
          expected: '`jonah`',
          fix: 'jonah',
        },
      },
      {
        says: 'a layout that is not there',
        files: edited('one/plan.yaml', ['group: inserts,', 'group: inserts, back: standard,']),
        gives: {
          at: 'one/plan.yaml:8:54',
          covers: 'standard',
          message: 'there is no layout `standard`',
          found: 'standard',
          expected: 'none: there are none here',
        },
      },
      {
        says: 'something in packs that there is not',
        files: packedWith(['of: extra,', 'of: extras,']),
        gives: {
          at: 'one/plan.yaml:19:15',
          covers: 'extras',
          message: 'there is no subset or parallel `extras`',
          found: 'extras',
          expected: '`extra`',
          fix: 'extra',
        },
      },
      {
        says: 'a redemption for a card that there is not',
        files: packedWith([
          'products:',
          'redemptions:\n  - { found: extra, sends: [extra/b7], ships: 2027-06-08, redeemBy: never }\nproducts:',
        ]),
        gives: {
          at: 'one/plan.yaml:12:29',
          covers: 'extra/b7',
          message: 'there is no card `extra/b7` that this can name',
          found: 'extra/b7',
          expected: 'the subset and id of a card of this set',
        },
      },
      {
        says: 'a variation of nothing',
        files: {
          'one/cards/base/a1b.md':
            '---\nnumber: "1"\nname: The Quay\nspoiler: open\nvariation: { of: base/z9, letter: b, tell: The tide is out }\n---\nThe quay stands dry.\n',
        },
        gives: {
          at: 'one/cards/base/a1b.md:5:18',
          covers: 'base/z9',
          message: 'there is no card `base/z9` that this can name',
          found: 'base/z9',
          expected: 'the subset and id of a card of this set, and no variation of one',
        },
      },
    ],
  },
};
