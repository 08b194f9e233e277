import { describe, expect, test } from 'vitest';

import { CastForms, type CastForm } from '../../pipeline/text/index.js';

const WORDS = new Set(
  'the a patient heron nine locks bell old told still sister ash order hash pelt argument quay lock stood in we saw went by of and lamp boat then that miss captain emetic'.split(
    ' ',
  ),
);
const knows = (word: string): boolean =>
  WORDS.has(word) || (/^[A-Z]/.test(word) && WORDS.has(word.toLowerCase()));

function form(text: string, rest: Partial<CastForm<string>> = {}): CastForm<string> {
  return { form: text, role: 'right', exact: false, use: text, of: text, ...rest };
}

const CAST = new CastForms(
  [
    form('Odalys Thrane'),
    form('Odalys'),
    form('Captain Thrane'),
    form('Miss Thrane', { role: 'avoid', use: 'Captain Thrane' }),
    form('Emeric Hask'),
    form('Emeric'),
    form('Old Pell'),
    form('Pell'),
    form('Sister Quillon Ash'),
    form('Sister Ash', { role: 'avoid', use: 'Sister Quillon' }),
    form('Patient Heron'),
    form('the Argument', { exact: true }),
    form('the Overmere'),
    form('Nine Locks'),
    form('Nine-Locks', { role: 'avoid', use: 'Nine Locks' }),
    form('Noémie Vance'),
    form('Saffi Oduya-Lark'),
    form('Widow’s Kettle'),
    form('Dace Sill'),
  ],
  { knows },
);

/** What is found: the words, what is wrong with them, and what should stand there. */
function found(text: string): readonly string[] {
  return CAST.read(text).matches.map(({ from, to, slip, put, entry, clear }) => {
    const state = slip === null ? (entry.form.role === 'avoid' ? 'avoid' : 'right') : slip;
    return `${text.slice(from, to)}: ${state}${slip !== null && clear ? '!' : ''} ${put}`;
  });
}

describe('forms of a cast', () => {
  test.each([
    ['we saw Odalys Thrane', ['Odalys Thrane: right Odalys Thrane']],
    ['Odalys’s boat and Odalys’ lamp', ['Odalys’s: right Odalys’s', 'Odalys’: right Odalys’']],
    ["Widow's Kettle", ["Widow's Kettle: right Widow’s Kettle"]],
    ['The Argument went', ['The Argument: right The Argument']],
    ['an argument, the argument', []],
    ['the Overmere, an Overmere', ['the Overmere: right the Overmere', 'Overmere: right Overmere']],
    ['Sister Quillon Ash', ['Sister Quillon Ash: right Sister Quillon Ash']],
    ['we saw NOÉMIE VANCE STOOD', ['NOÉMIE VANCE: right Noémie Vance']],
    ['we saw Noe\u0301mie Vance', ['Noe\u0301mie Vance: right Noémie Vance']],
  ])('%s', (text, all) => {
    expect(found(text)).toEqual(all);
  });

  test.each([
    ['we saw Miss Thrane’s lamp', ['Miss Thrane’s: avoid Captain Thrane’s']],
    ['we saw miss Thrane', ['miss Thrane: capitals! Captain Thrane']],
    ['by Nine-Locks', ['Nine-Locks: avoid Nine Locks']],
    ['Sister Ash’ boat', ['Sister Ash: avoid Sister Quillon']],
  ])('no longer used: %s', (text, all) => {
    expect(found(text)).toEqual(all);
  });

  test.each([
    ['we saw odalys Thrane', ['odalys Thrane: capitals! Odalys Thrane']],
    ['we saw odalys', ['odalys: capitals! Odalys']],
    ['we saw ODALYS go', ['ODALYS: capitals! Odalys']],
    ['by the PATIENT heron', ['PATIENT heron: capitals! Patient Heron']],
    ['we saw Noemie Vance', ['Noemie Vance: marks! Noémie Vance']],
    ['we saw Noèmie Vance', ['Noèmie Vance: marks! Noémie Vance']],
    ['we saw Saffi Oduya Lark', ['Saffi Oduya Lark: joined Saffi Oduya-Lark']],
    ['we saw OdalysThrane', ['OdalysThrane: joined Odalys Thrane']],
    ['by NineLocks', ['NineLocks: joined Nine Locks']],
    ['we saw Hask Emeric’s boat', ['Hask Emeric’s: swapped Emeric Hask’s']],
    ['we saw Emerik Hask', ['Emerik Hask: letters! Emeric Hask']],
    ['we saw Emeric Hash', ['Emeric Hash: letters Emeric Hask']],
    ['we saw Widows Kettle', ['Widows Kettle: letters! Widow’s Kettle']],
    ['we saw Odaly Thrane', ['Odaly Thrane: letters! Odalys Thrane']],
    ['we saw Odalis', ['Odalis: letters Odalys']],
    ['we saw Mis Thrane', ['Mis Thrane: letters! Captain Thrane']],
    ['the Arguement', ['the Arguement: letters! the Argument']],
    ['by the Ovvermere', ['the Ovvermere: letters! the Overmere']],
  ])('nearly: %s', (text, all) => {
    expect(found(text)).toEqual(all);
  });

  test.each([
    ['a patient heron stood in the order of the hash'],
    ['Patient heron stood still. Nine locks went by.'],
    ['nine locks and a pelt'],
    ['a sister, ash and a bell'],
    ['We saw the old bell'],
  ])('common words: %s', (text) => {
    expect(found(text)).toEqual([]);
  });

  test.each([
    ['Told Pell that', ['Pell: right Pell']],
    ['Emeric. Hask', ['Emeric: right Emeric']],
    ['Odalys, Thrane', ['Odalys: right Odalys']],
    ['Emeric Hasks', ['Emeric Hasks: right Emeric Hasks']],
  ])('what stands beside: %s', (text, all) => {
    expect(found(text)).toEqual(all);
  });
});
