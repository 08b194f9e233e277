import { Type, type Static } from 'typebox';
import { shape } from '../common.js';

const WholeOrNone = Type.Union([Type.Integer({ minimum: 0 }), Type.Null()]);

/** Something held that stands in a finished output. */
export const AuditEntry = shape(
  {
    file: Type.String({ description: 'Relative to the folder, with /.' }),
    inside: Type.Array(Type.String(), {
      description: 'The way into the file: entries of archives, chunks of pictures, pages.',
    }),
    line: WholeOrNone,
    column: Type.Union([Type.Integer({ minimum: 0 }), Type.Null()], {
      description: 'UTF-16 units from 1; null, as the line, where there are no lines.',
    }),
    byte: Type.Union([Type.Integer({ minimum: 0 }), Type.Null()], {
      description: 'Bytes from 0, where there are no lines; null if it is no place in particular.',
    }),
    card: Type.Union([Type.String(), Type.Null()], { description: 'Set, subset and id.' }),
    from: Type.String({ description: 'What it is, or why something could not be opened.' }),
    words: Type.String({ description: 'The whole of what is held.' }),
  },
  'Something held, and where it stands.',
);
export type AuditEntry = Static<typeof AuditEntry>;

export const AuditReport = shape(
  {
    ok: Type.Boolean(),
    files: Type.Integer({ minimum: 0, description: 'Files that were searched.' }),
    findings: Type.Array(AuditEntry),
  },
  'What `audit --format json` prints.',
);
export type AuditReport = Static<typeof AuditReport>;

/** What `audit --discreet --format json` prints: no words, and no names of files. */
export const DiscreetAudit = shape(
  {
    ok: Type.Boolean(),
    rest: Type.Union([Type.String(), Type.Null()], {
      description: 'One fixed sentence if anything was found.',
    }),
  },
  'What `audit --discreet --format json` prints.',
);
export type DiscreetAudit = Static<typeof DiscreetAudit>;
