import { Type, type Static } from 'typebox';
import { shape } from '../common.js';
import { PublicMade, PublicProduct } from './public-products.js';

export * from './public-products.js';

/**
 * The public data of a site: everything the site is made of, and nothing else. Every list is in
 * the order in which it is shown.
 */

const Nullable = <T extends Parameters<typeof Type.Union>[0][number]>(schema: T) =>
  Type.Union([schema, Type.Null()]);
const Instant = Type.String({ description: 'An RFC 9557 instant in the property’s zone.' });
const Told = Type.Integer({
  minimum: 0,
  description: 'How much of the story it tells: an index into the levels of the property.',
});

/** A stretch of a bio. A mark stands where something is held; it is always the same. */
export const PublicRun = Type.Union([
  shape(
    { text: Type.String(), italic: Type.Boolean(), bold: Type.Boolean(), level: Told },
    'Words with their face. "\\n" alone is a hard line break.',
  ),
  shape({ held: Type.Literal(true) }, 'Words that are held.'),
]);
export type PublicRun = Static<typeof PublicRun>;

export const PublicSigner = shape(
  { name: Type.String(), as: Nullable(Type.String()), redemption: Type.Boolean() },
  'A signer.',
);

export const PublicCard = shape(
  {
    state: Type.Enum(['shown', 'placeholder', 'not issued']),
    number: Nullable(Type.String()),
    letter: Nullable(Type.String({ description: 'The letter of a variation.' })),
    page: Nullable(Type.String({ description: 'Its address below the site, with / at the end.' })),
    name: Type.String(),
    level: Told,
    nameLevel: Told,
    opens: Nullable(Instant),
    revealed: Nullable(Instant),
    bio: Type.Array(Type.Array(PublicRun), { description: 'Paragraphs.' }),
    bioHeld: Type.Boolean({ description: 'The whole bio is held.' }),
    facts: Type.Array(shape({ name: Type.String(), value: Type.String(), level: Told }, 'A fact.')),
    texts: Type.Array(
      shape({ zone: Type.String(), value: Type.String(), level: Told }, 'A text of its back.'),
    ),
    image: Nullable(
      shape(
        {
          alt: Type.String(),
          level: Told,
          files: Type.Array(
            shape(
              { file: Type.String(), width: Type.Integer(), height: Type.Integer() },
              'A size of the picture.',
            ),
          ),
        },
        'The front.',
      ),
    ),
    signers: Type.Array(PublicSigner),
    signersLevel: Told,
    credits: Type.Array(shape({ role: Type.String(), name: Type.String() }, 'A credit.')),
    creditsLevel: Told,
    tell: Nullable(Type.String({ description: 'How to tell a variation from its parent.' })),
    shortPrint: Nullable(Type.Enum(['SP', 'SSP'])),
    run: Nullable(Type.Integer({ description: 'Copies of this card.' })),
  },
  'A card as the public may know it.',
);
export type PublicCard = Static<typeof PublicCard>;

export const PublicSubset = shape(
  {
    id: Type.String(),
    title: Type.String(),
    group: Type.String(),
    found: Nullable(Type.String()),
    listed: Type.Integer({ description: 'Cards listed here; not-issued cards do not count.' }),
    artists: Type.Array(Type.String(), { description: 'Artists of a roster.' }),
    cards: Type.Array(PublicCard),
  },
  'A subset.',
);
export type PublicSubset = Static<typeof PublicSubset>;

export const PublicParallel = shape(
  {
    id: Type.String(),
    title: Type.String(),
    of: Type.Array(Type.String()),
    run: Nullable(Type.Integer()),
    tell: Nullable(Type.String()),
    revealed: Nullable(Instant),
  },
  'A parallel.',
);

export type PublicParallel = Static<typeof PublicParallel>;

