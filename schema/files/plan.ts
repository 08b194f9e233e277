import { Type, type Static } from 'typebox';
import {
  Accepted,
  ContentPath,
  Counting,
  Embargoes,
  Format,
  Id,
  Instant,
  InstantOrUnset,
  PlainDate,
  Scene,
  Text,
  Whole,
  oneOf,
  shape,
} from '../common.js';
import { Product, Redemption, Reserve, Sheet } from './packed.js';

const Found = oneOf(['pack', 'box', 'redemption', 'event'], 'How a collector comes by it.');

export const NumberRange = shape(
  {
    prefix: Type.Optional(Type.String({ maxLength: 12, title: 'a prefix such as LC-' })),
    from: Whole,
    to: Whole,
  },
  'Numbers that run without a gap.',
);

export const NumberCodes = shape(
  { codes: Type.Array(Text, { minItems: 1, uniqueItems: true }) },
  'Numbers given one by one.',
);

export const Subset = shape(
  {
    id: Id,
    title: Text,
    group: Id,
    numbers: Type.Union([NumberRange, NumberCodes, Type.Literal('none', { title: 'none' })], {
      title: '{ from, to } with a prefix or without, { codes }, or none',
    }),
    back: Type.Optional(Id),
    bio: Type.Optional(
      Type.Union(
        [
          Type.Literal('none', { title: 'none' }),
          shape(
            {
              words: Type.Optional(
                shape(
                  { min: Type.Optional(Whole), max: Type.Optional(Counting) },
                  'Fewest and most words.',
                ),
              ),
              characters: Type.Optional(shape({ max: Counting }, 'Most characters.')),
            },
            'Bounds for a bio.',
          ),
        ],
        { title: 'none, or { words: { min, max } }' },
      ),
    ),
    facts: Type.Optional(Type.Array(Text, { description: 'Names of the facts its cards carry.' })),
    order: Type.Optional(oneOf(['story'], 'Its cards follow the order of the story.')),
    coverage: Type.Optional(shape({ from: Scene, to: Scene }, 'The scenes that its cards tell.')),
    found: Type.Optional(Found),
    spoiler: Type.Optional(Id),
    embargo: Type.Optional(Embargoes),
    ships: Type.Optional(InstantOrUnset),
    roster: Type.Optional(ContentPath),
    carries: Type.Optional(
      oneOf(['autograph', 'relic', 'sketch'], 'What its cards carry, of which they must say so.'),
    ),
    statement: Type.Optional(Text),
    copies: Type.Optional(
      Type.Integer({
        minimum: 1,
        maximum: 1_000_000_000,
        title: 'a whole number above 0',
        description: 'Copies that are made of each card. Nobody outside is told.',
      }),
    ),
    places: Type.Optional(
      Type.Integer({
        minimum: 1,
        maximum: 20,
        title: 'a whole number from 1 to 20',
        description: 'How many places in a pack one of its cards takes, if it is thick.',
      }),
    ),
    reserve: Type.Optional(Reserve),
    sheet: Type.Optional(Sheet),
  },
  'A subset: a folder of cards.',
);

export const NamedTotal = shape(
  {
    title: Type.Optional(Text),
    of: Type.Optional(Type.Array(Id, { minItems: 1 })),
    is: Whole,
  },
  'A total over groups or subsets.',
);

export const Parallel = shape(
  {
    id: Id,
    title: Text,
    of: Type.Array(Id, { minItems: 1 }),
    run: Type.Optional(Counting),
    copies: Type.Optional(Counting),
    tell: Type.Optional(Text),
    found: Type.Optional(
      oneOf(['pack', 'box', 'redemption', 'event', 'retail', 'hobby'], 'Where.'),
    ),
    places: Type.Optional(Counting),
    reserve: Type.Optional(Reserve),
    spoiler: Type.Optional(Id),
    embargo: Type.Optional(Embargoes),
  },
  'A parallel: the same cards in another finish. `run` is public, `copies` is not.',
);

/** What a column of a merge file can hold; besides these, `facts.<Name>` and `texts.<name>`. */
export const MERGE_FIELDS = [
  'number',
  'name',
  'bio',
  'subset',
  'set',
  'group',
  'level',
  'credits',
  'signers',
  'legal',
  'back',
  'art',
] as const;

