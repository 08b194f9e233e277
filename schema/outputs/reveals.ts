import { Type, type Static } from 'typebox';
import { shape } from '../common.js';

const Count = Type.Integer({ minimum: 0 });

const changes = {
  titles: Type.Array(Type.String(), { description: 'Sets, subsets and parallels that are new.' }),
  names: Type.Array(Type.String(), {
    description: 'Names, and forms of them, that may be told and could not before.',
  }),
  cards: Type.Array(
    shape(
      {
        set: Type.String(),
        subset: Type.String(),
        number: Type.Union([Type.String(), Type.Null()]),
        name: Type.String(),
        change: Type.Union([
          Type.Literal('listed'),
          Type.Literal('revealed'),
          Type.Literal('more shown'),
          Type.Literal('otherwise shown'),
          Type.Literal('gone'),
        ]),
        fields: Type.Array(Type.String(), { description: 'What of it is otherwise.' }),
      },
      'A card that the public sees otherwise.',
    ),
  ),
};

export const RevealsReport = shape(
  {
    steps: Type.Array(
      shape(
        {
          at: Type.String({ description: 'An RFC 9557 instant in the property’s zone.' }),
          opens: Type.Array(Type.String(), { description: 'Levels and embargoes that lift.' }),
          inShops: Type.Array(Type.String(), { description: 'Sets whose street date it is.' }),
          ...changes,
          shown: Type.Integer({ minimum: 0, description: 'Cards shown from then on.' }),
          placeholders: Count,
        },
        'A step of time, and what the public sees otherwise from it on.',
      ),
    ),
    difference: Type.Union([
      Type.Null(),
      shape(
        { from: Type.String(), to: Type.String(), ...changes },
        'What the public sees otherwise at the second instant than at the first.',
      ),
    ]),
  },
  'What `reveals --format json` prints: for the house alone.',
);
export type RevealsReport = Static<typeof RevealsReport>;
