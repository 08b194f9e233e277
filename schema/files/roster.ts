import { Type, type Static } from 'typebox';
import { Format, PlainDate, Text, oneOf, shape } from '../common.js';

export const RosterFile = shape(
  {
    format: Type.Optional(Format),
    artists: Type.Array(
      shape(
        {
          name: Text,
          state: oneOf(['asked', 'contracted', 'signed', 'withdrawn'], 'How far it is.'),
          since: Type.Optional(PlainDate),
          remark: Type.Optional(Text),
        },
        'An artist of the roster.',
      ),
      { minItems: 1 },
    ),
  },
  'Who draws the cards of a subset that has no card files.',
);
export type RosterFile = Static<typeof RosterFile>;
