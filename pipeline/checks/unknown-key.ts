import { faultsOf } from './faults.js';
import type { Rule } from './rule.js';

/** A key that no schema has. */
export const unknownKey: Rule = {
  id: 'unknown-key',
  about: 'files',
  severity: 'error',
  why: 'A misspelt key is a lost instruction: a hold that is not there holds nothing.',
  acceptable: false,
  lookRaw: (content) => faultsOf(content, 'unknown-key'),
  examples: {
    passes: [{ says: 'keys that the schema knows', files: {} }],
    fails: [
      {
        says: 'a misspelt `embargo`',
        files: {
          'one/cards/extra/b1.md':
            '---\nnumber: X-1\nname: The Chart\nspoiler: open\nembargos: []\n---\nInk, and a thumbprint.\n',
        },
        gives: {
          at: 'one/cards/extra/b1.md:5:1',
          covers: 'embargos',
          message: 'there is no key `embargos`',
          found: 'embargos',
          expected: '`embargo`',
          fix: 'embargo',
        },
      },
      {
        says: 'a misspelt key that every card must have',
        files: {
          'one/cards/extra/b1.md':
            '---\nnumber: X-1\nname: The Chart\nspolier: open\n---\nInk, and a thumbprint.\n',
        },
        gives: {
          at: 'one/cards/extra/b1.md:4:1',
          covers: 'spolier',
          message: 'there is no key `spolier`',
          found: 'spolier',
          expected: '`spoiler`',
          fix: 'spoiler',
        },
      },
      {
        says: 'a key with a capital: nobody can have meant another',
        files: {
          'one/cards/extra/b1.md':
            '---\nnumber: X-1\nname: The Chart\nspoiler: open\nEmbargo: []\n---\nInk, and a thumbprint.\n',
        },
        gives: {
          at: 'one/cards/extra/b1.md:5:1',
          covers: 'Embargo',
          message: 'there is no key `Embargo`',
          found: 'Embargo',
          expected: '`embargo`',
          fix: 'embargo',
          certain: true,
        },
      },
    ],
  },
};
