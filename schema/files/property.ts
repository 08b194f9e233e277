import { Type, type Static } from 'typebox';
import {
  Colour,
  Format,
  Id,
  Instant,
  InstantOrUnset,
  Part,
  PlainDate,
  Role,
  Scene,
  SceneSpan,
  Text,
  Zone,
  oneOf,
  shape,
} from '../common.js';

const holdKeys = {
  id: Id,
  label: Type.Optional(Text),
  print: Type.Optional(InstantOrUnset),
  held: Type.Optional(
    oneOf(['placeholder', 'absent'], 'Whether what is held leaves a placeholder or no trace.'),
  ),
  announce: Type.Optional(
    Type.Boolean({ description: 'Whether the lift may be told beforehand.' }),
  ),
};

export const Level = shape(
  { ...holdKeys, lift: Type.Optional(InstantOrUnset) },
  'A step of how much of the story is told. Only the first level has no lift.',
);

export const Embargo = shape(
  { ...holdKeys, lift: InstantOrUnset },
  'A hold apart from the story. `lift: unset` holds it at every instant.',
);

export const Cut = shape(
  {
    id: Id,
    received: PlainDate,
    touches: Type.Optional(Type.Array(SceneSpan)),
    names: Type.Optional(Type.Array(Text)),
  },
  'A cut of the story and what it changed. The last one is current.',
);

export const Document = shape(
  {
    id: Id,
    title: Text,
    level: Type.Optional(Id),
    embargo: Type.Optional(Type.Array(Id)),
    withdrawn: Type.Optional(PlainDate),
  },
  'A source document.',
);

export const Beat = shape(
  { at: Scene, says: Text, level: Id, embargo: Type.Optional(Type.Array(Id)) },
  'A turn of the story.',
);

export const Where = shape(
  {
    depicts: Type.Optional(Type.Array(Text, { minItems: 1 })),
    subset: Type.Optional(Type.Array(Id, { minItems: 1 })),
    group: Type.Optional(Type.Array(Id, { minItems: 1 })),
  },
  'Which cards a line applies to.',
);

export const ApprovalLine = shape(
  {
    parts: Type.Array(Part, { minItems: 1 }),
    roles: Type.Union(
      [Type.Literal('none', { title: 'none' }), Type.Array(Role, { minItems: 1 })],
      {
        title: 'a list of roles, or none',
      },
    ),
    where: Type.Optional(Where),
  },
  'Which roles must approve which parts.',
);

export const Shows = shape(
  {
    bio: Type.Optional(oneOf(['none', 'full'], 'Bios on the site.')),
    art: Type.Optional(oneOf(['none', 'front', 'both'], 'Art on the site.')),
    facts: Type.Optional(oneOf(['none', 'full'], 'Facts on the site.')),
    credits: Type.Optional(oneOf(['none', 'full'], 'Credits on the site.')),
  },
  'What the licence lets the site show.',
);

/** Families of type that come with the tool; each has a face for words and one for figures. */
export const TYPE_CHOICES = ['alegreya', 'source', 'garamond'] as const;

export const Look = shape(
  {
    accent: Type.Optional(Colour),
    paper: Type.Optional(Colour),
    ink: Type.Optional(Colour),
    type: Type.Optional(oneOf([...TYPE_CHOICES], 'The type of the site.')),
  },
  'The look of the site: colours on a light ground, and type.',
);

export const PropertyFile = shape(
  {
    format: Type.Optional(Format),
    id: Id,
    title: Text,
    zone: Zone,
    since: Instant,
    levels: Type.Array(Level, { minItems: 1, title: 'a list of levels' }),
    embargoes: Type.Optional(Type.Array(Embargo)),
    cuts: Type.Optional(Type.Array(Cut)),
    documents: Type.Optional(Type.Array(Document)),
    approvals: Type.Union(
      [Type.Literal('none', { title: 'none' }), Type.Array(ApprovalLine, { minItems: 1 })],
      { title: 'a list of which roles approve which parts, or none' },
    ),
    beats: Type.Optional(Type.Array(Beat)),
    legal: Type.Optional(
      shape(
        {
          line: Text,
          depicts: Type.Optional(
            Type.Array(
              shape({ name: Text, line: Text }, 'A line owed where this person is shown.'),
            ),
          ),
        },
        'The legal line, letter by letter as the licence gives it.',
      ),
    ),
    review: Type.Optional(
      shape(
        {
          workingDays: Type.Optional(Type.Integer({ minimum: 1, maximum: 366 })),
          holidays: Type.Optional(Type.Array(PlainDate)),
          asNoted: Type.Optional(oneOf(['resubmit', 'stands'], 'What approved as noted asks for.')),
          byHand: Type.Optional(oneOf(['refused', 'allowed'], 'Whether answers by mail count.')),
        },
        'How the licensor reviews.',
      ),
    ),
    site: Type.Optional(
      shape(
        {
          shows: Type.Optional(
            Type.Union([Type.Literal('none', { title: 'none' }), Shows], {
              title: 'none, or what may be shown of bio, art, facts and credits',
            }),
          ),
          title: Type.Optional(Text),
          address: Type.Optional(
            Type.String({
              pattern: '^https://[a-z0-9.-]+(:[0-9]+)?(/[A-Za-z0-9._~-]+)*/$',
              maxLength: 200,
              title: 'an address such as https://cards.example/ferrywrights/, with / at the end',
              description: 'Where the site stands: feeds and maps of a site need it.',
            }),
          ),
          dataTerms: Type.Optional(Text),
          look: Type.Optional(Look),
        },
        'The public site.',
      ),
    ),
  },
  'One licensed property: levels, embargoes and rules that all its sets share.',
);
export type PropertyFile = Static<typeof PropertyFile>;
