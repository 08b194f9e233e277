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
  said,
  shape,
} from '../common.js';

export const Image = shape(
  {
    file: said(
      ContentPath,
      'The picture: a path below the folder of the set, such as art/c017.svg.',
    ),
    alt: Type.Optional(
      said(
        Text,
        'The picture in words, for whoever cannot see it; checked for spoilers as copy is.',
      ),
    ),
    ref: Type.Optional(
      said(
        Text,
        'What the licensor calls the picture, such as still 0417. The public is not told.',
      ),
    ),
    depicts: Type.Optional(
      Type.Array(Text, {
        description: 'Whoever is recognisable, by names of names.yaml. The public is not told.',
      }),
    ),
  },
  'The picture on the front.',
);

export const Signer = shape(
  {
    name: said(Text, 'The person who signs.'),
    as: Type.Optional(said(Text, 'Whom this person plays, by a name of names.yaml.')),
    state: oneOf(
      ['asked', 'contracted', 'signed', 'redemption', 'withdrawn'],
      'How far it is; the public is told of signed and redemption alone.',
    ),
  },
  'A person who signs the card.',
);

export const Credit = shape(
  {
    role: said(Text, 'What the person did, such as Illustration; it prints before the name.'),
    name: said(Text, 'Who did it, as they are to be credited.'),
  },
  'Who made what.',
);

export const Variation = shape(
  {
    of: Type.String({
      pattern: '^[a-z0-9-]+/[a-z0-9-]+$',
      title: 'the identity of its parent, such as crew/c017',
      description: 'The identity of its parent, such as crew/c017, whose number it bears too.',
    }),
    letter: Type.String({
      pattern: '^[a-z]$',
      title: 'one small letter',
      description: 'The small letter that tells the two apart in lists, such as b.',
    }),
    tell: said(Text, 'What a collector looks for, such as: The lamp is lit. Held with the card.'),
  },
  'The same number as its parent, told apart by something to look for.',
);

export const Source = shape(
  {
    doc: said(Id, 'The document, by its id in property.yaml.'),
    ref: Type.Optional(said(Text, 'Where in the document, such as p. 31.')),
    for: Type.Optional(
      said(
        Text,
        'What it speaks for: a fact by its name, a field such as bio, or quote; left out, all facts.',
      ),
    ),
  },
  'Where a fact comes from.',
);

export const Relic = shape(
  {
    piece: said(Text, 'What is set into the card, such as a sliver of wood.'),
    from: said(Text, 'Whom or what the piece came from.'),
    record: Type.Optional(said(Text, 'The paper that vouches for the piece; check asks for it.')),
  },
  'What is set into a relic card, where it came from and what vouches for it. Never leaves the house.',
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
    name: said(Text, 'The name as printed and listed; while it is held, publicName stands for it.'),
    spoiler: said(
      Id,
      'The level that the card tells of; until it lifts, the public sees a placeholder or nothing.',
    ),
    embargo: Type.Optional(Embargoes),
    ships: Type.Optional(
      said(
        InstantOrUnset,
        'When it is in hands: an instant, or unset. Left out, when its subset is, or else its set.',
      ),
    ),
    state: Type.Optional(
      oneOf(
        ['draft', 'ready'],
        'Whether the copy is handed in; left out, it is a draft. Never leaves the house.',
      ),
    ),
    publicName: Type.Optional(
      said(Text, 'What stands for a card or name that is held; left out, “To be revealed”.'),
    ),
    holds: Type.Optional(
      Type.Record(Text, Id, {
        additionalProperties: false,
        description: 'Fields held longer than the card: a field and a level or an embargo.',
      }),
    ),
    image: Type.Optional(Image),
    facts: Type.Optional(
      Type.Record(Text, Text, {
        additionalProperties: false,
        description: 'Facts by their names; they fill the zone facts, and each asks for a source.',
      }),
    ),
    texts: Type.Optional(
      Type.Record(Id, Text, {
        additionalProperties: false,
        description: 'Short texts by the zone that they fill, such as caption.',
      }),
    ),
    signers: Type.Optional(
      Type.Array(Signer, {
        minItems: 1,
        description: 'Who signs the card. With holds they can be held longer than it is.',
      }),
    ),
    credits: Type.Optional(
      Type.Array(Credit, {
        minItems: 1,
        description:
          'Who made what: a line each in the zone credits, and on the site if that shows them.',
      }),
    ),
    story: Type.Optional(
      said(
        Scene,
        'The episode and scene that it tells, such as 2/14: for order and cuts. Never leaves the house.',
      ),
    ),
    variation: Type.Optional(Variation),
    shortPrint: Type.Optional(
      oneOf(['SP', 'SSP'], 'Printed in smaller numbers; the public is told with the card.'),
    ),
    run: Type.Optional(
      said(Counting, 'Copies of this card, if it has a number of its own. The public is told.'),
    ),
    relic: Type.Optional(Relic),
    issued: Type.Optional(
      oneOf(['yes', 'no'], 'Say no of a pulled card: it keeps its number and stays in the list.'),
    ),
    why: Type.Optional(said(Text, 'Why the card was pulled. Never leaves the house.')),
    bio: Type.Optional(
      Type.Literal('none', {
        title: 'none',
        description:
          'Say none of a card that has no bio on purpose, where others of its subset have.',
      }),
    ),
    back: Type.Optional(said(Id, 'Its layout, by the id in backs; left out, that of its subset.')),
    writer: Type.Optional(
      said(Id, 'Who writes it, by their id in people.yaml. Never leaves the house.'),
    ),
    sources: Type.Optional(
      Type.Array(Source, {
        description:
          'What its facts and quotations rest on. Reviewers are told, the public is not.',
      }),
    ),
    checkedAgainst: Type.Optional(
      said(
        Id,
        'The cut that its copy was last read against; checked writes it. Never leaves the house.',
      ),
    ),
    remark: Type.Optional(said(Text, 'A note for the team. Never leaves the house.')),
    accepted: Type.Optional(Accepted),
  },
  'The front matter of a card.',
);
export type CardFront = Static<typeof CardFront>;
