import { readBio, readCell, type CellValue, type Column } from '../out/sheets/index.js';
import { cellWords, type WordsWanted } from './cell-words.js';
import { lettersOf, mergeKey, type Cell, type Grid, type GridRow } from './grid.js';
import type { Layout, ReadColumn } from './layout.js';
import { keyOf, targetOfKey } from './targets.js';
import { folded } from './tidy.js';

/** Where a row stands. */
export interface RowPlace {
  readonly sheet: string;
  readonly row: number;
}

/** What a cell says of a key. */
export interface Entry {
  readonly key: string;
  readonly column: Column;
  readonly value: CellValue;
  /** The words of the cell, and the same as they stand in it. */
  readonly text: string;
  readonly raw: string;
  /** Why it must not be written into a card that does not say it yet. */
  readonly doubt: string | null;
}

/** What a cell says of the copy, without stray spaces and as it stands in it. */
export interface BioEntry {
  readonly none: boolean;
  readonly body: string;
  readonly raw: { readonly none: boolean; readonly body: string };
  readonly doubt: string | null;
}

/** What a row says of a card. */
export interface CardRow extends RowPlace {
  readonly identity: string | null;
  /** As it is written. */
  readonly subset: string | null;
  /** It shows less than the card. */
  readonly cut: boolean;
  readonly entries: ReadonlyMap<string, Entry>;
  readonly bio: BioEntry | null;
}

export interface Rejected extends RowPlace {
  readonly reasons: readonly string[];
}

export interface Skipped extends RowPlace {
  readonly why: string;
}

/** The rows of a sheet, sorted out. */
export interface RowsReading {
  readonly rows: readonly CardRow[];
  readonly rejected: readonly Rejected[];
  readonly skipped: readonly Skipped[];
  /** Rows below the headings that hold something. */
  readonly count: number;
}

/** What holds for all rows of a sheet. */
export interface RowsGround {
  readonly set: string;
  /** The subset of rows that do not say their own. */
  readonly subset: string | null;
  readonly constants: Readonly<Record<string, string>>;
  readonly isCut: boolean;
}

/** Reads the rows below the headings: each is a card, rejected with every reason, or skipped. */
export function readRows(grid: Grid, layout: Layout, ground: RowsGround): RowsReading {
  const rows: CardRow[] = [];
  const rejected: Rejected[] = [];
  const skipped: Skipped[] = [];
  const above = new Map<number, Cell>();
  let count = 0;
  for (const row of grid.rows) {
    if (row.number <= layout.header || !hasWords(row)) continue;
    count += 1;
    const place = { sheet: grid.name, row: row.number };
    const why = noCard(row, layout);
    if (why !== null) {
      skipped.push({ ...place, why });
      continue;
    }
    const reading = readRow(filledDown(row, layout, above), grid, layout, ground);
    if (reading.card.cut) {
      skipped.push({ ...place, why: 'marked as cut: it shows less than its card' });
    } else if (reading.otherSet !== null) {
      skipped.push({ ...place, why: `a row of the set ${reading.otherSet}` });
    } else if (reading.reasons.length > 0) rejected.push({ ...place, reasons: reading.reasons });
    else rows.push({ ...place, ...reading.card });
  }
  return { rows, rejected, skipped, count };
}

function hasWords({ cells }: GridRow): boolean {
  return [...cells.values()].some(({ kind, text }) => kind !== 'text' || folded(text) !== '');
}

const TOTAL = /^(?:grand |sub-?)?totals?(?: (?:cards|base|set|inserts))?$/;

/** Why a row is none of a card: the headings once more, or what the rows above add up to. */
function noCard({ cells }: GridRow, { columns }: Layout): string | null {
  const headings = columns.filter(({ at, heading }) => {
    const cell = cells.get(at);
    return cell !== undefined && folded(cell.text) === folded(heading);
  });
  if (headings.length > 1 && headings.length * 2 > columns.length) return 'the headings again';
  const all = [...cells.values()];
  const words = all.filter(
    ({ kind, text, isResult }) => kind === 'text' && isResult !== true && folded(text) !== '',
  );
  const isTotal = words.some(({ text }) => TOTAL.test(folded(text)));
  const figures = all.filter(({ text }) => /^\d{1,9}$/.test(folded(text))).length;
  const others = words.filter(({ text }) => !/^\d{1,9}$/.test(folded(text))).length;
  return isTotal && others === 1 && (figures > 0 || all.length === 1) ? 'a row of totals' : null;
}

/** The row with what stands above it, in columns that are filled down. */
function filledDown(row: GridRow, { columns }: Layout, above: Map<number, Cell>): GridRow {
  const filled = columns.filter(({ fillDown }) => fillDown);
  if (filled.length === 0) return row;
  const cells = new Map(row.cells);
  for (const { at } of filled) {
    const cell = cells.get(at);
    const before = above.get(at);
    if (cell && folded(cell.text) !== '') above.set(at, cell);
    else if (before) cells.set(at, before);
  }
  return { number: row.number, cells };
}