export const MergeColumn = shape(
  {
    column: Type.String({
      pattern: '^@?[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]*$',
      maxLength: 64,
      title: 'a heading of letters, digits, spaces and . _ -, such as Name or @Art',
      description: 'The heading. An @ may stand before it, as some programs want for pictures.',
    }),
    from: Type.String({
      pattern: `^(${MERGE_FIELDS.join('|')}|facts\\.[^\\t\\r\\n]+|texts\\.[a-z0-9]+(-[a-z0-9]+)*)$`,
      title: `one of ${MERGE_FIELDS.join(', ')}, facts.<Name> or texts.<name>`,
      description:
        'What fills it: `back` is the id of the layout, `art` the path of the picture below the content folder, `level` the label of the card’s level.',
    }),
  },
  'A column: its heading and the field that fills it.',
);

export const Merge = shape(
  {
    columns: Type.Array(MergeColumn, { minItems: 1, title: 'a list of { column, from }' }),
    paragraph: Type.Optional(
      Type.String({
        pattern: '^[^\\t\\r\\n]+$',
        maxLength: 16,
        title: 'what stands between two paragraphs, without tab or line end',
        description:
          'What stands between two paragraphs of a cell, since a row is one line; a space, if it is not said. A line break is a space.',
      }),
    ),
  },
  'The columns of `export --merge` for the house. Nobody else is told of them.',
);

/** How a set is written. What is not said is not asked for. */
export const HouseStyle = shape(
  {
    english: Type.Optional(oneOf(['american', 'british'], 'Whose spelling; American by default.')),
    quotes: Type.Optional(
      oneOf(['curly', 'straight'], 'The shape of quotation marks and apostrophes.'),
    ),
    speech: Type.Optional(oneOf(['single', 'double'], 'The marks that stand around what is said.')),
    dash: Type.Optional(
      oneOf(['spaced-en', 'closed-em', 'spaced-em'], 'The dash between parts of a sentence.'),
    ),
    ellipsis: Type.Optional(oneOf(['sign', 'dots'], 'One sign, or three full stops.')),
    numbers: Type.Optional(
      shape(
        {
          words: Type.Integer({ minimum: 0, maximum: 1000, title: 'a whole number to 1000' }),
        },
        'Whole numbers up to this are written in words, greater ones in figures.',
      ),
    ),
    units: Type.Optional(
      oneOf(['spaced', 'closed'], 'Whether a space stands between a figure and its unit.'),
    ),
  },
  'The house style of its copy.',
);
export type HouseStyle = Static<typeof HouseStyle>;

export const PlanFile = shape(
  {
    format: Type.Optional(Format),
    id: Id,
    title: Text,
    short: Type.Optional(Text),
    spoiler: Id,
    embargo: Type.Optional(Embargoes),
    stage: oneOf(['planning', 'writing', 'locked'], 'How far the set is.'),
    street: Type.Optional(
      Type.Union(
        [
          Instant,
          Type.Record(Type.String({ pattern: '^[a-z]{2,12}$' }), Instant, {
            minProperties: 1,
            additionalProperties: false,
          }),
        ],
        { title: 'an instant, or one for each region' },
      ),
    ),
    dates: Type.Optional(
      shape(
        {
          solicit: Type.Optional(PlainDate),
          copyLock: Type.Optional(PlainDate),
          toPrinter: Type.Optional(PlainDate),
          ships: Type.Optional(PlainDate),
        },
        'Dates that the work is planned by.',
      ),
    ),
    subsets: Type.Array(Subset, { minItems: 1, title: 'a list of subsets' }),
    totals: Type.Optional(
      Type.Record(
        Type.String({ pattern: '^[a-z0-9]+(-[a-z0-9]+)*$' }),
        Type.Union([Whole, NamedTotal], { title: 'a whole number, or { title, of, is }' }),
        {
          description: 'What the set announces, checked against its cards.',
          additionalProperties: false,
        },
      ),
    ),
    parallels: Type.Optional(Type.Array(Parallel)),
    products: Type.Optional(Type.Array(Product)),
    redemptions: Type.Optional(Type.Array(Redemption)),
    merge: Type.Optional(Merge),
    readingAge: Type.Optional(
      Type.Integer({
        minimum: 5,
        maximum: 18,
        title: 'an age from 5 to 18',
        description: 'The age in years from which a child can read its copy.',
      }),
    ),
    style: Type.Optional(HouseStyle),
    accepted: Type.Optional(Accepted),
  },
  'The plan of a set: subsets, counts, dates, parallels.',
);
export type PlanFile = Static<typeof PlanFile>;
export type Subset = Static<typeof Subset>;
export type Parallel = Static<typeof Parallel>;
export type MergeField = (typeof MERGE_FIELDS)[number];
