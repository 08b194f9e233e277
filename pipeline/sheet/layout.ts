import type { MappedColumn, MappingFile } from '../../schema/index.js';
import { columnOf, isMark, typed } from '../out/sheets/index.js';
import { lettersOf, type Grid, type GridRow } from './grid.js';
import { guessedTarget, keyOfTarget, ownTarget, targetOfKey, type Target } from './targets.js';
import { folded, tidyLine } from './tidy.js';

/** A column of a sheet that is read. */
export interface ReadColumn {
  /** From 1. */
  readonly at: number;
  readonly heading: string;
  readonly target: Target;
  readonly fillDown: boolean;
  /** What words of its cells mean, by `folded`. */
  readonly values: ReadonlyMap<string, string>;
}

/** How one sheet is read. */
export interface Layout {
  readonly header: number;
  readonly columns: readonly ReadColumn[];
  /** Every heading of the row. */
  readonly headings: readonly string[];
  /** Headings that stand for nothing here. */
  readonly unread: readonly string[];
  /** A heading says that the file is for somebody who may not see all of the cards. */
  readonly isMarked: boolean;
}

export type LayoutReading =
  | { readonly ok: true; readonly layout: Layout }
  | { readonly ok: false; readonly why: readonly string[] };

/** How far down headings are looked for. */
const DEEPEST_HEADER = 50;

/** What is known before a sheet is looked at. */
export interface LayoutGround {
  readonly mapping: MappingFile | null;
  /** The row of the headings, if it is said. */
  readonly header: number | undefined;
  /** Names of facts in the plan. */
  readonly facts: readonly string[];
  /** Headings of facts and texts that cards of the set have, to the letter. */
  readonly known: ReadonlySet<string>;
}

/** Finds the row of the headings and what each stands for. */
export function layoutOf(grid: Grid, ground: LayoutGround): LayoutReading {
  const row =
    ground.header === undefined
      ? likeliest(grid.rows, ground)
      : grid.rows.find(({ number }) => number === ground.header);
  if (!row) {
    const where = ground.header === undefined ? 'no row' : `row ${String(ground.header)} is none`;
    return { ok: false, why: [`${where} of headings that stand for keys of a card`] };
  }
  const headings = headingsOf(row, ground);
  const found = headings.map(({ at, heading }) => ({
    at,
    heading,
    ...meaningOf(heading, lettersOf(at), ground),
  }));
  const columns = found.flatMap(({ at, heading, target, mapped }): ReadColumn[] =>
    target === null || target.kind === 'told'
      ? []
      : [{ at, heading, target, fillDown: mapped?.fillDown === true, values: valuesOf(mapped) }],
  );
  const doubled = doubledKeys(columns);
  if (doubled.length > 0) return { ok: false, why: doubled };
  if (columns.length === 0) {
    return { ok: false, why: [`row ${String(row.number)} has no heading that stands for a key`] };
  }
  const isUnread = ({ heading, target, mapped }: (typeof found)[number]): boolean =>
    target === null && mapped === undefined && !isMark(heading);
  return {
    ok: true,
    layout: {
      header: row.number,
      columns,
      headings: headings.map(({ heading }) => heading),
      unread: found.filter(isUnread).map(({ heading }) => heading),
      isMarked: headings.some(({ heading }) => isMark(heading) && !heading.startsWith('INTERNAL')),
    },
  };
}

function headingsOf(
  row: GridRow,
  { known }: LayoutGround,
): readonly { readonly at: number; readonly heading: string }[] {
  return [...row.cells]
    .map(([at, { text }]) => {
      const own = typed(text);
      return { at, heading: known.has(own) ? own : tidyLine(own).replace(/\s+/gu, ' ') };
    })
    .filter(({ heading }) => heading !== '')
    .sort((a, b) => a.at - b.at);
}

/** The row near the top with the most headings that are known: two at least, or one that is mapped. */
function likeliest(rows: readonly GridRow[], ground: LayoutGround): GridRow | undefined {
  let best: GridRow | undefined;
  let most = ground.mapping ? 0 : 1;
  for (const row of rows.slice(0, DEEPEST_HEADER)) {
    const known = headingsOf(row, ground).filter(({ at, heading }) => {
      const { target } = meaningOf(heading, lettersOf(at), ground);
      return target !== null && target.kind !== 'told';
    }).length;
    if (known > most) [best, most] = [row, known];
  }
  return best;
}

interface Meaning {
  readonly target: Target | null;
  readonly mapped?: MappedColumn;
}

function meaningOf(
  heading: string,
  letters: string,
  { mapping, facts, known }: LayoutGround,
): Meaning {
  const exact = known.has(heading) ? columnOf(heading) : null;
  if (exact && !mapping) return { target: { kind: 'key', column: exact } };
  if (!mapping) return { target: guessedTarget(heading, facts) };
  const named = mapping.columns.filter((column) => folded(column.heading) === folded(heading));
  const [first] = named;
  if (!first) return { target: exact ? { kind: 'key', column: exact } : ownTarget(heading) };
  const mapped = named.find(({ column }) => column === undefined || column === letters);
  if (mapped?.key === undefined) return { target: null, mapped: mapped ?? first };
  return { target: targetOfKey(mapped.key), mapped };
}

function valuesOf(mapped: MappedColumn | undefined): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(mapped?.values ?? {}).map(([words, meant]) => [folded(words), meant]),
  );
}

/** Columns that stand for the same key: nobody knows which is meant. */
function doubledKeys(columns: readonly ReadColumn[]): readonly string[] {
  const byKey = new Map<string, ReadColumn[]>();
  for (const column of columns) {
    const key = keyOfTarget(column.target) ?? '';
    byKey.set(key, [...(byKey.get(key) ?? []), column]);
  }
  return [...byKey].flatMap(([key, own]) => {
    if (own.length < 2) return [];
    const where = own.map(({ heading, at }) => `“${heading}” in ${lettersOf(at)}`).join(' and ');
    return [`${where} both stand for ${key}: say in a mapping which one is read, by \`column\``];
  });
}
