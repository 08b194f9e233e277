import type { PacksKind } from '../../../schema/index.js';
import type { Form, Kind, PressSheets, Printed } from '../../packs/index.js';
import { exact } from './exact.js';

type Sheets = NonNullable<PacksKind['sheets']>;
type Group = Sheets['forms'][number]['groups'][number];

/** The press sheets of a kind; null if its plan says none, or not enough of it is decided. */
export function sheetsOf(
  sheets: PressSheets | null,
  { sheet, cards }: Pick<Kind, 'sheet' | 'cards'>,
): PacksKind['sheets'] {
  if (sheets === null || sheet === undefined) return null;
  const labels = new Map(cards.map(({ id, label }) => [id, label]));
  const labelOf = (id: string): string => labels.get(id) ?? id;
  return {
    columns: sheet.columns,
    rows: sheet.rows,
    up: sheets.up,
    sheets: sheets.sheets,
    forms: sheets.forms.map((form) => formOf(form, labelOf)),
  };
}

function formOf(
  { subjects, blank, needed, sheets }: Form,
  labelOf: (id: string) => string,
): Sheets['forms'][number] {
  return {
    cards: subjects.length,
    blank,
    needed,
    sheets,
    groups: groupsOf(subjects, labelOf),
    printed: subjects.map(({ id, times, double }) => ({ label: labelOf(id), times, double })),
  };
}

/** Cards that stand on a sheet as often and come out alike, in the order of the first of each. */
function groupsOf(subjects: readonly Printed[], labelOf: (id: string) => string): Group[] {
  const groups = new Map<string, Group>();
  for (const { id, times, double, copies, over } of subjects) {
    const key = `${String(times)} ${String(double)} ${exact(over)}`;
    const group = groups.get(key);
    const alike = group?.labels ?? [];
    groups.set(key, {
      cards: alike.length + 1,
      labels: [...alike, labelOf(id)],
      times,
      double,
      copies,
      over: exact(over),
    });
  }
  return [...groups.values()];
}
