import { Type, type Static } from 'typebox';
import { shape } from '../common.js';

const Place = {
  file: Type.String({ description: 'Relative to the content folder, with /.' }),
  line: Type.Integer({ minimum: 1 }),
  column: Type.Integer({ minimum: 1, description: 'UTF-16 units.' }),
};

export const Finding = shape(
  {
    rule: Type.String(),
    severity: Type.Enum(['error', 'warning']),
    message: Type.String(),
    found: Type.Optional(Type.String()),
    expected: Type.Optional(Type.String()),
    set: Type.Union([Type.String(), Type.Null()]),
    card: Type.Union([Type.String(), Type.Null()], { description: 'Subset and id.' }),
    ...Place,
    endLine: Type.Integer({ minimum: 1 }),
    endColumn: Type.Integer({ minimum: 1 }),
    related: Type.Array(shape({ message: Type.String(), ...Place }, 'Another place.')),
    fix: Type.Optional(Type.String({ description: 'The exact words to put there instead.' })),
    certain: Type.Optional(
      Type.Literal(true, { description: 'Whether `check --fix` writes the fix.' }),
    ),
    accepted: Type.Optional(Type.String({ description: 'Why it stands, and who says so.' })),
  },
  'One finding.',
);
export type Finding = Static<typeof Finding>;

export const CheckReport = shape(
  {
    ok: Type.Boolean(),
    counts: shape(
      {
        sets: Type.Integer(),
        cards: Type.Integer(),
        errors: Type.Integer(),
        warnings: Type.Integer(),
        accepted: Type.Integer(),
      },
      'How many.',
    ),
    findings: Type.Array(Finding),
  },
  'What `check --format json` prints.',
);
export type CheckReport = Static<typeof CheckReport>;

/** What `check --discreet --format json` prints: nothing that the public cannot see at that instant. */
export const DiscreetReport = shape(
  {
    ok: Type.Boolean(),
    counts: shape({ errors: Type.Integer(), warnings: Type.Integer() }, 'Of what is public.'),
    findings: Type.Array(
      shape(
        {
          rule: Type.String(),
          severity: Type.Enum(['error', 'warning']),
          set: Type.String(),
          subset: Type.String(),
          number: Type.String(),
          line: Type.Integer(),
        },
        'One finding about something public.',
      ),
    ),
    rest: Type.Union([Type.String(), Type.Null()], {
      description: 'One fixed sentence, whenever the check fails.',
    }),
  },
  'What `check --discreet --format json` prints.',
);
export type DiscreetReport = Static<typeof DiscreetReport>;

/** What the list of claims says that a number was taken for. */
const TAKEN = ['claim', 'story', 'odds', 'number', 'share'] as const;
const STANDS = ['holds', 'wrong', 'tells', 'doubtful', 'open'] as const;

export const ListedNumber = shape(
  {
    set: Type.Union([Type.String(), Type.Null()]),
    card: Type.Union([Type.String(), Type.Null()], { description: 'Subset and id.' }),
    ...Place,
    endLine: Type.Integer({ minimum: 1 }),
    endColumn: Type.Integer({ minimum: 1 }),
    text: Type.String({ description: 'Which text: the bio, this text.' }),
    words: Type.String({ description: 'The number and, of a claim, what it counts.' }),
    number: Type.Number({ description: 'What it says; of a share, a part of one.' }),
    to: Type.Optional(Type.Number({ description: 'The upper end of a range.' })),
    taken: Type.Enum([...TAKEN], {
      description:
        'For a claim, a number of the story, odds, a number as printed, or a share of the cards.',
    }),
    link: Type.Optional(Type.String({ description: 'What its count link names.' })),
    hedge: Type.Optional(Type.String({ description: 'How it is not meant exactly.' })),
    stands: Type.Optional(
      Type.Enum([...STANDS], {
        description:
          'Of a claim: it holds, is wrong, counts what leaves no trace, counts what another rule doubts, or can be compared with nothing in the plan.',
      }),
    ),
    real: Type.Optional(
      Type.Array(shape({ count: Type.Integer(), of: Type.String() }, 'A real count.')),
    ),
  },
  'A number of a text.',
);
export type ListedNumber = Static<typeof ListedNumber>;

export const ClaimsReport = shape(
  {
    ok: Type.Boolean({ description: 'Whether the check finds no error.' }),
    counts: shape(
      {
        claims: Type.Integer(),
        holding: Type.Integer(),
        wrong: Type.Integer({ description: 'Claims that are wrong or tell.' }),
        story: Type.Integer(),
        others: Type.Integer({ description: 'Odds, printed numbers and shares.' }),
      },
      'How many.',
    ),
    numbers: Type.Array(ListedNumber),
  },
  'What `check --claims --format json` prints.',
);
export type ClaimsReport = Static<typeof ClaimsReport>;
