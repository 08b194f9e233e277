import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

import { openPrintFaces, type PrintFaces } from '../../pipeline/out/print/index.js';
import type {
  PublicCard,
  PublicData,
  PublicProduct,
  PublicSet,
  PublicSubset,
} from '../../schema/index.js';

import { PLAIN_CARD, PREMIERE, SHOPS, SPRING } from '../site/plain-card.js';

export { PREMIERE, SHOPS, SPRING } from '../site/plain-card.js';

/** Public data made by hand: what a printed sheet is made of, and no more than it needs. */

const require = createRequire(import.meta.url);

function cut(family: string, name: string): readonly Uint8Array[] {
  return ['latin', 'latin-ext'].map((script) =>
    readFileSync(require.resolve(`@fontsource/${family}/files/${family}-${script}-${name}.woff`)),
  );
}

/** The fonts of the site, opened anew; or others, a family for words and one for labels. */
export function freshFaces(words = 'alegreya', labels = 'alegreya-sans'): PrintFaces {
  return openPrintFaces({
    text: {
      regular: cut(words, '400-normal'),
      italic: cut(words, '400-italic'),
      bold: cut(words, '700-normal'),
    },
    labels: { regular: cut(labels, '400-normal'), medium: cut(labels, '500-normal') },
  });
}

export const faces = freshFaces();

export function card(
  number: string | null,
  name: string,
  more: Partial<PublicCard> = {},
): PublicCard {
  return { ...PLAIN_CARD, number, name, ...more };
}

export function toCome(number: string | null, name: string, opens: string | null): PublicCard {
  return card(number, name, { state: 'placeholder', opens });
}

export function subset(
  id: string,
  title: string,
  group: string,
  cards: readonly PublicCard[],
  more: Partial<PublicSubset> = {},
): PublicSubset {
  const listed = cards.filter(({ state }) => state !== 'not issued').length;
  return { id, title, group, found: null, listed, artists: [], cards: [...cards], ...more };
}

export function setOf(subsets: readonly PublicSubset[], more: Partial<PublicSet> = {}): PublicSet {
  return {
    id: 'high-water',
    title: 'The Ferrywrights: High Water',
    short: 'High Water',
    street: [{ region: null, at: SHOPS }],
    listed: subsets.reduce((sum, { listed }) => sum + listed, 0),
    products: [],
    subsets: [...subsets],
    parallels: [],
    corrections: [],
    ...more,
  };
}

export function dataOf(sets: readonly PublicSet[], more: Partial<PublicData> = {}): PublicData {
  return {
    format: 1,
    asOf: SHOPS,
    preview: false,
    property: {
      title: 'The Ferrywrights',
      zone: 'Europe/London',
      legal: '© 2027 Lantern & Oar',
      look: { accent: null, paper: null, ink: null, type: null },
      siteTitle: 'The Ferrywrights',
      address: null,
      dataTerms: null,
      levels: ['Known from the trailers'],
    },
    openings: [PREMIERE, SPRING],
    news: [],
    sets: [...sets],
    ...more,
  };
}

const NAMES = [
  'Emeric Hask',
  'Tamsin Oakum',
  'Old Pell',
  'Sister Quillon Ash',
  'Dorrit Sill',
  'Dace Sill',
  'Harl Dunnock',
  'Pim',
  'Osk Ferrant',
  'The Patient Heron',
  'The Tin Magistrate',
  'Second Breakfast',
  'Widow’s Kettle',
  'Seven Doors',
  'The raft that is called only the Argument',
  'The spring rise takes Lower Lantern Street',
];

/** Numbered cards, each under a name of its own. */
export function run(
  count: number,
  { prefix = '', from = 1 }: { readonly prefix?: string; readonly from?: number } = {},
): readonly PublicCard[] {
  return Array.from({ length: count }, (_, at) => {
    const number = from + at;
    return card(`${prefix}${String(number)}`, `${NAMES[at % NAMES.length] ?? ''} ${say(number)}`);
  });
}

const ONES = 'one two three four five six seven eight nine ten'.split(' ');

/** A number in words, in its own way: "two-seven" for 27. */
export function say(number: number): string {
  return Array.from(String(number), (digit) => ONES[Number(digit) - 1] ?? 'nought').join('-');
}

