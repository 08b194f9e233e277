import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { plain } from '../../pipeline/out/lists/plain.js';
import { widthOf, wrapped } from '../../pipeline/out/lists/wrap.js';
import type { PublicData } from '../../schema/index.js';
import { data, empty, trouble, troubled, withoutAddress } from './fixture.js';
import { textAt } from './support.js';

const PATH = 'high-water/checklist.txt';

describe('a set as plain text', () => {
  test('is a checklist that can be ticked off by hand', () => {
    expect(textAt(data, PATH)).toBe(`The Ferrywrights: High Water
As of 16 April 2027, 09:00 (London time). The list may change.
In shops 16 April 2027 (UK), 17 April 2027 (AU). 8 cards listed.
https://cards.example/ferrywrights/high-water/

Crew and Craft
Base set, found in packs. 4 cards listed.
[ ] 17   Odalys Thrane
[ ] 17b  Odalys Thrane – variation: the lamp is lit; short print (SP); 250
         copies
[ ] 18   Magistrate Tern
[ ] 19   The voice in the lock – to be revealed on 14 May 2027
[ ] 20   To be revealed on 14 May 2027
    21   A plank of the Widow’s Kettle – not issued

Signatures
Autographs, found in boxes. 2 cards listed.
[ ] SG-9  The two divers – one of one; signed by Mirela Voss as Dorrit Sill
          and Caspar Voss (redemption)
[ ]       To be revealed

Sketch Cards
Sketches. 2 artists.
Artists: Tove Lindqvist and Bram Ostrey.

Parallels: the same cards in other finishes
  Tarred, of Crew and Craft and Signatures: a dark edge
  Varnished, of Crew and Craft: 84 copies of each

Corrections: printed or listed wrongly before
  15 April 2027, 17b: was “205 copies”, is “250 copies” (on the sell sheet)

© 2027 Lantern & Oar
Free to use with the name of the publisher.
`);
  });

  test('leaves out what is not there', () => {
    const [set] = data.sets;
    if (!set) throw new Error('the fixture has a set');
    const bare = { ...set, street: [], subsets: [], parallels: [], corrections: [], listed: 0 };
    const some: PublicData = {
      ...empty,
      property: { ...empty.property, address: null },
      sets: [bare],
    };
    expect(textAt(some, PATH)).toBe(`The Ferrywrights: High Water
As of 16 April 2027, 09:00 (London time). The list may change.
0 cards listed.
`);
    expect(textAt(withoutAddress, PATH)).not.toContain('https:');
  });

  test('has no controls and no marks that turn the text, whatever the texts are', () => {
    fc.assert(
      fc.property(troubled, (some) => {
        const text = textAt(some, PATH);
        expect(text).not.toMatch(/[^\P{Cc}\n]|[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/u);
        expect(text).not.toMatch(/\p{Noncharacter_Code_Point}/u);
      }),
      { numRuns: 40 },
    );
  });

  test('has lines of at most 78 columns wherever words allow', () => {
    fc.assert(
      fc.property(troubled, (some) => {
        const long = textAt(some, PATH)
          .split('\n')
          .filter((line) => widthOf(line) > 78);
        // Only a line that is one word, after a box or an indent, is longer.
        expect(long.filter((line) => /\S /.test(line.replace(/^ *(\[ \])? */, '')))).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
});

describe('lines', () => {
  test('are filled one after the other, and stand in under what they open with', () => {
    const text = Array.from({ length: 20 }, (_, at) => `lock${String(at)}`).join(' ');
    const lines = wrapped(text, '[ ] 1  ');
    expect(lines).toEqual([
      '[ ] 1  lock0 lock1 lock2 lock3 lock4 lock5 lock6 lock7 lock8 lock9 lock10',
      '       lock11 lock12 lock13 lock14 lock15 lock16 lock17 lock18 lock19',
    ]);
    expect(wrapped('x'.repeat(90), '- ')).toEqual(['-', `  ${'x'.repeat(90)}`]);
    expect(wrapped(`a ${'x'.repeat(76)}`)).toEqual([`a ${'x'.repeat(76)}`]);
    expect(wrapped(`a ${'x'.repeat(77)}`)).toEqual(['a', 'x'.repeat(77)]);
    expect(wrapped('')).toEqual(['']);
  });

  test('lose no word', () => {
    fc.assert(
      fc.property(trouble, (text) => {
        const words = plain(text);
        expect(wrapped(words, '  ').join(' ').split(' ').filter(Boolean)).toEqual(
          words.split(' ').filter(Boolean),
        );
      }),
    );
  });
});

test('a plain text keeps what shows, and joiners that make a picture', () => {
  expect(plain(' a\u0000\u202eb\r\n\tc\u2066 \ufffe\ud800d\u00ad ')).toBe('ab c d');
  expect(plain('👩\u200d🚀 e\u0301 \u00a0')).toBe('👩\u200d🚀 e\u0301');
});
