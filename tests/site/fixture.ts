import type { PublicCard, PublicData, PublicSet, PublicSubset } from '../../schema/index.js';
import { PLAIN_CARD, PREMIERE, SHOPS, SPRING } from './plain-card.js';

/** Public data of the demo property, made by hand: every kind of card and every key once. */

/** A small picture of one colour (PNG, 1 x 1), which the pages show at any size. */
export const PICTURE = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkqMv9DwADZAHLgPyKGwAAAABJRU5ErkJggg==',
  'base64',
);

export const IMAGE_FILES = ['art/3f9a1c0b7d2e4a51.png', 'art/8c01d7e9a2b34f66.png'] as const;

export const images: ReadonlyMap<string, Uint8Array> = new Map(
  IMAGE_FILES.map((file) => [file, PICTURE]),
);

const plain: PublicCard = { ...PLAIN_CARD, revealed: SHOPS };

/** A card of High Water under its number, with a page. */
function card(
  subset: string,
  number: string,
  name: string,
  more: Partial<PublicCard> = {},
): PublicCard {
  const page = `high-water/${subset}/${number}${more.letter ?? ''}/`;
  return { ...plain, number, name, page, ...more };
}

function toCome(subset: string, number: string, name: string, opens: string | null): PublicCard {
  return card(subset, number, name, { state: 'placeholder', opens, revealed: null });
}

function subset(
  id: string,
  title: string,
  group: string,
  cards: readonly PublicCard[],
  more: Partial<PublicSubset> = {},
): PublicSubset {
  const listed = cards.filter(
    ({ state, letter }) => state !== 'not issued' && letter === null,
  ).length;
  return { id, title, group, found: null, listed, artists: [], cards: [...cards], ...more };
}

const words = (text: string) => ({ text, italic: false, bold: false, level: 0 });

const pilot = card('crew', '17', 'Odalys Thrane', {
  bio: [
    [
      words('She takes the '),
      { text: 'Patient Heron', italic: true, bold: false, level: 0 },
      words(' across after dark, when the Overmere is flat and every roof below it shows. '),
      { text: 'Nobody', italic: false, bold: true, level: 0 },
      words(' else will. '),
      { held: true },
    ],
    [
      words('Her log is short:'),
      words('\n'),
      words('“Went over. Came back.”'),
      words('\n'),
      { text: 'Twice', italic: true, bold: true, level: 0 },
      words(' it says only the first.'),
    ],
  ],
  facts: [
    { name: 'Berth', value: 'Lock nine', level: 0 },
    { name: 'Craft', value: 'Patient Heron', level: 1 },
  ],
  texts: [{ zone: 'caption', value: 'The Heron at Thimble Quay', level: 0 }],
  image: {
    alt: 'A pilot at a wheel, a lantern behind her',
    level: 0,
    files: [
      { file: IMAGE_FILES[0], width: 400, height: 560 },
      { file: IMAGE_FILES[1], width: 800, height: 1120 },
    ],
  },
  credits: [
    { role: 'Illustration', name: 'Tove Lindqvist' },
    { role: 'Model', name: 'Harl Benneck' },
  ],
});

const CREW = [
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
  'The Argument',
  'The magistrate',
];

const crew: readonly PublicCard[] = [
  ...CREW.map((name, at) => card('crew', String(at + 1), name)),
  pilot,
  card('crew', '17', 'Odalys Thrane', {
    letter: 'b',
    tell: 'the lamp is lit',
    run: 250,
    shortPrint: 'SP',
  }),
  card('crew', '18', 'The lamp tender’s boy', { bioHeld: true, level: 1, nameLevel: 1 }),
  toCome('crew', '19', 'The voice in the lock', SPRING),
  toCome('crew', '20', 'To be revealed', SPRING),
];

const story: readonly PublicCard[] = [
  card('story', '49', 'The spring rise takes Lower Lantern Street', { revealed: null }),
  card('story', '50', 'A bell under the lake', { revealed: null }),
  toCome('story', '51', 'The Heron is refused', PREMIERE),
  toCome('story', '52', 'To be revealed', PREMIERE),
  toCome('story', '53', 'To be revealed', PREMIERE),
  toCome('story', '54', 'To be revealed', SPRING),
  toCome('story', '55', 'To be revealed', null),
];

const signatures: readonly PublicCard[] = [
  card('signatures', 'SG-1', 'Ines Albarran', {
    signers: [{ name: 'Ines Albarran', as: 'Odalys Thrane', redemption: false }],
  }),
  card('signatures', 'SG-9', 'The two divers', {
    signers: [
      { name: 'Mirela Voss', as: 'Dorrit Sill', redemption: false },
      { name: 'Caspar Voss', as: null, redemption: true },
    ],
    run: 1,
    shortPrint: 'SSP',
  }),
  { ...plain, state: 'placeholder', name: 'To be revealed', revealed: null },
];