const story: readonly PublicCard[] = [
  ...run(20, { from: 49 }),
  ...[69, 70, 71, 72].map((at) => toCome(String(at), 'The Heron is refused', SPRING)),
  ...[73, 74, 75, 76, 77, 78, 79, 80, 81, 82].map((at) =>
    toCome(String(at), 'To be revealed', SPRING),
  ),
  toCome('83', 'To be revealed', null),
];

const crew: readonly PublicCard[] = [
  ...run(16),
  card('17', 'Odalys Thrane'),
  card('17', 'Odalys Thrane', { letter: 'b', tell: 'the lamp is lit', run: 250, shortPrint: 'SP' }),
  ...run(31, { from: 18 }),
];

const signatures: readonly PublicCard[] = [
  ...run(8, { prefix: 'SG-' }).map((each) => ({
    ...each,
    signers: [{ name: 'Ines Albarran', as: 'Odalys Thrane', redemption: false }],
  })),
  card('SG-9', 'The two divers', {
    signers: [
      { name: 'Mirela Voss', as: 'Dorrit Sill', redemption: false },
      { name: 'Caspar Voss', as: null, redemption: true },
    ],
    run: 1,
    shortPrint: 'SSP',
  }),
  toCome(null, 'To be revealed', null),
];

export const products: readonly PublicProduct[] = [
  { id: 'hobby', title: 'Hobby', pack: 6, box: 24, odds: [] },
  { id: 'retail', title: 'Retail', pack: 6, box: 10, odds: [] },
  { id: 'tin', title: 'Tin', pack: null, box: null, odds: [] },
];

/** A set with a card of every kind: 84 base cards, inserts, autographs, relics, a roster. */
export const highWater = setOf(
  [
    subset('crew', 'Crew and Craft', 'base', crew),
    subset('story', 'High Water', 'base', story),
    subset('checklist', 'Checklist', 'base', [card('84', 'Checklist')]),
    subset('charts', 'Lake Charts', 'inserts', run(8, { prefix: 'LC-' }), { found: 'pack' }),
    subset('benches', 'Maker’s Benches', 'inserts', run(12, { prefix: 'MB-' }), { found: 'pack' }),
    subset('signals', 'Night Signals', 'inserts', run(16, { prefix: 'NS-' }), { found: 'pack' }),
    subset('signatures', 'Signatures', 'autographs', signatures, { found: 'box' }),
    subset(
      'relics',
      'Timber relics',
      'relics',
      [
        card('TR-3', 'A rib of Seven Doors', { run: 240 }),
        card('TR-4', 'A plank of the Widow’s Kettle', { state: 'not issued' }),
        card('TR-5', 'A knee of the Patient Heron', { run: 1240 }),
      ],
      { found: 'event' },
    ),
    subset('sketches', 'Sketch Cards', 'sketches', [], {
      artists: ['Tove Lindqvist', 'Bram Ostrey', 'Liese Quandt'],
      found: 'redemption',
    }),
  ],
  {
    street: [
      { region: 'uk', at: SHOPS },
      { region: 'au', at: '2027-04-17T00:00:00+01:00[Europe/London]' },
    ],
    products: [...products],
    parallels: [
      {
        id: 'tarred',
        title: 'Tarred',
        of: ['crew', 'story'],
        run: null,
        tell: 'a dark edge',
        revealed: null,
      },
      {
        id: 'varnished',
        title: 'Varnished',
        of: ['crew'],
        run: 84,
        tell: 'gloss over the art',
        revealed: null,
      },
      {
        id: 'keel',
        title: 'Keel',
        of: ['crew', 'story', 'charts'],
        run: 1,
        tell: null,
        revealed: null,
      },
    ],
  },
);

export const depthCharts = setOf(
  [
    subset(
      'soundings',
      'Soundings',
      'base',
      ['Bell Sill', 'The Sunk Orchard'].map((name, at) => card(String(at + 1), name)),
    ),
  ],
  { id: 'depth-charts', title: 'Depth Charts', short: 'Depth Charts' },
);

export const data = dataOf([highWater, depthCharts]);
