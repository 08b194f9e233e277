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
  said,
  shape,
} from '../common.js';

const holdKeys = {
  id: said(Id, 'A short id, by which everything that it holds names it. Never leaves the house.'),
  label: Type.Optional(
    said(Text, 'What it is called: to reviewers, and to the public once a level has lifted.'),
  ),
  print: Type.Optional(
    said(
      InstantOrUnset,
      'From when a product in shops may show it: no later than its lift, the default.',
    ),
  ),
  held: Type.Optional(
    oneOf(
      ['placeholder', 'absent'],
      'Whether what is held leaves a placeholder, the default, or no trace.',
    ),
  ),
  announce: Type.Optional(
    Type.Boolean({
      description: 'Whether the lift may be told beforehand; true, if it is not said.',
    }),
  ),
};

export const Level = shape(
  {
    ...holdKeys,
    lift: Type.Optional(
      said(
        InstantOrUnset,
        'When it opens to everybody; unset, never. Only the first level has none.',
      ),
    ),
  },
  'A step of how much of the story is told. Only the first level has no lift.',
);

export const Embargo = shape(
  {
    ...holdKeys,
    lift: said(InstantOrUnset, 'When it opens to everybody; unset while nobody knows.'),
  },
  'A hold apart from the story. `lift: unset` holds it at every instant.',
);

export const Cut = shape(
  {
    id: said(Id, 'A short id, which checkedAgainst of a card names.'),
    received: said(PlainDate, 'The day on which it came.'),
    touches: Type.Optional(
      Type.Array(SceneSpan, {
        description: 'Scenes that it changed, such as 2/11-2/14; cards of them must be read again.',
      }),
    ),
    names: Type.Optional(
      Type.Array(Text, {
        description: 'Names that it changed; cards with them must be read again.',
      }),
    ),
  },
  'A cut of the story and what it changed. The last one is current.',
);

export const Document = shape(
  {
    id: said(Id, 'A short id, which sources of cards name.'),
    title: said(
      Text,
      'What it is called. Reviewers who may know of it are told, the public is not.',
    ),
    level: Type.Optional(said(Id, 'The level that its title tells of; left out, the first.')),
    embargo: Type.Optional(
      Type.Array(Id, { description: 'Embargoes that hold its title besides its level.' }),
    ),
    withdrawn: Type.Optional(
      said(PlainDate, 'The day on which it was withdrawn; what rests on it alone is found.'),
    ),
  },
  'A source document.',
);

export const Beat = shape(
  {
    at: said(Scene, 'The episode and scene of it, such as 2/14.'),
    says: said(Text, 'What happens, in plain words. Never leaves the house.'),
    level: said(Id, 'The level that it tells of.'),
    embargo: Type.Optional(
      Type.Array(Id, { description: 'Embargoes that hold it besides its level.' }),
    ),
  },
  'A turn of the story.',
);

export const Where = shape(
  {
    depicts: Type.Optional(
      Type.Array(Text, { minItems: 1, description: 'Cards whose picture shows one of these.' }),
    ),
    subset: Type.Optional(
      Type.Array(Id, { minItems: 1, description: 'Cards of one of these subsets.' }),
    ),
    group: Type.Optional(
      Type.Array(Id, { minItems: 1, description: 'Cards of one of these groups of subsets.' }),
    ),
  },
  'Which cards a line applies to.',
);

export const ApprovalLine = shape(
  {
    parts: Type.Array(Part, {
      minItems: 1,
      description: 'The parts of a card that it asks for; sales is of texts that go out.',
    }),
    roles: Type.Union(
      [Type.Literal('none', { title: 'none' }), Type.Array(Role, { minItems: 1 })],
      {
        title: 'a list of roles, or none',
        description: 'The roles that must each approve them; none, if nobody has to.',
      },
    ),
    where: Type.Optional(said(Where, 'The cards that it is for; left out, all of them.')),
  },
  'Which roles must approve which parts.',
);

export const Shows = shape(
  {
    bio: Type.Optional(
      oneOf(['none', 'full'], 'Whether bios and texts are on the site; left out, none.'),
    ),
    art: Type.Optional(
      oneOf(['none', 'front', 'both'], 'Which art is on the site; left out, none.'),
    ),
    facts: Type.Optional(oneOf(['none', 'full'], 'Whether facts are on the site; left out, none.')),
    credits: Type.Optional(
      oneOf(['none', 'full'], 'Whether credits are on the site; left out, none.'),
    ),
  },
  'What the licence lets the site show.',
);

