import { Type, type Static } from 'typebox';
import {
  Accepted,
  ContentPath,
  Counting,
  Embargoes,
  Format,
  Id,
  InstantOrUnset,
  Scene,
  Text,
  oneOf,
  shape,
} from '../common.js';

export const Image = shape(
  {
    file: ContentPath,
    alt: Type.Optional(Text),
    ref: Type.Optional(Text),
    depicts: Type.Optional(Type.Array(Text, { description: 'Whoever is recognisable.' })),
  },
  'The picture on the front.',
);

export const Signer = shape(
  {
    name: Text,
    as: Type.Optional(Text),
    state: oneOf(['asked', 'contracted', 'signed', 'redemption', 'withdrawn'], 'How far it is.'),
  },
  'A person who signs the card.',
);

export const Credit = shape({ role: Text, name: Text }, 'Who made what.');

export const Variation = shape(
  {
    of: Type.String({
      pattern: '^[a-z0-9-]+/[a-z0-9-]+$',
      title: 'the identity of its parent, such as crew/c017',
    }),
    letter: Type.String({ pattern: '^[a-z]$', title: 'one small letter' }),
    tell: Text,
  },
  'The same number as its parent, told apart by something to look for.',
);

export const Source = shape(
  { doc: Id, ref: Type.Optional(Text), for: Type.Optional(Text) },
  'Where a fact comes from.',
);

export const Relic = shape(
  {
    piece: Text,
    from: Text,
    record: Type.Optional(Text),
  },
  'What is set into a relic card: the piece, whom or what it came from, and the paper that says so.',
);

export const CardFront = shape(
  {
    format: Type.Optional(Format),
    number: Type.String({
      minLength: 1,
      maxLength: 24,
      title: 'the number as it is printed, or none',
      description: 'The number as printed, in quotes; none for a card without one.',
    }),
    name: Text,
    spoiler: Id,
    embargo: Type.Optional(Embargoes),
    ships: Type.Optional(InstantOrUnset),
    state: Type.Optional(oneOf(['draft', 'ready'], 'Whether the copy is handed in.')),
    publicName: Type.Optional(Text),
    holds: Type.Optional(
      Type.Record(Text, Id, {
        additionalProperties: false,
        description: 'Fields held longer than the card: a field and a level or an embargo.',
      }),
    ),
    image: Type.Optional(Image),
    facts: Type.Optional(Type.Record(Text, Text, { additionalProperties: false })),
    texts: Type.Optional(Type.Record(Id, Text, { additionalProperties: false })),
    signers: Type.Optional(Type.Array(Signer, { minItems: 1 })),
    credits: Type.Optional(Type.Array(Credit, { minItems: 1 })),
    story: Type.Optional(Scene),
    variation: Type.Optional(Variation),
    shortPrint: Type.Optional(oneOf(['SP', 'SSP'], 'Printed in smaller numbers.')),
    run: Type.Optional(Counting),
    relic: Type.Optional(Relic),
    issued: Type.Optional(oneOf(['yes', 'no'], 'A pulled card keeps its number.')),
    why: Type.Optional(Text),
    bio: Type.Optional(Type.Literal('none', { title: 'none' })),
    back: Type.Optional(Id),
    writer: Type.Optional(Id),
    sources: Type.Optional(Type.Array(Source)),
    checkedAgainst: Type.Optional(Id),
    remark: Type.Optional(Text),
    accepted: Type.Optional(Accepted),
  },
  'The front matter of a card.',
);
export type CardFront = Static<typeof CardFront>;