const highWater: PublicSet = {
  id: 'high-water',
  title: 'The Ferrywrights: High Water',
  short: 'High Water',
  street: [
    { region: 'uk', at: SHOPS },
    { region: 'au', at: '2027-04-17T00:00:00+01:00[Europe/London]' },
  ],
  listed: 39,
  products: [
    {
      id: 'hobby',
      title: 'Hobby',
      pack: 6,
      box: 24,
      odds: [
        { subset: 'charts', parallel: null, title: 'Lake Charts', packs: 4 },
        { subset: 'signatures', parallel: null, title: 'Signatures', packs: 24 },
        { subset: null, parallel: 'varnished', title: 'Varnished', packs: 9 },
      ],
      complete: [
        {
          subset: 'charts',
          title: 'Lake Charts',
          cards: 4,
          expected: 34,
          half: 30,
          ninety: 57,
          ninetyNine: 93,
          curve: [12, 14, 17, 18, 20, 22, 24, 26, 28, 30, 32, 34, 36, 39, 42, 46, 51, 57, 68, 93],
        },
      ],
    },
    {
      id: 'retail',
      title: 'Retail',
      pack: 6,
      box: null,
      odds: [{ subset: null, parallel: 'keel', title: 'Keel', packs: 686 }],
    },
  ],
  subsets: [
    subset('crew', 'Crew and Craft', 'base', crew),
    subset('story', 'High Water', 'base', story),
    subset(
      'charts',
      'Lake Charts',
      'inserts',
      [1, 2, 3, 4].map((at) =>
        card(
          'charts',
          `LC-${String(at)}`,
          `The ${['first', 'second', 'third', 'fourth'][at - 1] ?? ''} gate`,
        ),
      ),
      { found: 'pack' },
    ),
    subset('signatures', 'Signatures', 'autographs', signatures, { found: 'box' }),
    subset(
      'relics',
      'Timber relics',
      'relics',
      [
        card('relics', 'TR-3', 'A rib of Seven Doors'),
        card('relics', 'TR-4', 'A plank of the Widow’s Kettle', {
          state: 'not issued',
          revealed: null,
        }),
      ],
      { found: 'event' },
    ),
    subset('sketches', 'Sketch Cards', 'sketches', [], {
      listed: 3,
      artists: ['Tove Lindqvist', 'Bram Ostrey', 'Liese Quandt'],
      found: 'redemption',
    }),
  ],
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
      revealed: SHOPS,
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
  made: [
    { title: 'Crew and Craft, 17b', cards: 1, copies: 250 },
    { title: 'Varnished', cards: 20, copies: 84 },
    { title: 'Signatures, SG-9', cards: 1, copies: 1 },
    { title: 'Keel', cards: 31, copies: 1 },
  ],
  corrections: [],
};

const depthCharts: PublicSet = {
  id: 'depth-charts',
  title: 'Depth Charts',
  short: 'Depth Charts',
  street: [{ region: null, at: '2026-10-02T09:00:00+01:00[Europe/London]' }],
  listed: 3,
  products: [],
  subsets: [
    subset(
      'soundings',
      'Soundings',
      'base',
      ['Bell Sill', 'The Sunk Orchard', 'The Ropewalk'].map((name, at) => ({
        ...plain,
        name,
        number: String(at + 1),
        page: `depth-charts/soundings/${String(at + 1)}/`,
        revealed: null,
      })),
    ),
  ],
  parallels: [],
  corrections: [
    {
      number: '2',
      letter: null,
      page: 'depth-charts/soundings/2/',
      level: 0,
      at: '2026-11-03',
      was: 'nine fathoms',
      now: 'six fathoms',
      note: 'on the back',
    },
    {
      number: null,
      letter: null,
      page: null,
      level: 1,
      at: '2026-11-04',
      was: '37 cards',
      now: '36 cards',
      note: null,
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
    siteTitle: 'The Ferrywrights',
    address: 'https://cards.example/ferrywrights/',
    dataTerms: 'Free to use with the name of the publisher.',
    levels: ['Known from the trailers', 'First cards'],
  },
  openings: [PREMIERE, SPRING],
  news: [
    {
      at: SHOPS,
      cards: [
        { set: 'high-water', subset: 'crew', at: 16, what: 'revealed', fields: [] },
        { set: 'high-water', subset: 'crew', at: 18, what: 'revealed', fields: [] },
        { set: 'high-water', subset: 'crew', at: 3, what: 'more', fields: ['bio', 'image'] },
      ],
      parallels: [{ set: 'high-water', id: 'varnished' }],
    },
    {
      at: '2026-10-02T09:00:00+01:00[Europe/London]',
      cards: [{ set: 'depth-charts', subset: 'soundings', at: 0, what: 'revealed', fields: [] }],
      parallels: [],
    },
  ],
  sets: [highWater, depthCharts],
};

/** The same under a licence that shows number and name alone. */
export const bareData: PublicData = {
  ...data,
  sets: data.sets.map((set) => ({
    ...set,
    subsets: set.subsets.map((group) => ({
      ...group,
      cards: group.cards.map((one) => ({
        ...one,
        bio: [],
        bioHeld: false,
        facts: [],
        texts: [],
        image: null,
        credits: [],
      })),
    })),
  })),
};
