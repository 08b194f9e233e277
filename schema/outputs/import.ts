import { Type, type Static } from 'typebox';
import { shape } from '../common.js';
import { MappingFile } from '../files/mapping.js';
import { Finding } from './check.js';

const Row = {
  sheet: Type.String(),
  row: Type.Integer({ minimum: 1, description: 'As the spreadsheet counts them.' }),
};

const Place = {
  ...Row,
  card: Type.String({ description: 'Subset and id.' }),
  file: Type.String({ description: 'Relative to the content folder, with /.' }),
};

const Said = { key: Type.String(), value: Type.String({ description: 'As a cell has it.' }) };

export const ImportAdd = shape(
  { ...Place, number: Type.String(), values: Type.Array(shape(Said, 'A key of the new card.')) },
  'A card that is new.',
);

export const ImportChange = shape(
  {
    ...Place,
    key: Type.String(),
    stands: Type.Union([Type.String(), Type.Null()], {
      description: 'What the card says now; null for a key that it does not have.',
    }),
    says: Type.String({ description: 'What the sheet says, and the card will.' }),
  },
  'A key of a card that is given a value.',
);

export const ImportConflict = shape(
  { ...Place, key: Type.String(), stands: Type.String(), says: Type.String() },
  'A key whose value in the card is another one: it is left alone.',
);

export const ImportRejected = shape(
  { ...Row, reasons: Type.Array(Type.String(), { minItems: 1 }) },
  'A row of which nothing is taken.',
);

export const ImportSheet = shape(
  {
    name: Type.String(),
    header: Type.Integer({ minimum: 1 }),
    rows: Type.Integer({ description: 'Rows below the headings that hold something.' }),
    unread: Type.Array(Type.String(), { description: 'Headings that stand for nothing here.' }),
  },
  'A sheet that was read.',
);

/** What `import --format json` prints. */
export const ImportReport = shape(
  {
    ok: Type.Boolean({ description: 'Whether no row is rejected and nothing refused.' }),
    written: Type.Boolean(),
    sheets: Type.Array(ImportSheet),
    mapping: MappingFile,
    adds: Type.Array(ImportAdd),
    changes: Type.Array(ImportChange),
    conflicts: Type.Array(ImportConflict),
    rejected: Type.Array(ImportRejected),
    skipped: Type.Array(
      shape({ ...Row, why: Type.String() }, 'A row that is no card, or shows less than one.'),
    ),
    same: Type.Integer({ description: 'Rows that say what their card says.' }),
    findings: Type.Array(Finding, { description: 'Errors that `check` would find anew.' }),
    refused: Type.Array(Type.String(), { description: 'Why nothing can be written.' }),
  },
  'What `import` reads and would change.',
);
export type ImportReport = Static<typeof ImportReport>;
export type ImportAdd = Static<typeof ImportAdd>;
export type ImportChange = Static<typeof ImportChange>;
export type ImportConflict = Static<typeof ImportConflict>;
export type ImportRejected = Static<typeof ImportRejected>;
export type ImportSheet = Static<typeof ImportSheet>;
