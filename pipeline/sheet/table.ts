import type { ImportSheet, MappedSheet, MappingFile } from '../../schema/index.js';
import { subsetOf, type CardSet } from '../model/index.js';
import {
  ABOUT_SHEET,
  NAMES_SHEET,
  factColumn,
  saysWhole,
  textColumn,
} from '../out/sheets/index.js';
import { nearest } from '../text/index.js';
import { readCsv } from './csv.js';
import { TableError, type Grid } from './grid.js';
import { layoutOf, type Layout } from './layout.js';
import { mappingFaults, missingHeadings, usedMapping, type UsedSheet } from './mapping.js';
import { readRows, type CardRow, type Rejected, type Skipped } from './rows.js';
import { folded } from './tidy.js';
import { readWorkbook } from './workbook.js';

/** A file as sheets; `named` says whether they have names of their own. */
export interface Table {
  readonly grids: readonly Grid[];
  readonly named: boolean;
}

/**
 * Reads a workbook or a CSV file, by what its bytes are.
 * @param name what a CSV file is called in messages.
 * @throws TableError for what is neither, damaged or too large.
 */
export function readTable(name: string, bytes: Uint8Array): Table {
  if (bytes.length === 0) throw new TableError('the file is empty');
  const isBook = (bytes[0] === 0x50 && bytes[1] === 0x4b) || bytes[0] === 0xd0;
  if (isBook) return { grids: readWorkbook(bytes), named: true };
  return { grids: [readCsv(name, bytes)], named: false };
}

/** What is asked of the rows of a file. */
export interface TableOrder {
  readonly set: CardSet;
  readonly mapping: MappingFile | null;
  /** The sheets to read; all that are not hidden, if none is named. */
  readonly sheets: readonly string[];
  /** The subset of rows that do not say their own. */
  readonly into: string | null;
}

/** The rows of a file, sorted out, and how they were found. */
export interface TableReading {
  readonly sheets: readonly ImportSheet[];
  readonly mapping: MappingFile;
  readonly rows: readonly CardRow[];
  readonly rejected: readonly Rejected[];
  readonly skipped: readonly Skipped[];
  /** Why nothing of the file can be taken. */
  readonly refused: readonly string[];
}

/** Finds the rows of cards in a file. It says everything that is wrong with it at once. */
export function readSheets({ grids, named }: Table, order: TableOrder): TableReading {
  const { mapping, into, set } = order;
  const chosen = chosenSheets(grids, named, order);
  const refused = [
    ...(mapping ? mappingFaults(mapping) : []),
    ...chosen.refused,
    ...subsetFaults(set, into, chosen.sheets),
  ];
  const used: UsedSheet[] = [];
  const sheets: ImportSheet[] = [];
  const readings: ReturnType<typeof readRows>[] = [];
  const skipped: Skipped[] = [];
  const isCut = saysCut(grids);
  const facts = [...new Set(set.plan.value.subsets.flatMap((subset) => subset.facts ?? []))];
  const known = knownHeadings(set);
  for (const { grid, stated } of refused.length > 0 ? [] : chosen.sheets) {
    const reading = layoutOf(grid, { mapping, header: stated?.header, facts, known });
    if (!reading.ok) {
      const isAsked = stated?.name !== undefined || grids.length === 1;
      const why = reading.why.map((line) => `${grid.name}: ${line}`);
      if (isAsked || reading.why.length > 1 || !reading.why[0]?.startsWith('no row')) {
        refused.push(...why);
      } else skipped.push({ sheet: grid.name, row: 1, why: 'a sheet without headings of cards' });
      continue;
    }
    const { layout } = reading;
    const subset = stated?.subset ?? into ?? namedSubset(set, grid.name);
    const rows = readRows(grid, layout, {
      set: set.id,
      subset,
      constants: mapping?.constants ?? {},
      isCut: isCut || layout.isMarked,
    });
    readings.push(rows);
    sheets.push(sheetOf(grid, layout, rows.count));
    used.push({
      name: named ? grid.name : null,
      layout,
      ...(stated?.subset === undefined ? {} : { subset: stated.subset }),
    });
  }
  if (mapping && refused.length === 0) {
    refused.push(
      ...missingHeadings(
        mapping,
        used.flatMap(({ layout }) => layout.headings),
      ),
    );
  }
  if (refused.length === 0 && used.length === 0) {
    refused.push('no sheet has a row of headings that stand for keys of a card');
  }
  const isRead = refused.length === 0;
  return {
    sheets,
    mapping: isRead || !mapping ? usedMapping(used, mapping) : mapping,
    rows: isRead ? readings.flatMap(({ rows }) => rows) : [],
    rejected: isRead ? readings.flatMap(({ rejected }) => rejected) : [],
    skipped: [...skipped, ...readings.flatMap((reading) => reading.skipped)],
    refused,
  };
}

