import { Type, type Static } from 'typebox';
import { Counting, Embargoes, Id, PlainDate, Text, Unset, oneOf, shape } from '../common.js';

/** A card by its identity in the set, such as `letters/ld01`. */
const CardIdentity = Type.String({
  pattern: '^[a-z0-9]+(-[a-z0-9]+)*/[a-z0-9]+(-[a-z0-9]+)*$',
  title: 'the identity of a card, such as letters/ld01',
});

export const Reserve = Type.Integer({
  minimum: 0,
  maximum: 1_000_000,
  title: 'a whole number',
  description: 'Copies of each card that are kept for replacements and not packed.',
});

export const Sheet = shape(
  {
    columns: Counting,
    rows: Counting,
    doubled: Type.Optional(
      Type.Array(CardIdentity, {
        uniqueItems: true,
        description: 'Identities of the cards that stand on it once more than the others.',
      }),
    ),
    ordered: Type.Optional(
      Type.Integer({
        minimum: 1,
        title: 'a whole number above 0',
        description: 'Sheets that are ordered.',
      }),
    ),
    spare: Type.Optional(
      Type.Integer({
        minimum: 0,
        title: 'a whole number',
        description: 'Sheets more than needed, for what is spoilt in press.',
      }),
    ),
  },
  'The press sheet that its cards are printed on.',
);

/** The ways in which a line of what is packed says how much of it goes in. */
export const AMOUNTS = ['copies', 'each', 'perBox', 'perCase', 'all'] as const;

export const Content = shape(
  {
    of: Id,
    odds: Type.Optional(
      Type.Integer({
        minimum: 1,
        maximum: 1_000_000_000,
        title: 'a whole number above 0',
        description:
          'One in so many packs, as the public is told it. If nothing else is said, it is how much goes in.',
      }),
    ),
    copies: Type.Optional(Counting),
    each: Type.Optional(Counting),
    perBox: Type.Optional(Counting),
    perCase: Type.Optional(Counting),
    all: Type.Optional(oneOf(['run'], 'Everything of its run.')),
    even: Type.Optional(oneOf(['box', 'case'], 'Every box or every case gets as many.')),
  },
  'What is packed of a subset or a parallel: in `copies`, so many of `each` card, `perBox`, `perCase`, `all` of its run, or by its `odds`. Base cards are the rest.',
);

export const Guarantee = shape(
  {
    of: Type.Array(Id, { minItems: 1 }),
    atLeast: Counting,
    per: oneOf(['box', 'case'], 'In each of what.'),
  },
  'So many of these, all together, in every box or case.',
);

export const Decoys = shape(
  { perBox: Counting, places: Counting },
  'Blank fillers as thick as a card that is thick: they take places and are no cards.',
);

export const Redemption = shape(
  {
    found: Type.Union([Id, CardIdentity], { title: 'the id of a subset, or a card' }),
    sends: Type.Array(CardIdentity, {
      minItems: 1,
      uniqueItems: true,
      title: 'a list of identities such as letters/ld01',
    }),
    ships: Type.Optional(Type.Union([PlainDate, Unset], { title: 'a day, or unset' })),
    redeemBy: Type.Optional(
      Type.Union([PlainDate, Type.Literal('never', { title: 'never' })], {
        title: 'a day, or never',
      }),
    ),
  },
  'A card in packs that is sent in for others: `found` is its subset, or one card.',
);

export const Product = shape(
  {
    id: Id,
    title: Text,
    pack: Type.Optional(Counting),
    box: Type.Optional(Counting),
    case: Type.Optional(Counting),
    cases: Type.Optional(
      Type.Union([Counting, Unset], { title: 'a whole number above 0, or unset' }),
    ),
    collation: Type.Optional(
      oneOf(['sequenced', 'random'], 'Whether cards come in their order or by chance.'),
    ),
    contents: Type.Optional(Type.Array(Content)),
    guarantees: Type.Optional(Type.Array(Guarantee)),
    decoys: Type.Optional(Decoys),
    spoiler: Type.Optional(Id),
    embargo: Type.Optional(Embargoes),
  },
  'What a shop sells: `pack` is cards a pack, `box` packs a box, `case` boxes a case, `cases` how many are made.',
);

export type Product = Static<typeof Product>;
export type Content = Static<typeof Content>;
export type Redemption = Static<typeof Redemption>;
export type Sheet = Static<typeof Sheet>;
