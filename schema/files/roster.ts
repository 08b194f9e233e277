import { Type, type Static } from 'typebox';
import { Format, PlainDate, Text, oneOf, said, shape } from '../common.js';

export const RosterFile = shape(
  {
    format: Type.Optional(Format),
    artists: Type.Array(
      shape(
        {
          name: said(Text, 'The artist’s name, as lists have it.'),
          state: oneOf(
            ['asked', 'contracted', 'signed', 'withdrawn'],
            'How far it is: signed is told to the public, withdrawn counts no longer.',
          ),
          since: Type.Optional(
            said(PlainDate, 'The day from which it is so. Never leaves the house.'),
          ),
          remark: Type.Optional(said(Text, 'A note for the team. Never leaves the house.')),
        },
        'An artist of the roster.',
      ),
      {
        minItems: 1,
        description: 'Everybody who was asked. Those who have signed are listed for the public.',
      },
    ),
  },
  'Who draws the cards of a subset that has no card files.',
);
export type RosterFile = Static<typeof RosterFile>;
