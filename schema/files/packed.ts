import { Type, type Static } from 'typebox';
import { Counting, Embargoes, Id, PlainDate, Text, Unset, oneOf, said, shape } from '../common.js';

/** A card by its identity in the set, such as `letters/ld01`. */
const CardIdentity = Type.String({
  pattern: '^[a-z0-9]+(-[a-z0-9]+)*/[a-z0-9]+(-[a-z0-9]+)*$',
  title: 'the identity of a card, such as letters/ld01',
});

export const Reserve = Type.Integer({
  minimum: 0,
  maximum: 1_000_000,
  title: 'a whole number',
  description:
    'Copies of each card that are kept for replacements and not packed. Never leaves the house.',
});

export const Sheet = shape(
  {
    columns: said(Counting, 'Cards that stand side by side on it.'),
    rows: said(Counting, 'Cards that stand one below the other on it.'),
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
        description: 'Sheets that are ordered; left out, as many as are needed and the spare ones.',
      }),
    ),
    spare: Type.Optional(
      Type.Integer({
        minimum: 0,
        title: 'a whole number',
        description: 'Sheets more than needed, for what is spoilt in press; left out, none.',
      }),
    ),
  },
  'The press sheet that its cards are printed on. Never leaves the house.',
);

/** The ways in which a line of what is packed says how much of it goes in. */
export const AMOUNTS = ['copies', 'each', 'perBox', 'perCase', 'all'] as const;

export const Content = shape(
  {
    of: said(Id, 'The subset or parallel that is packed, by its id.'),
    odds: Type.Optional(
      Type.Integer({
        minimum: 1,
        maximum: 1_000_000_000,
        title: 'a whole number above 0',
        description:
          'One in so many packs, as the public is told; alone, it says how much goes in.',
      }),
    ),
    copies: Type.Optional(
      said(Counting, 'How much goes in: copies in all, of all its cards. Never leaves the house.'),
    ),
    each: Type.Optional(
      said(Counting, 'How much goes in: copies of each of its cards. Never leaves the house.'),
    ),
    perBox: Type.Optional(
      said(Counting, 'How much goes in: copies for each box. Never leaves the house.'),
    ),
    perCase: Type.Optional(
      said(Counting, 'How much goes in: copies for each case. Never leaves the house.'),
    ),
    all: Type.Optional(
      oneOf(['run'], 'How much goes in: all of its run that is not kept or packed elsewhere.'),
    ),
    even: Type.Optional(
      oneOf(
        ['box', 'case'],
        'Every box or every case gets as many; left out, that is not promised.',
      ),
    ),
  },
  'What is packed of a subset or a parallel: in `copies`, so many of `each` card, `perBox`, `perCase`, `all` of its run, or by its `odds`. Base cards are the rest.',
);

export const Guarantee = shape(
  {
    of: Type.Array(Id, {
      minItems: 1,
      description: 'The subsets and parallels that count towards it, all together.',
    }),
    atLeast: said(Counting, 'The fewest cards of them that are sure to be found.'),
    per: oneOf(['box', 'case'], 'Whether each box or each case is sure to hold them.'),
  },
  'So many of these, all together, in every box or case.',
);

export const Decoys = shape(
  {
    perBox: said(Counting, 'Fillers that go in each box.'),
    places: said(Counting, 'Places in a pack that one filler takes.'),
  },
  'Blank fillers as thick as a card that is thick: they take places and are no cards.',
);

export const Redemption = shape(
  {
    found: Type.Union([Id, CardIdentity], {
      title: 'the id of a subset, or a card',
      description: 'What is found in packs: a subset by its id, or one card by its identity.',
    }),
    sends: Type.Array(CardIdentity, {
      minItems: 1,
      uniqueItems: true,
      title: 'a list of identities such as letters/ld01',
      description: 'The cards that are sent for it, by their identities.',
    }),
    ships: Type.Optional(
      Type.Union([PlainDate, Unset], {
        title: 'a day, or unset',
        description: 'The day on which they are sent, or unset while nobody knows.',
      }),
    ),
    redeemBy: Type.Optional(
      Type.Union([PlainDate, Type.Literal('never', { title: 'never' })], {
        title: 'a day, or never',
        description: 'The last day on which it is taken; never, if there is none.',
      }),
    ),
  },
  'A card in packs that is sent in for others: `found` is its subset, or one card.',
);

export const Product = shape(
  {
    id: said(Id, 'A short id, by which reports and odds name it. The public is told.'),
    title: said(Text, 'What a shop calls it, such as Hobby. The public is told.'),
    pack: Type.Optional(
      said(Counting, 'Cards in a pack; a thick card takes the place of several.'),
    ),
    box: Type.Optional(said(Counting, 'Packs in a box.')),
    case: Type.Optional(said(Counting, 'Boxes in a case. Never leaves the house.')),
    cases: Type.Optional(
      Type.Union([Counting, Unset], {
        title: 'a whole number above 0, or unset',
        description: 'Cases that are made, or unset while nobody knows. Never leaves the house.',
      }),
    ),
    collation: Type.Optional(
      oneOf(
        ['sequenced', 'random'],
        'Whether cards come in their order or by chance; left out, by chance.',
      ),
    ),
    contents: Type.Optional(
      Type.Array(Content, {
        description:
          'A line for each subset or parallel in it; base cards are the rest of each pack.',
      }),
    ),
    guarantees: Type.Optional(
      Type.Array(Guarantee, {
        description: 'What every box or case is sure to hold. Never leaves the house.',
      }),
    ),
    decoys: Type.Optional(Decoys),
    spoiler: Type.Optional(
      said(Id, 'Its level, if it is later than that of its set; while held it leaves no trace.'),
    ),
    embargo: Type.Optional(Embargoes),
  },
  'What a shop sells: `pack` is cards a pack, `box` packs a box, `case` boxes a case, `cases` how many are made.',
);

export type Product = Static<typeof Product>;
export type Content = Static<typeof Content>;
export type Redemption = Static<typeof Redemption>;
export type Sheet = Static<typeof Sheet>;
