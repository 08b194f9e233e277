import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { merged } from '../../pipeline/desk/merge.js';

const word = fc.constantFrom('lamp', 'quay', 'oar', 'net', 'moth', 'rope');
const words = fc.array(word, { maxLength: 12 }).map((all) => all.join(' '));

describe('two people’s changes of one text', () => {
  it.each([
    ['a b c', 'a b c', 'a b c', 'a b c'],
    ['a b c', 'A b c', 'a b c', 'A b c'],
    ['a b c', 'a b c', 'a b C', 'a b C'],
    ['a b c d e', 'A b c d e', 'a b c d E', 'A b c d E'],
    ['a b c', 'a b X', 'a b X', 'a b X'],
    ['a b c d e f g', 'X b c d e f g', 'X b c d e f Y', 'X b c d e f Y'],
    [
      'one\ntwo\nthree\n',
      'one\ntwo and more\nthree\n',
      '# note\none\ntwo\nthree\n',
      '# note\none\ntwo and more\nthree\n',
    ],
  ])('of %j into %j and %j stand together as %j', (base, mine, theirs, both) => {
    expect(merged(base, mine, theirs)).toBe(both);
  });

  it.each([
    ['a b c', 'a X c', 'a Y c'],
    ['a b c', 'a c', 'a Y c'],
    ['', 'mine', 'theirs'],
    ['a b', 'a b mine', 'a b theirs'],
  ])('of %j into %j and %j touch the same words: a person decides', (base, mine, theirs) => {
    expect(merged(base, mine, theirs)).toBeNull();
  });

  it('come out the same whoever is first, and nobody’s change alone is lost', () => {
    fc.assert(
      fc.property(words, words, words, (base, mine, theirs) => {
        expect(merged(base, mine, theirs)).toBe(merged(base, theirs, mine));
        expect(merged(base, mine, base)).toBe(mine);
        expect(merged(base, base, theirs)).toBe(theirs);
      }),
    );
  });

  it('far from each other are both there', () => {
    fc.assert(
      fc.property(words, words, words, (before, middle, after) => {
        const base = `${before} one ${middle} between all of this ${middle} two ${after}`;
        const mine = base.replace(' one ', ' first ');
        const theirs = base.replace(' two ', ' second ');
        expect(merged(base, mine, theirs)).toBe(mine.replace(' two ', ' second '));
      }),
    );
  });
});
