import { faultsOf } from './faults.js';
import type { Rule } from './rule.js';

/** A card file in no folder of a subset, or with a name that is no id. */
export const misplacedCard: Rule = {
  id: 'misplaced-card',
  about: 'files',
  severity: 'error',
  why: 'A card is what its file name and folder say; in another place it is no card of the set.',
  acceptable: false,
  lookRaw: (content) => faultsOf(content, 'misplaced-card'),
  examples: {
    passes: [{ says: 'cards in the folders of their subsets', files: {} }],
    fails: [
      {
        says: 'a folder that the plan does not know',
        files: {
          'one/cards/extras/b2.md': '---\nnumber: X-2\nname: Ink\nspoiler: open\n---\nInk.\n',
        },
        gives: {
          at: 'one/cards/extras/b2.md:1:1',
          covers: '',
          message: 'this folder is no subset of the plan',
          found: 'one/cards/extras/b2.md',
          expected: 'one of base, extra',
        },
      },
      {
        says: 'a file name with a capital letter',
        files: {
          'one/cards/extra/B2.md': '---\nnumber: X-2\nname: Ink\nspoiler: open\n---\nInk.\n',
        },
        gives: {
          at: 'one/cards/extra/B2.md:1:1',
          covers: '',
          message: 'this is no place for a card',
          found: 'one/cards/extra/B2.md',
          expected: 'cards/<subset>/<id>.md, the id of small letters, digits and hyphens',
        },
      },
    ],
  },
};
