import { dayOf, type NumberStyle } from './formats.js';
import {
  MOST_CELLS,
  MOST_ROWS,
  columnNumber,
  mergeKey,
  tooMany,
  type Cell,
  type Grid,
  type GridRow,
} from './grid.js';
import { readXml } from './xml.js';

/** What the sheets of a workbook share. */
export interface Shared {
  readonly strings: readonly string[];
  readonly styles: readonly NumberStyle[];
  readonly from1904: boolean;
}

/** Most cells of merged areas that are remembered; more than anybody merges by hand. */
const MOST_MERGED = 100_000;

/** The rows of one sheet (ECMA-376 Part 1, 18.3). */
export function readWorksheet(xml: string, shared: Shared): Pick<Grid, 'rows' | 'merged'> {
  const rows = new Rows();
  const merged = new Map<string, string>();
  let cell: RawCell | null = null;
  let part = '';
  let isSound = false;
  readXml(xml, {
    open: (name, attributes) => {
      if (name === 'row') rows.open(attributes.get('r'));
      else if (name === 'c') cell = rawCell(rows.place(attributes.get('r')), attributes);
      else if (name === 'mergeCell') addMerged(merged, attributes.get('ref') ?? '');
      else if (name === 'rPh') isSound = true;
      else if (cell && name === 'f') cell.isFormula = true;
      if (name === 'v' || name === 't') part = name;
    },
    close: (name) => {
      if (name === 'v' || name === 't') part = '';
      if (name === 'rPh') isSound = false;
      if (name === 'c' && cell) {
        rows.add(cell.place, cellOf(cell, shared));
        cell = null;
      }
    },
    text: (text) => {
      if (!cell || isSound) return;
      if (part === 'v') cell.value += text;
      if (part === 't') cell.words += text;
    },
  });
  return { rows: rows.all(), merged };
}

interface Spot {
  readonly row: number;
  readonly column: number;
}

interface RawCell {
  readonly place: Spot;
  readonly type: string;
  readonly style: number;
  value: string;
  words: string;
  isFormula: boolean;
}

function rawCell(place: Spot, attributes: ReadonlyMap<string, string>): RawCell {
  return {
    place,
    type: attributes.get('t') ?? 'n',
    style: Number(attributes.get('s') ?? '0'),
    value: '',
    words: '',
    isFormula: false,
  };
}

function cellOf(raw: RawCell, shared: Shared): Cell | null {
  const { type, value, words, isFormula } = raw;
  if (isFormula && value === '' && type !== 'str') return { kind: 'formula', text: '' };
  const result = isFormula ? ({ isResult: true } as const) : {};
  if (type === 's') return textCell(shared.strings[Number(value)] ?? '', result);
  if (type === 'inlineStr') return textCell(unescaped(words), result);
  if (type === 'str') return textCell(unescaped(value), result);
  if (value === '') return null;
  if (type === 'e') return { kind: 'error', text: value };
  if (type === 'b') return { kind: 'truth', text: value === '1' ? 'TRUE' : 'FALSE', ...result };
  if (type === 'd') return { kind: 'date', text: value.slice(0, 10), ...result };
  const style = shared.styles[raw.style];
  if (style?.isDate === true) {
    return { kind: 'date', text: dayOf(value, shared.from1904), ...result };
  }
  return { kind: 'number', text: plainDigits(value), format: style?.code ?? 'General', ...result };
}

function textCell(text: string, result: { readonly isResult?: true }): Cell | null {
  return text === '' ? null : { kind: 'text', text, ...result };
}

/** Some programs write 17 as 17.0 or 1.7E1. */
function plainDigits(value: string): string {
  const number = Number(value);
  return Number.isSafeInteger(number) ? String(number) : value;
}

/** `_x000D_` stands for a character that XML cannot hold (ECMA-376 Part 1, 22.9.2.19). */
export function unescaped(text: string): string {
  if (!text.includes('_x')) return text;
  return text.replace(/_x([\da-fA-F]{4})_/g, (_, hex: string) =>
    String.fromCharCode(parseInt(hex, 16)),
  );
}

/** Cells in their rows; a cell or row that does not say where it is follows the one before. */
class Rows {
  readonly #rows = new Map<number, Map<number, Cell>>();
  #row = 0;
  #column = 0;
  #cells = 0;

  open(reference: string | undefined): void {
    const said = Number(reference);
    this.#row = Number.isSafeInteger(said) && said > 0 ? said : this.#row + 1;
    this.#column = 0;
  }

  place(reference: string | undefined): Spot {
    const spot = spotOf(reference ?? '');
    this.#column = spot?.column ?? this.#column + 1;
    return spot ?? { row: Math.max(1, this.#row), column: this.#column };
  }

  add({ row, column }: Spot, cell: Cell | null): void {
    if (!cell) return;
    const cells = this.#rows.get(row) ?? new Map<number, Cell>();
    this.#rows.set(row, cells);
    cells.set(column, cell);
    this.#cells += 1;
    if (this.#rows.size > MOST_ROWS) throw tooMany('rows');
    if (this.#cells > MOST_CELLS) throw tooMany('cells');
  }

  all(): readonly GridRow[] {
    return [...this.#rows]
      .map(([number, cells]) => ({ number, cells }))
      .sort((a, b) => a.number - b.number);
  }
}

function spotOf(reference: string): Spot | null {
  const [, letters = '', digits = ''] = /^\$?([A-Za-z]{1,3})\$?(\d{1,7})$/.exec(reference) ?? [];
  const column = columnNumber(letters);
  return column === null ? null : { row: Number(digits), column };
}

function addMerged(merged: Map<string, string>, reference: string): void {
  const [first = '', last = ''] = reference.split(':');
  const [from, to] = [spotOf(first), spotOf(last)];
  if (!from || !to) return;
  for (let { row } = from; row <= to.row; row += 1) {
    for (let { column } = from; column <= to.column; column += 1) {
      if (merged.size >= MOST_MERGED) return;
      if (row !== from.row || column !== from.column) {
        merged.set(mergeKey(row, column), first.replaceAll('$', ''));
      }
    }
  }
}
