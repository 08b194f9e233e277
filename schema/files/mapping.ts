import { Type, type Static } from 'typebox';
import { Counting, Format, Id, Text, said, shape } from '../common.js';

const MappedColumn = shape(
  {
    heading: said(
      Text,
      'The heading as it stands in the file; small or capital letters are the same.',
    ),
    column: Type.Optional(
      Type.String({
        pattern: '^[A-Z]{1,3}$',
        title: 'the letters of a column, such as F',
        description: 'Which of several columns with this heading.',
      }),
    ),
    key: Type.Optional(
      Type.String({
        minLength: 1,
        title: 'identity, subset, bio, cut or a key of a card, such as number or image.alt',
        description:
          'What its cells are: a key of the card, facts.NAME, texts.ZONE, identity, subset, bio or cut.',
      }),
    ),
    ignore: Type.Optional(Type.Boolean({ description: 'Whether nothing of it is read.' })),
    fillDown: Type.Optional(
      Type.Boolean({
        description: 'Whether an empty cell means what stands above it, as in merged cells.',
      }),
    ),
    values: Type.Optional(
      Type.Record(Text, Type.String(), {
        additionalProperties: false,
        description: 'Words of the cells and what is meant; an empty text means nothing at all.',
      }),
    ),
  },
  'A column of a spreadsheet.',
);

const MappedSheet = shape(
  {
    name: Type.Optional(
      said(Text, 'The name of the sheet; left out, this goes for every sheet that shows.'),
    ),
    header: Type.Optional(
      said(
        Counting,
        'The row of the headings, from 1; left out, it is looked for in the first 50.',
      ),
    ),
    subset: Type.Optional(said(Id, 'The subset of its rows, where they do not say their own.')),
  },
  'A sheet: its name, the row in which its headings stand, the subset that its rows are of.',
);

/** The file of `import --mapping`: which column of a spreadsheet is which key of a card. */
export const MappingFile = shape(
  {
    format: Type.Optional(Format),
    sheets: Type.Optional(
      Type.Array(MappedSheet, {
        minItems: 1,
        description: 'The sheets to read; without it, all that are not hidden.',
      }),
    ),
    columns: Type.Array(MappedColumn, {
      description: 'What columns stand for, by their headings.',
    }),
    constants: Type.Optional(
      Type.Record(Text, Text, {
        additionalProperties: false,
        description: 'Keys that have the same value in every row that does not say its own.',
      }),
    ),
  },
  'How a spreadsheet is read.',
);
export type MappingFile = Static<typeof MappingFile>;
export type MappedColumn = Static<typeof MappedColumn>;
export type MappedSheet = Static<typeof MappedSheet>;
