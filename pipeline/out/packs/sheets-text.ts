import type { PacksKind, PacksSet } from '../../../schema/index.js';
import { counted, grouped, signed } from './say.js';
import { left, right, tableText } from './table.js';

type Sheets = NonNullable<PacksKind['sheets']>;
export type PressForm = Sheets['forms'][number];

/** A form and what it is called. */
export interface NamedForm {
  /** "High Water", or "High Water, form 2 of 3". */
  readonly title: string;
  readonly sheets: Sheets;
  readonly form: PressForm;
}

/** Every form of a set, in the order of its kinds. */
export function formsOf({ kinds }: Pick<PacksSet, 'kinds'>): readonly NamedForm[] {
  return kinds.flatMap(({ title, sheets }) => {
    if (sheets === null) return [];
    const { forms } = sheets;
    return forms.map((form, at) => {
      const which =
        forms.length === 1 ? '' : `, form ${grouped(at + 1)} of ${grouped(forms.length)}`;
      return { title: `${title}${which}`, sheets, form };
    });
  });
}

/** Most cards that are named one by one. */
const MOST = 4;

export function areNamed(labels: readonly string[]): boolean {
  return labels.length > 0 && labels.length <= MOST;
}

/** "46 cards", or a few by what they are called: "LC-1", "1, 2 and 3". */
export function cardsSaid(labels: readonly string[]): string {
  const last = labels.at(-1);
  if (last === undefined || !areNamed(labels)) return counted(labels.length, 'card');
  return labels.length === 1 ? last : `${labels.slice(0, -1).join(', ')} and ${last}`;
}

/** What is printed on press sheets, and how many copies of each card come of them. */
export function sheetsText(set: PacksSet): readonly string[] {
  const forms = formsOf(set);
  if (forms.length === 0) return [];
  return [
    ['Press sheets:', ...formLines(forms).map(indented)].join('\n'),
    [
      'Copies that come of them, if no sheet is spoilt, beside those that are to be made:',
      ...groupLines(forms).map(indented),
    ].join('\n'),
  ];
}

function indented(line: string): string {
  return `  ${line}`;
}

function formLines(forms: readonly NamedForm[]): readonly string[] {
  const columns = [
    left('Form'),
    right('across and down'),
    right('cards'),
    right('blank'),
    right('sheets needed'),
    right('printed'),
  ];
  const rows = forms.map(({ title, sheets, form }) => [
    title,
    `${grouped(sheets.columns)} × ${grouped(sheets.rows)}`,
    grouped(form.cards),
    grouped(form.blank),
    grouped(form.needed),
    grouped(form.sheets),
  ]);
  return tableText(columns, rows);
}

function groupLines(forms: readonly NamedForm[]): readonly string[] {
  const columns = [
    left('Form'),
    left('cards'),
    right('each on a sheet'),
    right('copies of each'),
    right('over or under'),
  ];
  const rows = forms.flatMap(({ title, form }) =>
    form.groups.map(({ labels, times, double, copies, over }, at) => [
      at === 0 ? title : '',
      double ? `${cardsSaid(labels)}, double` : cardsSaid(labels),
      grouped(times),
      grouped(copies),
      signed(over),
    ]),
  );
  return tableText(columns, rows);
}
