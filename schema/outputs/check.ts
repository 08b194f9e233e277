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
