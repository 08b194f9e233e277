import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { plainBio, rewritten, tidied } from '../../pipeline/out/packet/bio-words.js';
import type { PageRun } from '../../pipeline/out/packet/page-data.js';

const run = (text: string, more: Partial<PageRun> = {}): PageRun => ({
  text,
  italic: false,
  bold: false,
  held: false,
  ...more,
});

const BIO = [
  [run('She rows '), run('the Heron', { italic: true }), run(' at night.')],
  [run('Few know '), run('who is below', { held: true }), run('.'), run('\n'), run('None ask.')],
];

describe('a bio as it is typed', () => {
  it('parts paragraphs by an empty line and keeps hard breaks', () => {
    expect(plainBio(BIO)).toBe('She rows the Heron at night.\n\nFew know who is below.\nNone ask.');
  });

  it('is the same however its line ends and spaces are typed', () => {
    expect(tidied('  One \r\n \r\n\r\nTwo\t\r\nthree \n')).toBe('One\n\nTwo\nthree');
  });
});

describe('a bio that is typed anew', () => {
  it('keeps the faces of its words, and gives new ones the face of those before', () => {
    const text = 'She rows the old Heron by night.\n\nFew know who is below.\nNone dare ask.';
    expect(rewritten(BIO, text)).toEqual({
      bio: [
        [run('She rows '), run('the old Heron', { italic: true }), run(' by night.')],
        [
          run('Few know '),
          run('who is below', { held: true }),
          run('.'),
          run('\n'),
          run('None dare ask.'),
        ],
      ],
    });
  });

  it.each([
    ['a letter less', 'Few know who is belo.'],
    ['a word more within', 'Few know who still is below.'],
    ['all gone', 'Few know.'],
  ])('says which held words are not as they were: %s', (_, text) => {
    expect(rewritten(BIO, text)).toEqual({ lost: 'who is below' });
  });

  it('finds held words where the same words stand beside them', () => {
    const bio = [[run('the cat '), run('the cat', { held: true }), run(' sat')]];
    expect(rewritten(bio, 'the cat sat')).toEqual({
      bio: [[run('the cat', { held: true }), run(' sat')]],
    });
  });

  it('never changes a word, and holds what was held, whatever is typed around it', () => {
    const words = fc.array(fc.constantFrom('a', 'the', 'below', ' ', '\n\n', '\n', 'who', '.'));
    fc.assert(
      fc.property(words, words, (before, after) => {
        const text = tidied(`${before.join('')} who is below ${after.join('')}`);
        const anew = rewritten(BIO, text);
        if ('lost' in anew) throw new Error(anew.lost);
        expect(plainBio(anew.bio)).toBe(text);
        const held = anew.bio.flat().filter((each) => each.held);
        expect(held.map((each) => each.text).join('')).toBe('who is below');
      }),
    );
  });
});