function sheetOf({ name }: Grid, { header, unread }: Layout, rows: number): ImportSheet {
  return { name, header, rows, unread: [...unread] };
}

interface Chosen {
  readonly sheets: readonly { readonly grid: Grid; readonly stated?: MappedSheet }[];
  readonly refused: readonly string[];
}

/** The sheets that are named, hidden ones too; else those that show, without our own that hold no cards. */
function chosenSheets(grids: readonly Grid[], named: boolean, order: TableOrder): Chosen {
  const { sheets, mapping } = order;
  const ours = [ABOUT_SHEET, NAMES_SHEET];
  const stated = mapping?.sheets ?? [];
  if (!named) {
    const [grid] = grids;
    const [first] = stated;
    const refused = sheets.length > 0 ? ['a CSV file has no sheets to name'] : [];
    if (!grid) return { sheets: [], refused };
    return { sheets: [first ? { grid, stated: first } : { grid }], refused };
  }
  const general = stated.find(({ name }) => name === undefined);
  const asked =
    sheets.length > 0
      ? sheets.map((name) => stated.find((sheet) => sheet.name === name) ?? { ...general, name })
      : stated;
  const specific = asked.filter(({ name }) => name !== undefined);
  if (specific.length === 0) {
    const visible = grids.filter(({ name, hidden }) => !hidden && !ours.includes(name));
    return {
      sheets: visible.map((grid) => (general ? { grid, stated: general } : { grid })),
      refused:
        visible.length > 0 ? [] : ['the workbook has no sheet that shows: name one by --sheet'],
    };
  }
  const found = specific.map((sheet) => ({
    grid: grids.find(({ name }) => folded(name) === folded(sheet.name ?? '')),
    stated: sheet,
  }));
  return {
    sheets: found.flatMap(({ grid, stated: sheet }) => (grid ? [{ grid, stated: sheet }] : [])),
    refused: found.flatMap(({ grid, stated: sheet }) =>
      grid ? [] : [noSheet(sheet.name ?? '', grids)],
    ),
  };
}

function noSheet(name: string, grids: readonly Grid[]): string {
  const names = grids.map((grid) => grid.name);
  const near = nearest(name, names);
  return `there is no sheet ${name}${near === null ? `; there is ${names.join(', ')}` : `; did you mean ${near}?`}`;
}

function subsetFaults(
  set: CardSet,
  into: string | null,
  sheets: Chosen['sheets'],
): readonly string[] {
  const known = set.plan.value.subsets.map(({ id }) => id);
  const named = [into, ...sheets.map(({ stated }) => stated?.subset ?? null)];
  return [...new Set(named)].flatMap((id) => {
    if (id === null || subsetOf(set.plan.value, id)) return [];
    const near = nearest(id, known);
    return [
      `the plan has no subset ${id}${near === null ? `; there is ${known.join(', ')}` : `; did you mean ${near}?`}`,
    ];
  });
}

/** A sheet may be called after the subset that it holds. */
function namedSubset(set: CardSet, name: string): string | null {
  const own = set.plan.value.subsets.find(
    ({ id, title }) => folded(id) === folded(name) || folded(title) === folded(name),
  );
  return own?.id ?? null;
}

/** Headings of the facts and texts of a set's cards. */
function knownHeadings({ cards }: CardSet): ReadonlySet<string> {
  return new Set(
    cards.flatMap(({ front: { facts = {}, texts = {} } }) => [
      ...Object.keys(facts).map((name) => factColumn(name).heading),
      ...Object.keys(texts).map((zone) => textColumn(zone).heading),
    ]),
  );
}

/** Our own first sheet that does not say that the file is whole: then it is cut. */
function saysCut(grids: readonly Grid[]): boolean {
  const about = grids.find(({ name }) => name === ABOUT_SHEET);
  if (!about) return false;
  return !about.rows.some(({ cells }) => [...cells.values()].some(({ text }) => saysWhole(text)));
}
