import type { CardFront } from '../../schema/index.js';
import { instantText } from './generate-words.js';
import type { Plain, PlainCard, PlainSet, Stretch } from './plain.js';

/** A small content with something of every kind. Day 0 is its first public day. */

/** Days of its steps. `finale` is absent and not announced; `undated` never opens. */
export const DAYS = { fair: 10, shops: 40, spring: 80, finale: 120 } as const;

export function cardOf(
  subset: string,
  id: string,
  front: Partial<CardFront> & Pick<CardFront, 'number'>,
  ...bio: Stretch[][]
): PlainCard {
  return { subset, id, front: { name: `Name of ${id}`, spoiler: 'open', ...front }, bio };
}

/** A stretch of plain words; held by a level or an embargo, if one is given. */
export function say(
  words: string,
  hold: string | null = null,
  more: Partial<Stretch> = {},
): Stretch {
  return {
    words,
    italic: false,
    bold: false,
    hold,
    count: null,
    broken: false,
    stressed: false,
    ...more,
  };
}

/** The content with these cards in its set. */
export function exampleWith(...cards: PlainCard[]): Plain {
  return example({ cards, corrections: null });
}

/** The content, with parts of its set replaced. */
export function example(parts: Partial<PlainSet> = {}): Plain {
  return {
    property: {
      id: 'ferrywrights',
      title: 'The Ferrywrights',
      zone: 'Europe/London',
      since: instantText(0),
      levels: [
        { id: 'open', label: 'Known from the trailers' },
        { id: 'shops', label: 'First cards', lift: instantText(DAYS.shops) },
        { id: 'spring', label: 'Episodes 4 to 7', lift: instantText(DAYS.spring) },
        {
          id: 'finale',
          label: 'Later episodes',
          lift: instantText(DAYS.finale),
          held: 'absent',
          announce: false,
        },
      ],
      embargoes: [
        { id: 'fair', label: 'The fair', lift: instantText(DAYS.fair) },
        { id: 'quiet', label: 'A quiet one', lift: instantText(DAYS.shops), announce: false },
        { id: 'undated', label: 'No date yet', lift: 'unset' },
      ],
      approvals: 'none',
      legal: { line: '© 2027 Lantern & Oar' },
      site: {
        shows: { bio: 'full', art: 'front', facts: 'full', credits: 'full' },
        title: 'The Ferrywrights: checklists',
        address: 'https://cards.example/ferrywrights/',
        dataTerms: 'Free to use with the name of the publisher.',
        look: { accent: '#0b6e69', paper: '#f6f8f7', ink: '#15242b', type: 'source' },
      },
    },
    names: {
      names: [
        {
          name: 'Odalys Thrane',
          kind: 'character',
          level: 'open',
          say: 'oh-DAH-liss',
          aliases: ['Odalys', { form: 'The last ferrier', level: 'finale' }],
        },
        { name: 'Ysolde Marrack', kind: 'character', level: 'finale', say: 'ee-SOLD' },
      ],
    },
    people: {
      people: [
        { id: 'amara', name: 'Amara Linde', role: 'licensor', clearance: 'spring' },
        {
          id: 'orrin',
          name: 'Orrin Vetchley',
          role: 'likeness',
          clearance: 'open',
          knows: ['undated'],
          sees: { depicts: ['Ines Albarran'] },
        },
      ],
    },
    layouts: [layout('standard'), layout('hidden-one')],
    sets: [highWater(parts)],
  };
}

function layout(id: string): Plain['layouts'][number] {
  return {
    id,
    trim: { width: 63.5, height: 88.9 },
    bleed: 3.175,
    safe: 3.175,
    fonts: { body: { regular: 'body.ttf' } },
    zones: {},
    shared: { caption: `Shared words of ${id}` },
  };
}

function highWater(parts: Partial<PlainSet>): PlainSet {
  return {
    id: 'high-water',
    plan: {
      id: 'high-water',
      title: 'The Ferrywrights: High Water',
      short: 'High Water',
      spoiler: 'open',
      stage: 'writing',
      street: { uk: instantText(5), au: instantText(6) },
      subsets: [
        {
          id: 'crew',
          title: 'Crew and Craft',
          group: 'base',
          numbers: { from: 1, to: 48 },
          back: 'standard',
        },
        {
          id: 'signatures',
          title: 'Signatures',
          group: 'autographs',
          numbers: { codes: ['SG-1', 'SG-9', 'SG-12'] },
          found: 'pack',
        },
        {
          id: 'sketches',
          title: 'Sketch Cards',
          group: 'sketches',
          numbers: 'none',
          roster: 'rosters/sketches.yaml',
        },
      ],
      products: [
        {
          id: 'hobby',
          title: 'Hobby',
          pack: 6,
          box: 24,
          contents: [
            { of: 'crew', odds: 24 },
            { of: 'varnished', odds: 9 },
          ],
        },
      ],
      parallels: [
        { id: 'varnished', title: 'Varnished', of: ['crew'], run: 84, tell: 'gloss over the art' },
      ],
    },
    cards: [
      cardOf('crew', 'c001', FULL, [say('A bell is heard.'), say('Nobody rings it.', 'spring')]),
      cardOf('crew', 'c002', { number: '2', spoiler: 'spring', publicName: 'The lamp tender' }),
      cardOf('crew', 'c003', { number: '3', issued: 'no', why: 'the wood was from another boat' }),
      cardOf('crew', 'c004', { number: '4', spoiler: 'shops', holds: { bio: 'spring' } }),
      cardOf('crew', 'c048', { number: '48', spoiler: 'finale' }),
      cardOf('signatures', 'au01', {
        number: 'SG-1',
        signers: [{ name: 'Ines Albarran', as: 'Odalys Thrane', state: 'signed' }],
      }),
    ],
    sales: [],
    rosters: {
      'rosters/sketches.yaml': {
        artists: [
          { name: 'Tove Lindqvist', state: 'signed' },
          { name: 'Harl Dunnock', state: 'contracted' },
        ],
      },
    },
    corrections: {
      corrections: [
        { card: 'crew/c001', at: '2027-01-10', was: 'nine', now: 'eight', note: 'Counted again.' },
        { card: 'crew/c048', at: '2027-01-11', was: 'the gate', now: 'the ninth gate' },
      ],
    },
    art: ['art/c001.svg'],
    drawn: {},
    ...parts,
  };
}

const FULL: Partial<CardFront> & Pick<CardFront, 'number'> = {
  number: '1',
  name: 'Odalys Thrane',
  image: { file: 'art/c001.svg', alt: 'A pilot at a wheel', depicts: ['Ines Albarran'] },
  facts: { Berth: 'Lock nine' },
  texts: { caption: 'The Heron at Thimble Quay' },
  signers: [{ name: 'Ines Albarran', as: 'Odalys Thrane', state: 'redemption' }],
  credits: [{ role: 'Illustration', name: 'Tove Lindqvist' }],
  variation: { of: 'crew/c017', letter: 'b', tell: 'The lamp is lit' },
  shortPrint: 'SP',
  run: 250,
};
