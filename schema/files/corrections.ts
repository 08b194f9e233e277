import { Type, type Static } from 'typebox';
import { Format, PlainDate, Text, said, shape } from '../common.js';

export const CorrectionsFile = shape(
  {
    format: Type.Optional(Format),
    corrections: Type.Array(
      shape(
        {
          card: Type.String({
            pattern: '^[a-z0-9-]+/[a-z0-9-]+$',
            title: 'the identity of a card, such as crew/c017',
            description:
              'The card, by its identity such as crew/c017; nothing is told while it is held.',
          }),
          at: said(
            PlainDate,
            'The day of the correction, as the site says it; the newest stands first.',
          ),
          was: said(Text, 'What was printed.'),
          now: said(Text, 'What is right.'),
          note: Type.Optional(said(Text, 'Anything else that collectors should know of it.')),
        },
        'Something printed that turned out wrong.',
      ),
      { description: 'What was printed wrong. The site tells it with its card.' },
    ),
  },
  'Corrections that the site tells.',
);
export type CorrectionsFile = Static<typeof CorrectionsFile>;
