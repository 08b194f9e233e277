import type { TSchema } from 'typebox';

import * as schemas from './index.js';

const DIALECT = 'https://json-schema.org/draft/2020-12/schema';

/** Every file of `content/` and every JSON output, by the name of its JSON Schema. */
const SCHEMAS: Readonly<Record<string, TSchema>> = {
  property: schemas.PropertyFile,
  names: schemas.NamesFile,
  people: schemas.PeopleFile,
  back: schemas.BackFile,
  plan: schemas.PlanFile,
  card: schemas.CardFront,
  sales: schemas.SalesFront,
  roster: schemas.RosterFile,
  corrections: schemas.CorrectionsFile,
  'ledger-entry': schemas.LedgerEntry,
  'packet-record': schemas.PacketRecord,
  'approved-text': schemas.ApprovedText,
  'release-record': schemas.ReleaseRecord,
  'rehearsal-record': schemas.RehearsalRecord,
  'check-report': schemas.CheckReport,
  'claims-report': schemas.ClaimsReport,
  'discreet-report': schemas.DiscreetReport,
  'audit-report': schemas.AuditReport,
  'discreet-audit': schemas.DiscreetAudit,
  'public-data': schemas.PublicData,
  'public-checklist': schemas.PublicChecklist,
  'public-release': schemas.PublicRelease,
  'status-sheet': schemas.StatusSheet,
  'reveals-report': schemas.RevealsReport,
  'import-mapping': schemas.MappingFile,
  'import-report': schemas.ImportReport,
  'packs-report': schemas.PacksReport,
  'packs-public': schemas.PacksPublic,
};

/** The JSON Schema files of `schema/json`: file name to text. */
export function jsonSchemas(): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(SCHEMAS).map(([name, schema]) => {
      const file = `${name}.schema.json`;
      const text = JSON.stringify({ $schema: DIALECT, $id: file, ...schema }, null, 2);
      return [file, `${text}\n`];
    }),
  );
}
