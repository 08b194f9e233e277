import type { View, ViewMerge, ViewSet } from '../../gate/index.js';
import { delimited, neutral, type SheetFormat } from './cells.js';
import { markOf } from './mark.js';
import { fieldText, usualFields, type MergeRow } from './merge-fields.js';

/** A merge file cannot be made as its plan asks; the message says what to change. */
export class MergeError extends Error {
  override readonly name = 'MergeError';
}

export interface MergeOptions {
  /** The id of the one set to take; all, if it is not said. */
  readonly set?: string;
  /** Leave cells that begin like a formula as they are. */
  readonly asTyped?: boolean;
  /** The view is of an instant to come. */
  readonly preview?: boolean;
}

/** A cell that begins like a formula. */
export interface MergeCell {
  /** `high-water/crew/c004`; for the public, who know no identities, set, subset and number. */
  readonly card: string;
  readonly field: string;
}

export interface MergeTable {
  readonly headings: readonly string[];
  /** The cells of each card that is printed, in the order of the checklist. */
  readonly rows: readonly (readonly string[])[];
  /** Cells that have an apostrophe before them, which a page-layout program prints. */
  readonly changed: readonly MergeCell[];
  /** Headings of the plan under which every cell is empty. */
  readonly empty: readonly string[];
  /** Whom it is for: the heading of a last column without cells. Null if anybody may see it. */
  readonly mark: string | null;
}

/**
 * One row a card, for the merge of a page-layout program: all that the view lists but cards that are
 * not issued. The house gets the columns of the plan; whoever sees a cut view gets the usual ones,
 * whose headings are the names of fields that show in it. With several sets a heading is one column,
 * which each set fills from the field that its own plan names.
 *
 * Each cell is one line. A cell that begins with = + - or @ is a formula to a spreadsheet program,
 * which is where such files are looked at first, and running it is the worse harm: it gets an
 * apostrophe (OWASP, CSV Injection). But page layout prints that apostrophe, so every such cell is
 * named in `changed`, and `asTyped` leaves them alone. Headings need none: they cannot begin so but
 * for an @ before a plain word, which is no formula that does anything.
 * @throws MergeError if a plan gives two columns one heading.
 */
export function mergeTable(view: View, options: MergeOptions = {}): MergeTable {
  const sets = view.sets.filter(({ id }) => options.set === undefined || id === options.set);
  const rows = sets.flatMap((set) => rowsOf(view, set));
  const usual = usualFields(rows).map((field) => ({ column: field, from: field }));
  const plans = new Map(sets.map((set) => [set.id, planOf(set, usual)]));
  const headings = [...new Set([...plans.values()].flatMap((plan) => [...plan.fields.keys()]))];
  const changed: MergeCell[] = [];
  const cells = rows.map((row) => {
    const plan = plans.get(row.set.id);
    return headings.map((heading) => {
      const field = plan?.fields.get(heading);
      const text = field === undefined ? '' : oneLine(fieldText(field, row), plan?.paragraph);
      if (field === undefined || options.asTyped === true || neutral(text) === text) return text;
      changed.push({ card: nameOf(row), field });
      return neutral(text);
    });
  });
  const empty = headings.filter((_, at) => cells.every((row) => row[at] === ''));
  return { headings, rows: cells, changed, empty, mark: markOf(view, options.preview === true) };
}

/** The rows as text, headings first. */
export function mergeText({ headings, rows, mark }: MergeTable, format: SheetFormat): string {
  const more = mark === null ? [] : [mark];
  const all = [[...headings, ...more], ...rows.map((row) => [...row, ...more.map(() => '')])];
  return delimited(all, format);
}

function rowsOf({ property }: View, set: ViewSet): readonly MergeRow[] {
  return set.subsets.flatMap((subset) =>
    subset.cards
      .filter((card) => card.state !== 'not issued')
      .map((card) => ({ property, set, subset, card })),
  );
}

/** The field under each heading, and what parts paragraphs. */
function planOf(
  { id, merge }: ViewSet,
  usual: ViewMerge['columns'],
): { readonly fields: ReadonlyMap<string, string>; readonly paragraph: string } {
  const columns = merge?.columns ?? usual;
  const fields = new Map(columns.map(({ column, from }) => [column, from]));
  const twice = columns.find(({ column }, at) =>
    columns.slice(0, at).some((other) => other.column === column),
  );
  if (twice) {
    throw new MergeError(
      `${id}/plan.yaml: two columns of \`merge\` are called ${twice.column}. Give each its own name.`,
    );
  }
  return { fields, paragraph: merge?.paragraph ?? ' ' };
}

const LINE_END = /\r\n|[\n\v\f\r\u0085\u2028\u2029]/;

/** Text on one line, as it prints: an empty line parts paragraphs, any other line end is a space. */
function oneLine(text: string, paragraph = ' '): string {
  const lines = text.split(LINE_END).map((line) => line.replaceAll('\t', ' ').trim());
  return lines
    .map((line, at) => {
      if (line === '') return '';
      const before = lines.slice(0, at);
      if (before.every((other) => other === '')) return line;
      return `${before.at(-1) === '' ? paragraph : ' '}${line}`;
    })
    .join('');
}

function nameOf({ set, subset, card }: MergeRow): string {
  return card.identity === null
    ? `${set.id}, ${subset.title}, ${card.number ?? card.name}`
    : `${set.id}/${card.identity}`;
}
