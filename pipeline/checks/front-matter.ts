import { faultsOf } from './faults.js';
import type { Rule } from './rule.js';

/** Front matter that is not opened, closed or written as it must be. */
export const frontMatter: Rule = {
  id: 'front-matter',
  about: 'files',
  severity: 'error',
  why: 'Front matter that one program takes for text shows what it should hold.',
  acceptable: false,
  lookRaw: (content) => faultsOf(content, 'front-matter'),
  examples: {
    passes: [{ says: 'front matter between two lines of three hyphens', files: {} }],
    fails: [
      {
        says: 'a fence that asks for an engine: nothing of it is run',
        files: { 'one/cards/extra/b1.md': '---js\n{ number: process.pid }\n---\nInk.\n' },
        gives: {
          at: 'one/cards/extra/b1.md:1:1',
          covers: '---js',
          message: 'the file does not open with front matter',
          found: '---js',
          expected: 'a first line that is exactly ---',
        },
      },
      {
        says: 'a key that stands twice',
        files: {
          'one/cards/extra/b1.md':
            '---\nnumber: X-1\nname: The Chart\nspoiler: open\nspoiler: last\n---\nInk, and a thumbprint.\n',
        },
        gives: {
          at: 'one/cards/extra/b1.md:5:1',
          covers: 'spoiler',
          message: 'this key stands twice',
          found: 'spoiler',
        },
      },
    ],
  },
};