export const PublicSet = shape(
  {
    id: Type.String(),
    title: Type.String(),
    short: Type.String({ description: 'What its want list opens with.' }),
    street: Type.Array(
      shape({ region: Nullable(Type.String()), at: Instant }, 'When it is in shops.'),
    ),
    listed: Type.Integer(),
    products: Type.Array(PublicProduct),
    subsets: Type.Array(PublicSubset),
    parallels: Type.Array(PublicParallel),
    made: Type.Optional(
      Type.Array(PublicMade, {
        minItems: 1,
        description: 'Runs that are told, from most copies to fewest.',
      }),
    ),
    corrections: Type.Array(
      shape(
        {
          number: Nullable(Type.String()),
          letter: Nullable(Type.String()),
          page: Nullable(Type.String({ description: 'The page of its card.' })),
          level: Told,
          at: Type.String(),
          was: Type.String(),
          now: Type.String(),
          note: Nullable(Type.String()),
        },
        'A correction.',
      ),
    ),
  },
  'A set.',
);
export type PublicSet = Static<typeof PublicSet>;

export const PublicNews = shape(
  {
    at: Type.String({ description: 'The step of time, an RFC 9557 instant.' }),
    cards: Type.Array(
      shape(
        {
          set: Type.String({ description: 'The id of its set.' }),
          subset: Type.String({ description: 'The id of its subset.' }),
          at: Type.Integer({ minimum: 0, description: 'Its index in the cards of the subset.' }),
          what: Type.Enum(['revealed', 'more'], {
            description: 'The card itself was revealed, or more of it.',
          }),
          fields: Type.Array(
            Type.Enum(['name', 'bio', 'facts', 'texts', 'image', 'signers', 'credits']),
            { description: 'What is new of a card of which more is told.' },
          ),
        },
        'A card that changed.',
      ),
    ),
    parallels: Type.Array(
      shape({ set: Type.String(), id: Type.String() }, 'A parallel that was revealed.'),
    ),
  },
  'What a step of time told that was not told before.',
);
export type PublicNews = Static<typeof PublicNews>;

export const PublicLook = shape(
  {
    accent: Nullable(Type.String({ description: '#rrggbb' })),
    paper: Nullable(Type.String({ description: '#rrggbb' })),
    ink: Nullable(Type.String({ description: '#rrggbb' })),
    type: Nullable(Type.String({ description: 'The id of a choice of type.' })),
  },
  'How the publisher wants the site to look.',
);
export type PublicLook = Static<typeof PublicLook>;

export const PublicData = shape(
  {
    format: Type.Literal(1),
    asOf: Instant,
    preview: Type.Boolean({ description: 'Not to be passed on before `asOf`.' }),
    property: shape(
      {
        title: Type.String(),
        zone: Type.String(),
        legal: Nullable(Type.String()),
        look: PublicLook,
        siteTitle: Type.String({ description: 'What the site is called.' }),
        address: Nullable(
          Type.String({ description: 'Where the site stands, an https address ending in /.' }),
        ),
        dataTerms: Nullable(Type.String({ description: 'On what terms the data may be used.' })),
        levels: Type.Array(Type.String(), {
          description: 'Labels of the levels that have lifted, least revealing first.',
        }),
      },
      'The property.',
    ),
    openings: Type.Array(Instant, { description: 'Announced instants at which more opens.' }),
    news: Type.Array(PublicNews, { description: 'What the last steps told, newest first.' }),
    sets: Type.Array(PublicSet),
  },
  'The public data of a site.',
);
export type PublicData = Static<typeof PublicData>;

const { title, legal, dataTerms, zone, levels } = PublicData.properties.property.properties;

export const PublicChecklist = shape(
  {
    format: Type.Literal(1),
    asOf: Instant,
    preview: Type.Boolean(),
    property: shape({ title, legal, dataTerms, zone, levels }, 'The property.'),
    set: PublicSet,
  },
  '`checklist.json`: the public data of one set.',
);
export type PublicChecklist = Static<typeof PublicChecklist>;

export const PublicRelease = shape(
  {
    format: Type.Literal(1),
    asOf: Instant,
    preview: Type.Boolean(),
    files: Type.Record(Type.String(), Type.String({ description: 'SHA-256.' })),
    kept: Type.Optional(
      Type.Record(Type.String(), Type.String({ description: 'SHA-256.' }), {
        description:
          'Styles, scripts and fonts for whoever still reads a page of the release before.',
      }),
    ),
  },
  '`release.json`: what the site consists of.',
);
export type PublicRelease = Static<typeof PublicRelease>;
