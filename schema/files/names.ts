import { Type, type Static } from 'typebox';
import { Embargoes, Format, Id, Text, oneOf, shape } from '../common.js';

export const Alias = Type.Union(
  [
    Text,
    shape(
      { form: Text, level: Type.Optional(Id), embargo: Type.Optional(Embargoes) },
      'A form that opens later than the name.',
    ),
  ],
  { title: 'another form of the name, or { form, level }' },
);

export const Name = shape(
  {
    name: Text,
    kind: oneOf(
      ['character', 'performer', 'maker', 'craft', 'place', 'thing', 'group', 'title'],
      'What bears the name.',
    ),
    aliases: Type.Optional(Type.Array(Alias)),
    avoid: Type.Optional(
      Type.Array(
        shape({ form: Text, use: Text, why: Type.Optional(Text) }, 'A form no longer to be used.'),
      ),
    ),
    say: Type.Optional(Text),
    style: Type.Optional(oneOf(['italic'], 'How it is set in running text.')),
    match: Type.Optional(oneOf(['exact'], 'Also a common word: capitals count.')),
    billing: Type.Optional(oneOf(['full'], 'Always in full.')),
    level: Id,
    embargo: Type.Optional(Embargoes),
    publicName: Type.Optional(Text),
    except: Type.Optional(
      Type.Array(Text, { description: 'Phrases in which the form is innocent.' }),
    ),
  },
  'A name and everything that must be right about it.',
);

export const Secret = shape(
  {
    id: Id,
    level: Id,
    embargo: Type.Optional(Embargoes),
    says: Text,
    allOf: Type.Array(Type.Array(Text, { minItems: 1 }), { minItems: 1 }),
    within: Type.Optional(oneOf(['sentence', 'card'], 'How near the words must stand.')),
  },
  'A fact that is told by a combination of words.',
);

/** The places in which a performer can be named. */
export const NAMING_PLACES = [
  'signers',
  'credits',
  'name',
  'bio',
  'facts',
  'texts',
  'alt',
  'sales',
] as const;

export const NamesFile = shape(
  {
    format: Type.Optional(Format),
    names: Type.Array(Name),
    secrets: Type.Optional(Type.Array(Secret)),
    words: Type.Optional(
      Type.Array(Text, { description: 'Words of this world that spelling takes as right.' }),
    ),
    performers: Type.Optional(
      Type.Array(oneOf([...NAMING_PLACES], 'A place in which performers may be named.'), {
        description: 'Where performers may be named; anywhere, if it is not said.',
      }),
    ),
  },
  'Names and secrets of the property.',
);
export type NamesFile = Static<typeof NamesFile>;
