import fc from 'fast-check';

import type { PublicCard, PublicData, PublicSet, PublicSubset } from '../../schema/index.js';
import { data as siteData } from '../site/fixture.js';
import { hostileStrings } from '../site/hostile-strings.js';
import { PLAIN_CARD, PREMIERE, SHOPS, SPRING } from '../site/plain-card.js';

export { PLAIN_CARD, PREMIERE, SHOPS, SPRING };

/** Public data for lists, small enough to be compared whole, with each kind of card once. */

function card(number: string, name: string, more: Partial<PublicCard> = {}): PublicCard {
  const page = `high-water/crew/${number}${more.letter ?? ''}/`;
  return { ...PLAIN_CARD, number, name, page, ...more };
}

const crew: PublicSubset = {
  id: 'crew',
  title: 'Crew and Craft',
  group: 'base',
  found: 'pack',
  listed: 4,
  artists: [],
  cards: [
    card('17', 'Odalys Thrane', {
      revealed: '2026-09-01T09:00:00+01:00[Europe/London]',
      image: {
        alt: 'A pilot at a wheel',
        level: 0,
        files: [
          { file: 'art/3f9a1c0b7d2e4a51.png', width: 400, height: 560 },
          { file: 'art/8c01d7e9a2b34f66.png', width: 800, height: 1120 },
        ],
      },
    }),
    card('17', 'Odalys Thrane', {
      letter: 'b',
      tell: 'the lamp is lit',
      run: 250,
      shortPrint: 'SP',
    }),
    card('18', 'Magistrate Tern', { level: 1, nameLevel: 1, revealed: SHOPS }),
    card('19', 'The voice in the lock', { state: 'placeholder', opens: SPRING }),
    card('20', 'To be revealed', { state: 'placeholder', opens: SPRING }),
    card('21', 'A plank of the Widow’s Kettle', { state: 'not issued' }),
  ],
};

const signatures: PublicSubset = {
  id: 'signatures',
  title: 'Signatures',
  group: 'autographs',
  found: 'box',
  listed: 2,
  artists: [],
  cards: [
    {
      ...PLAIN_CARD,
      number: 'SG-9',
      page: 'high-water/signatures/SG-9/',
      name: 'The two divers',
      revealed: SHOPS,
      run: 1,
      signers: [
        { name: 'Mirela Voss', as: 'Dorrit Sill', redemption: false },
        { name: 'Caspar Voss', as: null, redemption: true },
      ],
      signersLevel: 1,
    },
    { ...PLAIN_CARD, state: 'placeholder', name: 'To be revealed' },
  ],
};

const sketches: PublicSubset = {
  id: 'sketches',
  title: 'Sketch Cards',
  group: 'sketches',
  found: null,
  listed: 2,
  artists: ['Tove Lindqvist', 'Bram Ostrey'],
  cards: [],
};

const highWater: PublicSet = {
  id: 'high-water',
  title: 'The Ferrywrights: High Water',
  short: 'High Water',
  street: [
    { region: 'uk', at: SHOPS },
    { region: 'au', at: '2027-04-17T00:00:00+01:00[Europe/London]' },
  ],
  listed: 8,
  products: [],
  subsets: [crew, signatures, sketches],
  parallels: [
    {
      id: 'tarred',
      title: 'Tarred',
      of: ['crew', 'signatures'],
      run: null,
      tell: 'a dark edge',
      revealed: null,
    },
    { id: 'varnished', title: 'Varnished', of: ['crew'], run: 84, tell: null, revealed: SHOPS },
  ],
  corrections: [
    {
      number: '17',
      letter: 'b',
      page: 'high-water/crew/17b/',
      level: 0,
      at: '2027-04-15',
      was: '205 copies',
      now: '250 copies',
      note: 'on the sell sheet',
    },
  ],
};

