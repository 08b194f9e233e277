import { Type, type Static } from 'typebox';
import { Format, PlainDate, Text, shape } from '../common.js';

export const CorrectionsFile = shape(
  {
    format: Type.Optional(Format),
    corrections: Type.Array(
      shape(
        {
          card: Type.String({
            pattern: '^[a-z0-9-]+/[a-z0-9-]+$',
            title: 'the identity of a card, such as crew/c017',
          }),
          at: PlainDate,
          was: Text,
          now: Text,
          note: Type.Optional(Text),
        },
        'Something printed that turned out wrong.',
      ),
    ),
  },
  'Corrections that the site tells.',
);
export type CorrectionsFile = Static<typeof CorrectionsFile>;
