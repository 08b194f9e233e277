import type { Finding, ImportChange, ImportReport } from '../../schema/index.js';
import { identityOf } from '../model/index.js';
import type { CardChange, Edit, RowPlace, SheetPlan, TableReading } from '../sheet/index.js';
import type { RowFile } from './import-files.js';
import type { Importing } from './import.js';

/** What was read and would be written, as `--format json` prints it, in the order of the file. */
export function importReport(
  reading: TableReading,
  plan: SheetPlan | null,
  files: readonly RowFile[],
  findings: readonly Finding[],
): Importing {
  const orderOf = placeOrder(reading);
  const inOrder = <T extends RowPlace>(rows: readonly T[]): T[] =>
    [...rows].sort((a, b) => orderOf(a) - orderOf(b) || a.row - b.row);
  const isRefused = reading.refused.length > 0;
  const rejected = inOrder([...reading.rejected, ...(plan?.rejected ?? [])]);
  const names = new Map(files.map((file) => [placeOf(file), file]));
  const report: ImportReport = {
    ok: !isRefused && rejected.length === 0,
    written: false,
    sheets: [...reading.sheets],
    mapping: reading.mapping,
    adds: isRefused
      ? []
      : inOrder(plan?.adds ?? []).map(({ sheet, row, number, edits }) => ({
          sheet,
          row,
          card: names.get(placeOf({ sheet, row }))?.card ?? '',
          file: names.get(placeOf({ sheet, row }))?.file ?? '',
          number,
          values: edits.map(({ key, says }) => ({ key, value: says })),
        })),
    changes: isRefused ? [] : inOrder(plan?.changes ?? []).flatMap(changesOf),
    conflicts: inOrder(plan?.changes ?? []).flatMap((change) =>
      change.conflicts.map((edit) => ({
        ...placed(change, edit),
        stands: edit.stands ?? '',
      })),
    ),
    rejected: rejected.map(({ sheet, row, reasons }) => ({ sheet, row, reasons: [...reasons] })),
    skipped: inOrder(reading.skipped).map(({ sheet, row, why }) => ({
      sheet,
      row,
      why,
    })),
    same: plan?.same ?? 0,
    findings: [...findings],
    refused: [...reading.refused],
  };
  const changes = files.flatMap(({ file, change }) => (change ? [[file, change] as const] : []));
  return { report, files: new Map(isRefused ? [] : changes) };
}

function changesOf(change: CardChange): readonly ImportChange[] {
  return change.edits.map((edit) => ({ ...placed(change, edit), stands: edit.stands }));
}

function placed(
  { sheet, row, card }: CardChange,
  { key, says }: Edit,
): Omit<ImportChange, 'stands'> {
  return { sheet, row, card: identityOf(card), file: card.source.file, key, says };
}

function placeOf({ sheet, row }: RowPlace): string {
  return `${sheet}\n${String(row)}`;
}

function placeOrder({ sheets }: TableReading): (place: RowPlace) => number {
  const order = new Map(sheets.map(({ name }, at) => [name, at]));
  return ({ sheet }) => order.get(sheet) ?? sheets.length;
}
