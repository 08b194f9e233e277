import type { CardFront } from '../../../schema/index.js';
import { readCell, writeCell, type CellReading, type CellValue } from './cell-forms.js';
import {
  BIO,
  COLUMNS,
  IDENTITY,
  SUBSET,
  columnOf,
  factColumn,
  textColumn,
  type Column,
  type SheetCard,
} from './columns.js';

/**
 * The cells of a card by heading, those alone that are not empty. Nothing is lost: `readRow` gives
 * its keys again, `readBio` its body. (Without a single fact, `facts: {}` is as if it were not there.)
 */
export function rowOfCard({ subset, id, front, body }: SheetCard): ReadonlyMap<string, string> {
  const names = Object.keys(front.facts ?? {}).map(factColumn);
  const zones = Object.keys(front.texts ?? {}).map(textColumn);
  const cells = [...COLUMNS, ...names, ...zones].flatMap(
    ({ heading, path }): [string, string][] => {
      const value = valueAt(front, path);
      return value === undefined ? [] : [[heading, writeCell(value)]];
    },
  );
  const bio = bioCell(front.bio === 'none', bodyForm(body));
  return new Map([
    [IDENTITY, `${subset}/${id}`],
    [SUBSET, subset],
    ...cells,
    ...(bio === '' ? [] : [[BIO, bio] as const]),
  ]);
}

/** Where a cell says something, and what: the value of a key, or why it cannot be read. */
export interface ReadCell {
  readonly column: Column;
  readonly reading: CellReading;
}

/** What the cells of a row say of the front matter; empty cells and headings that are not ours are left out. */
export function readRow(row: ReadonlyMap<string, string>): readonly ReadCell[] {
  return [...row].flatMap(([heading, text]): ReadCell[] => {
    const column = columnOf(heading);
    if (!column || text === '') return [];
    return [{ column, reading: readCell(text, column.form) }];
  });
}

/**
 * A body as a sheet carries it: its line ends are LF, and no empty lines stand around it. Neither
 * says anything in Markdown.
 */
export function bodyForm(body: string): string {
  const lines = body.replace(/\r\n?/g, '\n').split('\n');
  const isFull = (line: string): boolean => line.trim() !== '';
  return lines.slice(lines.findIndex(isFull) >>> 0, lines.findLastIndex(isFull) + 1).join('\n');
}

/** A first line that would be read as the word `none`, or as that line with a backslash before it. */
const LIKE_NONE = /^\\*[^\S\n]*none[^\S\n]*(?=\n|$)/;

/**
 * The cell of a bio: the body as it stands in the file; `none` on its first line is `bio: none`. A
 * body that itself begins with that line has a backslash before it.
 */
export function bioCell(none: boolean, body: string): string {
  const text = LIKE_NONE.test(body) ? `\\${body}` : body;
  if (!none) return text;
  return text === '' ? 'none' : `none\n${text}`;
}

/** What a cell of a bio says: the reverse of `bioCell`. */
export function readBio(cell: string): { readonly none: boolean; readonly body: string } {
  const text = bodyForm(cell);
  const [first = '', ...rest] = text.split('\n');
  const none = first.trim() === 'none';
  const body = none ? rest.join('\n') : text;
  return { none, body: LIKE_NONE.test(body) && body.startsWith('\\') ? body.slice(1) : body };
}

/** The value of a key, or of a key within it. */
function valueAt(front: CardFront, path: readonly string[]): CellValue | undefined {
  const found = path.reduce<unknown>(
    (value, key) => (isNamed(value) && Object.hasOwn(value, key) ? value[key] : undefined),
    front,
  );
  if (typeof found === 'string' || typeof found === 'number') return found;
  if (Array.isArray(found)) return listOf(found);
  return isNamed(found) ? mapOf(found) : undefined;
}

function listOf(items: readonly unknown[]): CellValue {
  const texts = items.filter((item) => typeof item === 'string');
  return texts.length > 0 ? texts : items.filter(isNamed).map(mapOf);
}

function mapOf(value: Named): Readonly<Record<string, string>> {
  const pairs = Object.entries(value).flatMap(([key, text]): [string, string][] =>
    typeof text === 'string' ? [[key, text]] : [],
  );
  return Object.fromEntries(pairs);
}

type Named = Readonly<Record<string, unknown>>;

function isNamed(value: unknown): value is Named {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