/** Keys whose words may stand on several lines. */
const LINES: ReadonlySet<string> = new Set(['remark', 'why', 'image.alt']);

function wantedOf({ target, values }: ReadColumn): WordsWanted {
  if (target.kind !== 'key') return { form: 'text', lines: target.kind === 'bio', values };
  const { form, path } = target.column;
  const isText = path[0] === 'facts' || path[0] === 'texts';
  return { form, lines: form !== 'text' || isText || LINES.has(keyOf(target.column)), values };
}

interface RowReading {
  readonly card: Omit<CardRow, keyof RowPlace>;
  readonly reasons: readonly string[];
  readonly otherSet: string | null;
}

function readRow(row: GridRow, grid: Grid, layout: Layout, ground: RowsGround): RowReading {
  const reasons: string[] = [];
  const entries = new Map<string, Entry>();
  const said = new Map<string, string>();
  let bio: CardRow['bio'] = null;
  for (const column of layout.columns) {
    const cell = row.cells.get(column.at);
    if (!cell) continue;
    const address = `${column.heading} (${lettersOf(column.at)}${String(row.number)})`;
    const words = cellWords(cell, wantedOf(column));
    if (!words.ok) {
      reasons.push(`${address}: ${words.why}`);
      continue;
    }
    const { text, raw } = words;
    const doubt = words.doubt === null ? null : `${address}: ${words.doubt}`;
    if (text === '') continue;
    if (column.target.kind === 'bio') bio = { ...readBio(text), raw: readBio(raw), doubt };
    else if (column.target.kind !== 'key') {
      said.set(column.target.kind, text);
      if (doubt !== null) reasons.push(doubt);
    } else {
      const entry = entryOf(column.target.column, { text, raw, doubt });
      if (typeof entry === 'string') reasons.push(`${address}: ${entry}`);
      else entries.set(entry.key, entry);
    }
  }
  const subset = said.get('subset') ?? constantOf(ground, 'subset') ?? ground.subset;
  const missing = subset === null && !said.has('identity') ? mergedSubset(row, grid, layout) : null;
  if (missing !== null) reasons.push(missing);
  for (const [key, text] of Object.entries(ground.constants)) {
    const target = targetOfKey(key);
    if (target?.kind !== 'key' || entries.has(key)) continue;
    const entry = entryOf(target.column, { text, raw: text, doubt: null });
    if (typeof entry === 'string') reasons.push(`\`constants\`, ${key}: ${entry}`);
    else entries.set(key, entry);
  }
  const set = said.get('set');
  return {
    card: {
      identity: said.get('identity') ?? null,
      subset,
      cut: ground.isCut || isCut(said.get('cut')),
      entries,
      bio,
    },
    reasons,
    otherSet: set === undefined || set === ground.set ? null : set,
  };
}

function constantOf({ constants }: RowsGround, key: string): string | undefined {
  return Object.hasOwn(constants, key) ? constants[key] : undefined;
}

/** Anything but a plain no: when in doubt, nothing is changed. */
function isCut(said: string | undefined): boolean {
  return said !== undefined && folded(said) !== 'no';
}

/** Forms of several parts trim these themselves. */
function entryOf(
  column: Column,
  { text, raw, doubt }: Pick<Entry, 'text' | 'raw' | 'doubt'>,
): Entry | string {
  const reading = readCell(column.form === 'text' ? text : raw, column.form);
  if (!reading.ok) return reading.why;
  const key = keyOf(column);
  return { key, column, value: normal(reading.value), text: text.normalize('NFC'), raw, doubt };
}

/** Values are read in NFC: one letter has one spelling. Only now, since a Greek question mark is `;` then. */
function normal(value: CellValue): CellValue {
  if (typeof value === 'number') return value;
  if (typeof value === 'string') return value.normalize('NFC');
  if (!isList(value)) return normalMap(value);
  const texts = value.filter((item) => typeof item === 'string');
  if (texts.length > 0) return texts.map((item) => item.normalize('NFC'));
  return value.filter((item) => typeof item !== 'string').map(normalMap);
}

function isList(
  value: Exclude<CellValue, string | number>,
): value is readonly string[] | readonly Readonly<Record<string, string>>[] {
  return Array.isArray(value);
}

function normalMap(map: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(map).map(([key, text]) => [key.normalize('NFC'), text.normalize('NFC')]),
  );
}

/** A cell that looks filled in, since it is merged with one above. */
function mergedSubset(row: GridRow, grid: Grid, { columns }: Layout): string | null {
  const column = columns.find(({ target }) => target.kind === 'subset');
  const first = column && grid.merged.get(mergeKey(row.number, column.at));
  if (first === undefined) return null;
  return `${column?.heading ?? ''} (${lettersOf(column?.at ?? 1)}${String(row.number)}): the cell is merged with ${first}, which alone has its value: say \`fillDown: true\` for this column in a mapping`;
}