/** Families of type that come with the tool; each has a face for words and one for figures. */
export const TYPE_CHOICES = ['alegreya', 'source', 'garamond'] as const;

export const Look = shape(
  {
    accent: Type.Optional(
      said(Colour, 'The colour of links and marks, made so that it can be read.'),
    ),
    paper: Type.Optional(said(Colour, 'The colour of the ground, where pages are light.')),
    ink: Type.Optional(said(Colour, 'The colour of the words, where pages are light.')),
    type: Type.Optional(oneOf([...TYPE_CHOICES], 'The family of type that words are set in.')),
  },
  'The look of the site: colours on a light ground, and type.',
);

export const PropertyFile = shape(
  {
    format: Type.Optional(Format),
    id: said(
      Id,
      'A short id, by which packets and decision files know it. The public is not told.',
    ),
    title: said(Text, 'What the licensed work is called. Every page says it.'),
    zone: said(Zone, 'The time zone of the dates on the site, such as Europe/London.'),
    since: said(Instant, 'From when anything of it is public; nothing is published before.'),
    levels: Type.Array(Level, {
      minItems: 1,
      title: 'a list of levels',
      description: 'How much of the story is told, from least to most; each opens at its lift.',
    }),
    embargoes: Type.Optional(
      Type.Array(Embargo, { description: 'Holds apart from the story, in no order.' }),
    ),
    cuts: Type.Optional(
      Type.Array(Cut, {
        description: 'Which cuts of the story came; the last is current. Never leaves the house.',
      }),
    ),
    documents: Type.Optional(
      Type.Array(Document, { description: 'Papers that facts and quotations rest on.' }),
    ),
    approvals: Type.Union(
      [Type.Literal('none', { title: 'none' }), Type.Array(ApprovalLine, { minItems: 1 })],
      {
        title: 'a list of which roles approve which parts, or none',
        description:
          'Who must approve what: every line that matches a card counts; none, if nobody has to.',
      },
    ),
    beats: Type.Optional(
      Type.Array(Beat, {
        description: 'What turns the story takes, for cards to tell. Never leaves the house.',
      }),
    ),
    legal: Type.Optional(
      shape(
        {
          line: said(
            Text,
            'The line that cards print in their zone legal, and the site on its pages.',
          ),
          depicts: Type.Optional(
            Type.Array(
              shape(
                {
                  name: said(Text, 'Who is shown, by a name of names.yaml.'),
                  line: said(Text, 'The words that are owed, letter by letter.'),
                },
                'A line owed where this person is shown.',
              ),
              {
                description: 'Lines owed where somebody is shown; they print after the legal line.',
              },
            ),
          ),
        },
        'The legal line, letter by letter as the licence gives it.',
      ),
    ),
    review: Type.Optional(
      shape(
        {
          workingDays: Type.Optional(
            Type.Integer({
              minimum: 1,
              maximum: 366,
              description: 'Working days that a review takes; left out, 10.',
            }),
          ),
          holidays: Type.Optional(
            Type.Array(PlainDate, {
              description: 'Days on which nobody reviews, besides weekends.',
            }),
          ),
          asNoted: Type.Optional(
            oneOf(
              ['resubmit', 'stands'],
              'What “approved as noted” comes to; left out, another round.',
            ),
          ),
          byHand: Type.Optional(
            oneOf(['refused', 'allowed'], 'Whether answers by mail count; left out, they do not.'),
          ),
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
              description: 'What the licence lets the site show of a card; left out, none of it.',
            }),
          ),
          title: Type.Optional(
            said(Text, 'What the site is called; left out, as the property is.'),
          ),
          address: Type.Optional(
            Type.String({
              pattern: '^https://[a-z0-9.-]+(:[0-9]+)?(/[A-Za-z0-9._~-]+)*/$',
              maxLength: 200,
              title: 'an address such as https://cards.example/ferrywrights/, with / at the end',
              description: 'Where the site stands: feeds and maps of a site need it.',
            }),
          ),
          dataTerms: Type.Optional(
            said(Text, 'On what terms others may use the data; lists and pages say it.'),
          ),
          look: Type.Optional(Look),
        },
        'The public site.',
      ),
    ),
  },
  'One licensed property: levels, embargoes and rules that all its sets share.',
);
export type PropertyFile = Static<typeof PropertyFile>;
