import { Type, type Static } from 'typebox';
import { Counting, Embargoes, Id, Text, oneOf, said, shape } from '../common.js';
import { Reserve } from './packed.js';

export const Parallel = shape(
  {
    id: said(Id, 'A short id, by which contents of products name it. The public is told.'),
    title: said(Text, 'What it is called beside a card.'),
    of: Type.Array(Id, {
      minItems: 1,
      description: 'The subsets whose cards come in it; variations do not.',
    }),
    run: Type.Optional(said(Counting, 'Copies of each card, as the public is told.')),
    copies: Type.Optional(
      said(Counting, 'Copies of each card, if that is not public. Never leaves the house.'),
    ),
    tell: Type.Optional(said(Text, 'How to know it by looking, such as gloss over the art.')),
    found: Type.Optional(
      oneOf(
        ['pack', 'box', 'redemption', 'event', 'retail', 'hobby'],
        'Where a collector finds it. Never leaves the house.',
      ),
    ),
    places: Type.Optional(
      said(
        Counting,
        'Places in a pack that one of its cards takes, if it is thick; left out, one.',
      ),
    ),
    reserve: Type.Optional(Reserve),
    spoiler: Type.Optional(
      said(Id, 'Its level, if it is later than that of its set; while held it leaves no trace.'),
    ),
    embargo: Type.Optional(Embargoes),
  },
  'A parallel: the same cards in another finish. `run` is public, `copies` is not.',
);
export type Parallel = Static<typeof Parallel>;
