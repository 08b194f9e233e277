import { Type, type Static } from 'typebox';
import { Embargoes, Format, Id, Text, oneOf, said, shape } from '../common.js';

export const Alias = Type.Union(
  [
    Text,
    shape(
      {
        form: said(Text, 'The form, as it is printed.'),
        level: Type.Optional(
          said(Id, 'The level that it tells of, if it is later than its name’s.'),
        ),
        embargo: Type.Optional(Embargoes),
      },
      'A form that opens later than the name.',
    ),
  ],
  { title: 'another form of the name, or { form, level }' },
);

export const Name = shape(
  {
    name: said(Text, 'The name in full, as it is printed.'),
    kind: oneOf(
      ['character', 'performer', 'maker', 'craft', 'place', 'thing', 'group', 'title'],
      'What bears the name.',
    ),
    aliases: Type.Optional(
      Type.Array(Alias, {
        description: 'Other forms that are right; one that opens later states a level of its own.',
      }),
    ),
    avoid: Type.Optional(
      Type.Array(
        shape(
          {
            form: said(Text, 'The form that check is to find.'),
            use: said(Text, 'The form to write instead.'),
            why: Type.Optional(
              said(
                Text,
                'Why it was given up, such as: retitled in script 5. Never leaves the house.',
              ),
            ),
          },
          'A form no longer to be used.',
        ),
        { description: 'Forms that are no longer used, with what to write instead.' },
      ),
    ),
    say: Type.Optional(
      said(Text, 'How it is said, such as oh-DAH-liss THRAYN: for briefs, and to count syllables.'),
    ),
    style: Type.Optional(
      oneOf(['italic'], 'How it is set in running text; left out, like the words around it.'),
    ),
    match: Type.Optional(
      oneOf(['exact'], 'For a name that is also a common word: capitals count.'),
    ),
    billing: Type.Optional(oneOf(['full'], 'For a name that must always stand in full.')),
    level: said(Id, 'The level that the name tells of; no text that opens earlier may have it.'),
    embargo: Type.Optional(Embargoes),
    publicName: Type.Optional(
      said(
        Text,
        'What cards may say for it while it is held; check offers it for their publicName.',
      ),
    ),
    except: Type.Optional(
      Type.Array(Text, { description: 'Phrases in which the form is innocent.' }),
    ),
  },
  'A name and everything that must be right about it.',
);

export const Secret = shape(
  {
    id: said(Id, 'A short id, by which findings name it. Never leaves the house.'),
    level: said(Id, 'The level from which it may be told.'),
    embargo: Type.Optional(Embargoes),
    says: said(
      Text,
      'The fact in plain words, for whoever reads a finding. Never leaves the house.',
    ),
    allOf: Type.Array(Type.Array(Text, { minItems: 1 }), {
      minItems: 1,
      description: 'Groups of names or words: one of every group, and the secret is told.',
    }),
    within: Type.Optional(
      oneOf(
        ['sentence', 'card'],
        'How near the words must stand; in one sentence, if it is not said.',
      ),
    ),
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
    names: Type.Array(Name, { description: 'Everybody and everything whose name must be right.' }),
    secrets: Type.Optional(
      Type.Array(Secret, {
        description: 'What a combination of words would tell. Never leaves the house.',
      }),
    ),
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
