import type { Rule } from './rule.js';
import { edited } from './sample.js';

/** An acceptance that meets no finding. The runner finds these when all other rules have looked. */
export const acceptedUnused: Rule = {
  id: 'accepted-unused',
  about: 'files',
  severity: 'error',
  why: 'What was accepted once must not cover, unseen, for something new.',
  acceptable: false,
  examples: {
    passes: [
      {
        says: 'a finding that stands for a reason',
        files: {
          'one/cards/extra/b1.md':
            '---\nnumber: X-1\nname: The Chart\nspoiler: open\naccepted: [{ rule: copy-words, words: 2 words, why: a riddle, by: jonah }]\n---\nOnly ink.\n',
        },
      },
    ],
    fails: [
      {
        says: 'an acceptance of words that are gone',
        files: edited('one/cards/extra/b1.md', [
          'spoiler: open',
          'spoiler: open\naccepted: [{ rule: copy-words, words: 2 words, why: a riddle, by: jonah }]',
        ]),
        gives: {
          at: 'one/cards/extra/b1.md:5:20',
          covers: 'copy-words',
          message: 'this accepts a finding that is not there',
          found: '2 words',
          expected: 'no such entry',
        },
      },
      {
        says: 'a rule that there is none of',
        files: edited('one/cards/extra/b1.md', [
          'spoiler: open',
          'spoiler: open\naccepted: [{ rule: copy-word, words: 2 words, why: a riddle, by: jonah }]',
        ]),
        gives: {
          at: 'one/cards/extra/b1.md:5:20',
          covers: 'copy-word',
          message: 'there is no rule `copy-word`',
          found: 'copy-word',
          expected: '`copy-words`',
          fix: 'copy-words',
        },
      },
    ],
  },
};
