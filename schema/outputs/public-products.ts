import { Type, type Static } from 'typebox';
import { shape } from '../common.js';

/** What a shop sells of a set, and what is found in it, as the public may know it. */

const Whole = (description: string) => Type.Union([Type.Integer({ description }), Type.Null()]);
const Id = (description: string) => Type.Union([Type.String({ description }), Type.Null()]);

export const PublicOdds = shape(
  {
    subset: Id('Id of the subset that is found so often.'),
    parallel: Id('Id of the parallel, where it is one.'),
    title: Type.String(),
    packs: Type.Integer({
      description:
        'One in so many packs: an average over the whole run, never better than the truth.',
    }),
  },
  'How often something is found.',
);
export type PublicOdds = Static<typeof PublicOdds>;

const Packs = (description: string) =>
  Type.Integer({ minimum: 1, description: `Packs${description}, rounded up.` });

export const PublicCompletion = shape(
  {
    subset: Type.String({ description: 'Id of the subset.' }),
    title: Type.String(),
    cards: Type.Integer({
      minimum: 2,
      description: 'Cards of it that are listed; a variation stands for its card.',
    }),
    expected: Packs(' that it takes on average'),
    half: Packs(' after which half of all collectors have them all'),
    ninety: Packs(' after which 90 of a hundred have them all'),
    ninetyNine: Packs(' after which 99 of a hundred have them all'),
    curve: Type.Array(Packs(''), {
      description: 'Packs after which 5, 10, … 95, and 99 of a hundred have them all.',
    }),
  },
  'What it takes a collector who does not trade to have all cards of a subset, if each is as common as the others: worked out of the odds that are told, never too few.',
);
export type PublicCompletion = Static<typeof PublicCompletion>;

export const PublicMade = shape(
  {
    title: Type.String(),
    cards: Type.Integer({ minimum: 1, description: 'Cards that are listed.' }),
    copies: Type.Integer({ minimum: 1, description: 'Copies of each.' }),
  },
  'A run that is told, of a parallel or of cards.',
);
export type PublicMade = Static<typeof PublicMade>;

export const PublicProduct = shape(
  {
    id: Type.String(),
    title: Type.String(),
    pack: Whole('Cards a pack.'),
    box: Whole('Packs a box.'),
    odds: Type.Array(PublicOdds),
    complete: Type.Optional(
      Type.Array(PublicCompletion, {
        minItems: 1,
        description: 'What it takes to have all cards, where that can be told of the odds.',
      }),
    ),
  },
  'What a shop sells.',
);
export type PublicProduct = Static<typeof PublicProduct>;