export const data: PublicData = {
  format: 1,
  asOf: SHOPS,
  preview: false,
  property: {
    title: 'The Ferrywrights',
    zone: 'Europe/London',
    legal: '© 2027 Lantern & Oar',
    look: { accent: '#0b6e69', paper: null, ink: null, type: null },
    siteTitle: 'The Ferrywrights: the cards',
    address: 'https://cards.example/ferrywrights/',
    dataTerms: 'Free to use with the name of the publisher.',
    levels: ['Known from the trailers', 'First cards'],
  },
  openings: [PREMIERE, SPRING],
  news: [
    {
      at: SHOPS,
      cards: [
        { set: 'high-water', subset: 'crew', at: 0, what: 'more', fields: ['bio', 'image'] },
        { set: 'high-water', subset: 'crew', at: 2, what: 'revealed', fields: [] },
        { set: 'high-water', subset: 'signatures', at: 0, what: 'revealed', fields: [] },
      ],
      parallels: [{ set: 'high-water', id: 'varnished' }],
    },
    {
      at: '2026-09-01T09:00:00+01:00[Europe/London]',
      cards: [{ set: 'high-water', subset: 'crew', at: 0, what: 'revealed', fields: [] }],
      parallels: [],
    },
  ],
  sets: [highWater],
};

export const preview: PublicData = { ...data, preview: true };

export const withoutAddress: PublicData = {
  ...data,
  property: { ...data.property, address: null },
};

/** Without sets, news, openings, a legal line and terms. */
export const empty: PublicData = {
  ...data,
  property: { ...data.property, legal: null, dataTerms: null },
  openings: [],
  news: [],
  sets: [],
};

/** Data whose every free text closes attributes and opens elements. */
export function hostile(some: PublicData): PublicData {
  const spoilt = hostileStrings(some).data;
  const { address, look } = some.property;
  return { ...spoilt, news: some.news, property: { ...spoilt.property, address, look } };
}

/** What makes trouble in a text, besides any text. */
export const trouble = fc.oneof(
  { weight: 3, arbitrary: fc.string({ unit: 'grapheme', maxLength: 40 }) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 20 }) },
  {
    weight: 2,
    arbitrary: fc
      .array(
        fc.constantFrom(
          ...['"', "'", ',', ';', '\\', '\t', '\r', '\n', '=', '+', '-', '@', ']]>', '</details>'],
          ...['<!--', '&', '&amp;', '\u0000', '\u0085', '\u00a0', '\u2028', '\u202e', '\u2066'],
          ...['\ufeff', '\ufffe', '\ufdd0', '\ud800', '\u00ad', '🛶', 'é', 'e\u0301', ' ', 'Pim'],
        ),
        { maxLength: 12 },
      )
      .map((parts) => parts.join('')),
  },
);

/**
 * The data of the site's own tests with troublesome texts in place of its own: any but those that
 * are no Unicode, which canonical JSON refuses (RFC 8785, 3.2.2.2).
 */
export const troubled: fc.Arbitrary<PublicData> = fc
  .array(trouble.map(wellFormed), { minLength: 30, maxLength: 30 })
  .map((texts) => {
    const { news } = siteData;
    const { zone, look, address } = siteData.property;
    let next = 0;
    const replace = (value: unknown, key: string): unknown => {
      if (Array.isArray(value)) return value.map((one: unknown) => replace(one, key));
      if (value !== null && typeof value === 'object') {
        return Object.fromEntries(
          Object.entries(value).map(([name, one]: [string, unknown]) => [name, replace(one, name)]),
        );
      }
      if (typeof value !== 'string' || !FREE.has(key)) return value;
      next += 1;
      return texts[next % texts.length];
    };
    const made = replace(siteData, '') as PublicData;
    return { ...made, news, property: { ...made.property, zone, look, address } };
  });

/** Keys of free texts. */
const FREE = new Set(
  'title siteTitle legal dataTerms levels name as number letter tell short was now note artists group found region'.split(
    ' ',
  ),
);

function wellFormed(text: string): string {
  return text.replace(/\p{Surrogate}/gu, '');
}
