import { Type, type Static } from 'typebox';
import { shape } from '../common.js';

const Count = Type.Integer({ minimum: 0 });

export const FitTallyReport = shape(
  {
    texts: Count,
    filled: Type.Array(Count, {
      description:
        'Texts that fit, by how full their zones are: up to 5 %, up to 10 %, and on to 100 %.',
    }),
    tight: Type.Integer({ minimum: 0, description: 'They fit and leave no line free.' }),
    overset: Type.Integer({ minimum: 0, description: 'They have a line or a word over.' }),
  },
  'How full the zones of texts are.',
);

export const SubsetStatus = shape(
  {
    subset: Type.String(),
    title: Type.String(),
    states: shape(
      { 'no copy': Count, draft: Count, 'handed in': Count, 'not issued': Count },
      'Cards by how far their copy is.',
    ),
    errors: Count,
    warnings: Count,
    bios: Type.Union([FitTallyReport, Type.Null()], {
      description: 'How full the zones of its bios are; null where it has none.',
    }),
  },
  'How a subset stands.',
);
export type SubsetStatus = Static<typeof SubsetStatus>;

export const OpeningStatus = shape(
  {
    at: Type.String({ description: 'An RFC 9557 instant in the property’s zone.' }),
    opens: Type.Array(Type.String(), { description: 'Levels and embargoes that lift.' }),
    inShops: Type.Array(Type.String(), { description: 'Sets whose street date it is.' }),
    listed: Count,
    revealed: Count,
    moreShown: Count,
    rehearsed: Type.Union(
      [
        Type.Literal('on this content'),
        Type.Literal('refused on this content'),
        Type.Literal('on other content'),
        Type.Literal('not yet'),
      ],
      { description: 'Whether the release of this instant was rehearsed, and what came of it.' },
    ),
  },
  'An instant to come, and what the public sees from it on.',
);
export type OpeningStatus = Static<typeof OpeningStatus>;

export const StatusSheet = shape(
  {
    sets: Type.Array(
      shape(
        {
          set: Type.String(),
          title: Type.String(),
          stage: Type.String(),
          subsets: Type.Array(SubsetStatus),
        },
        'How a set stands.',
      ),
    ),
    ahead: Type.Array(OpeningStatus),
  },
  'What `status --format json` prints: for the house alone.',
);
export type StatusSheet = Static<typeof StatusSheet>;
