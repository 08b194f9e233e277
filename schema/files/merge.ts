import { Type } from 'typebox';
import { shape } from '../common.js';

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
        'What fills it: `back` is the layout’s id, `art` a path below the content folder, `level` a label.',
    }),
  },
  'A column: its heading and the field that fills it.',
);

export const Merge = shape(
  {
    columns: Type.Array(MergeColumn, {
      minItems: 1,
      title: 'a list of { column, from }',
      description: 'The columns from left to right, each with what fills it.',
    }),
    paragraph: Type.Optional(
      Type.String({
        pattern: '^[^\\t\\r\\n]+$',
        maxLength: 16,
        title: 'what stands between two paragraphs, without tab or line end',
        description:
          'What stands between two paragraphs of a cell, since a row is one line; left out, a space.',
      }),
    ),
  },
  'The columns of `export --merge` for the house. Nobody else is told of them.',
);
export type MergeField = (typeof MERGE_FIELDS)[number];
