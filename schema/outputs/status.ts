import { Type, type Static } from 'typebox';
import { PlainDate, oneOf, shape } from '../common.js';

const Count = Type.Integer({ minimum: 0 });

/** How far a card can be; those after `handed in` only where somebody must approve. */
export const CARD_STATES = [
  'no copy',
  'draft',
  'handed in',
  'overset',
  'submitted',
  'on hold',
  'approved',
  'changed since approval',
  'revise and resubmit',
  'rejected',
  'not issued',
] as const;
export type CardState = (typeof CARD_STATES)[number];

const CardStates = shape(
  {
    'no copy': Count,
    draft: Count,
    'handed in': Count,
    overset: Count,
    submitted: Count,
    'on hold': Count,
    approved: Count,
    'changed since approval': Count,
    'revise and resubmit': Count,
    rejected: Count,
    'not issued': Count,
  },
  'Cards by how far their copy and its approval are.',
);

const WorkingDays = Type.Integer({
  description: 'Working days until then, that day counted; below zero if it is past.',
});

export const DateStatus = shape(
  {
    date: oneOf(['solicit', 'copyLock', 'toPrinter', 'ships'], 'A date of the plan.'),
    on: PlainDate,
    workingDays: WorkingDays,
    submit: Type.Union(
      [
        shape(
          { by: PlainDate, workingDays: WorkingDays },
          'The last working day on which copy can still be submitted.',
        ),
        Type.Null(),
      ],
      {
        description:
          'For toPrinter: until when copy can be submitted so that a decision is there the ' +
          'working day before; null for others, and where nobody must approve.',
      },
    ),
  },
  'How long it is to a date of the plan.',
);
export type DateStatus = Static<typeof DateStatus>;

export const WaitingStatus = shape(
  {
    person: Type.String(),
    name: Type.String(),
    role: Type.String(),
    packet: Type.String(),
    round: Type.Integer({ minimum: 1 }),
    since: PlainDate,
    due: PlainDate,
    overdue: Type.Integer({ minimum: 0, description: 'Working days since it was due.' }),
    cards: Count,
    parts: Count,
  },
  'A submission of which something is not decided yet: what lies with a reviewer.',
);
export type WaitingStatus = Static<typeof WaitingStatus>;

export const WriterStatus = shape(
  { person: Type.String(), name: Type.String(), states: CardStates },
  'How the cards of a writer stand.',
);
export type WriterStatus = Static<typeof WriterStatus>;

export const CardStatus = shape(
  {
    card: Type.String({ description: 'Set, subset and card, such as high-water/crew/c017.' }),
    number: Type.Union([Type.String(), Type.Null()]),
    name: Type.String(),
    state: oneOf([...CARD_STATES], 'How far it is.'),
    writer: Type.Union([Type.String(), Type.Null()]),
    checkedAgainst: Type.Union([Type.String(), Type.Null()], {
      description: 'The latest cut that its copy was read against; null if there is none.',
    }),
    waitsFor: Type.Array(Type.String(), { description: 'People who have it, by id.' }),
    remarks: Type.Array(Type.String(), {
      description: 'What was said with the decisions that stand in its way.',
    }),
  },
  'How a card stands.',
);
export type CardStatus = Static<typeof CardStatus>;

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
    states: CardStates,
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
    blocks: Type.Array(Type.String(), {
      description: 'What the rehearsal found in its way, if it was on this content.',
    }),
    unapproved: Type.Array(
      shape({ role: Type.String(), cards: Count }, 'Cards that a role has not approved.'),
      { description: 'Cards that would show and are not approved, by who must approve them.' },
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
          dates: Type.Array(DateStatus),
          subsets: Type.Array(SubsetStatus),
        },
        'How a set stands.',
      ),
    ),
    ahead: Type.Array(OpeningStatus),
    waiting: Type.Array(WaitingStatus),
    writers: Type.Array(WriterStatus),
    asked: Type.Union(
      [
        shape(
          {
            cut: Type.Union([Type.String(), Type.Null()], {
              description: 'The current cut, where cards that were not read against it are asked.',
            }),
            writer: Type.Union([Type.String(), Type.Null()]),
            cards: Type.Array(CardStatus),
          },
          'Cards that were asked for one by one.',
        ),
        Type.Null(),
      ],
      { description: 'Null without --cut and --mine.' },
    ),
  },
  'What `status --format json` prints: for the house alone.',
);
export type StatusSheet = Static<typeof StatusSheet>;
