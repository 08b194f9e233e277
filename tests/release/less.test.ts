import { describe, expect, it } from 'vitest';

import { partsGone } from '../../pipeline/release/index.js';
import { card, dataWith, placeholder } from './small-site.js';

const words = (text: string) => ({ text, italic: false, bold: false, level: 0 });
const held = { held: true } as const;

describe('what one site shows and the next does not', () => {
  it.each([
    ['the same', [card('1')], [card('1')], []],
    ['a card more', [card('1')], [card('1'), card('2')], []],
    ['a card less', [card('1'), card('2')], [card('2')], ['high-water/crew 1']],
    ['a renumbered card', [card('1')], [card('2')], ['high-water/crew 1']],
    [
      'another letter',
      [card('1', { letter: 'b' })],
      [card('1', { letter: 'c' })],
      ['high-water/crew 1b'],
    ],
    ['other words', [card('1')], [card('1', { name: 'X', bio: [[words('No.')]] })], []],
    ['a bio less', [card('1')], [card('1', { bio: [] })], ['high-water/crew 1: bio']],
    ['a bio held', [card('1')], [card('1', { bioHeld: true })], ['high-water/crew 1: bio']],
    [
      'a mark more',
      [card('1', { bio: [[words('A'), held]] })],
      [card('1', { bio: [[held, words('A'), held]] })],
      ['high-water/crew 1: bio'],
    ],
    [
      'a mark less',
      [card('1', { bio: [[words('A'), held]] })],
      [card('1', { bio: [[words('A')]] })],
      [],
    ],
    [
      'a fact, a signer, a credit',
      [
        card('1', {
          signers: [{ name: 'Osk Ferrant', as: null, redemption: false }],
          credits: [{ role: 'Puppets', name: 'Wen' }],
        }),
      ],
      [card('1', { facts: [] })],
      [
        'high-water/crew 1: fact Boat',
        'high-water/crew 1: signer Osk Ferrant',
        'high-water/crew 1: credit Puppets Wen',
      ],
    ],
    [
      'what is printed beside it',
      [
        card('1', {
          texts: [{ zone: 'foot', value: 'F', level: 0 }],
          image: { alt: 'A boat', level: 0, files: [] },
          tell: 'Blue',
          shortPrint: 'SP',
          run: 9,
          revealed: '2027',
        }),
      ],
      [card('1')],
      ['text foot', 'image', 'how to tell it', 'short print', 'run', 'when it was revealed'].map(
        (field) => `high-water/crew 1: ${field}`,
      ),
    ],
    ['a placeholder that opens', [placeholder('1')], [card('1')], []],
    ['a placeholder that gets a number', [placeholder(null)], [card('7')], []],
    [
      'two placeholders, one of which opens',
      [placeholder(null), placeholder(null)],
      [card('7')],
      ['high-water/crew: 1 without a number'],
    ],
    ['a card without a number', [card(null)], [], ['high-water/crew Card without']],
  ])('%s', (_, was, is, gone) => {
    expect(partsGone(dataWith(was), dataWith(is))).toEqual(gone);
  });

  it('names a set or a subset that goes, and nothing below it', () => {
    const was = dataWith([card('1'), placeholder(null)]);
    expect(partsGone(was, { ...was, sets: [] })).toEqual(['high-water']);
    const emptied = { ...was, sets: was.sets.map((set) => ({ ...set, subsets: [] })) };
    expect(partsGone(was, emptied)).toEqual(['high-water/crew']);
  });

  it('counts what a set and its subsets say of themselves', () => {
    const bare = dataWith([]);
    const full = {
      ...bare,
      property: { ...bare.property, legal: 'Lantern & Oar', dataTerms: 'Ask first.' },
      sets: bare.sets.map((set) => ({
        ...set,
        street: [
          { region: null, at: '2027' },
          { region: 'the isles', at: '2027' },
        ],
        products: [{ id: 'hobby', title: 'Hobby', pack: 6, box: 24, odds: [] }],
        parallels: [{ id: 'tide', title: 'Tide', of: [], run: 9, tell: 'Blue', revealed: null }],
        corrections: [
          {
            number: '1',
            letter: null,
            page: null,
            level: 0,
            at: '2027-05-01',
            was: 'a',
            now: 'b',
            note: null,
          },
        ],
        subsets: set.subsets.map((subset) => ({ ...subset, found: 'Packs', artists: ['Wen'] })),
      })),
    };
    expect(partsGone(full, bare)).toEqual([
      'the legal line',
      'the terms of the data',
      'high-water: in shops',
      'high-water: in shops in the isles',
      'high-water: parallel tide',
      'high-water: run of parallel tide',
      'high-water: how to tell parallel tide',
      'high-water: product hobby',
      'high-water: cards a pack of product hobby',
      'high-water: packs a box of product hobby',
      'high-water: correction of 2027-05-01 to 1',
      'high-water/crew: where it is found',
      'high-water/crew: artist Wen',
    ]);
    expect(partsGone(bare, full)).toEqual([]);
  });
});
