import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { NameIndex, editDistance } from '../../pipeline/text/index.js';

const index = new NameIndex([
  { form: 'Ysolde Marrack', exact: false, of: 'Ysolde' },
  { form: 'Ninth Gate', exact: false, of: 'Gate' },
  { form: 'Barnaby Quent', exact: false, of: 'Barnaby' },
  { form: 'Widow’s Kettle', exact: false, of: 'Kettle' },
  { form: 'the Long Match', exact: true, of: 'Match' },
  { form: 'Dace', exact: false, of: 'Dace' },
  { form: 'Marrack, Ysolde', exact: false, of: 'Ysolde' },
]);

function found(text: string): readonly string[] {
  return index
    .find(text)
    .map(({ from, to, of, doubt }) => `${text.slice(from, to)}: ${doubt ?? of.join('+')}`);
}

describe('words of a name that are joined or broken', () => {
  test.each<[string, string[]]>([
    ['YsoldeMarrack came', ['YsoldeMarrack: Ysolde']],
    ['the ninthgates', ['ninthgates: Gate']],
    ['Y s o l d e  M a r r a c k', ['Y s o l d e  M a r r a c k: Ysolde']],
    ['Y.s.o.l.d.e.M.a.r.r.a.c.k', ['Y.s.o.l.d.e.M.a.r.r.a.c.k: Ysolde']],
    ['Ysolde-\nMar-\nrack', ['Ysolde-\nMar-\nrack: Ysolde']],
    ['Ysolde Mar\\rack', ['Ysolde Mar\\rack: Ysolde']],
    ['Ysolde M@rr@ck', ['Ysolde M@rr@ck: Ysolde']],
    ['B-a-r-n-a-b-y Quent', ['B-a-r-n-a-b-y Quent: Barnaby']],
    [
      'Ninth.Gate, Ninth “Gate” and Ninth (Gate)',
      ['Ninth.Gate: Gate', 'Ninth “Gate: Gate', 'Ninth (Gate: Gate'],
    ],
    ['Widows Kettle, WIDOWSKETTLE', ['Widows Kettle: Kettle', 'WIDOWSKETTLE: Kettle']],
    ['D a c e', ['D a c e: Dace']],
    ['Marrack,Ysolde', ['Marrack,Ysolde: Ysolde']],
    // With spaces inside a word it may be other words.
    ['Ysol de Marrack', ['Ysol de Marrack: apart']],
    ['a nin th gate', []],
    ['Da ce', []],
    // A full stop or a comma and a space part two words.
    ['the ninth. Gate', []],
    ['the ninth, gates', []],
    ['THE LONG MATCH', ['THE LONG MATCH: capitals']],
    ['The Long Match, a long match', ['The Long Match: Match']],
  ])('%j', (text, names) => {
    expect(found(text)).toStrictEqual(names);
  });
});

describe('a slip', () => {
  test.each<[string, string[]]>([
    ['Ninth Gaze', ['Ninth Gaze: slip']],
    ['Nineth Gate', ['Nineth Gate: slip']],
    ['a ninth gaze, Ninth gaze, ninth Gaze', []],
    // A sentence in small letters has no capitals to know a name by.
    ['ninth gaze? ninth gaze', ['ninth gaze: slip', 'ninth gaze: slip']],
    ['NINTH GAZE', ['NINTH GAZE: slip']],
    ['Ninths Gate, Ninth Gates', ['Ninths Gate: slip', 'Ninth Gates: Gate']],
    ['Widow’ss Kettle', ['Widow’ss Kettle: slip']],
    // The first letter may have taken the capital with it.
    ['Ysolde arrack, Ysolde karrack', ['Ysolde arrack: slip', 'Ysolde karrack: slip']],
    ['the Ninth ate, the inth Gate', ['Ninth ate: slip', 'inth Gate: slip']],
    ['Widw’s Kettle, Widws Kettle', ['Widw’s Kettle: slip', 'Widws Kettle: slip']],
    ['Ysolde Marack', ['Ysolde Marack: slip']],
    ['YsoldeMarack', ['YsoldeMarack: slip']],
    ['Barxaby Quent', ['Barxaby Quent: slip']],
    ['Dade', []],
  ])('%j', (text, names) => {
    expect(found(text)).toStrictEqual(names);
  });

  test('is found exactly where one edit makes the word', () => {
    const WORD = 'Marrigan';
    const one = new NameIndex([{ form: WORD, exact: false, of: WORD }]);
    const letters = fc.constantFrom('a', 'b', 'e', 'g', 'i', 'm', 'n', 'r');
    const edited = fc
      .tuple(fc.nat(6), fc.constantFrom('drop', 'put', 'swap', 'change'), letters, fc.boolean())
      .map(([place, kind, letter, twice]) => {
        const edit = (word: string): string => {
          const at = 1 + (place % (word.length - 2));
          if (kind === 'drop') return word.slice(0, at) + word.slice(at + 1);
          if (kind === 'put') return word.slice(0, at) + letter + word.slice(at);
          if (kind === 'change') return word.slice(0, at) + letter + word.slice(at + 1);
          return word.slice(0, at) + word.charAt(at + 1) + word.charAt(at) + word.slice(at + 2);
        };
        return twice ? edit(edit(WORD)) : edit(WORD);
      })
      // Two letters that are read as one are another matter.
      .filter((word) => !/rn|s$/.test(word));
    fc.assert(
      fc.property(edited, (word) => {
        const distance = editDistance(word.toLowerCase(), WORD.toLowerCase());
        const doubts = one.find(`A ${word} here`).map(({ doubt }) => doubt);
        expect(doubts).toStrictEqual(distance === 0 ? [null] : distance === 1 ? ['slip'] : []);
      }),
    );
  });
});
