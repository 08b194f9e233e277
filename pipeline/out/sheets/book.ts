import type { View, ViewSet } from '../../gate/index.js';
import type { Which } from '../card/index.js';
import { aboutTable } from './about.js';
import { factColumn } from './columns.js';
import { cutHeadings, cutRecords, listHeadings, listRecords } from './cut.js';
import { markOf } from './mark.js';
import { nameHeadings, statedNames, toldNames, type StatedName } from './names.js';
import type { RoomSetting } from './room.js';
import { NAMES_SHEET, sheetNames } from './sheet-names.js';
import { csvBytes, tableOf, type SheetRecord, type Table } from './table.js';
import { wholeHeadings, wholeRecords, type HouseSource } from './whole.js';
import { xlsxBytes } from './xlsx.js';

export const WHATS = ['copy', 'checklist'] as const;
export type What = (typeof WHATS)[number];

export const BOOK_FORMATS = ['xlsx', 'csv'] as const;
export type BookFormat = (typeof BOOK_FORMATS)[number];

export interface BookOptions extends RoomSetting {
  readonly what: What;
  /** The id of the one set to take; all, if it is not said. */
  readonly set?: string;
  /** The view is of an instant to come. */
  readonly preview?: boolean;
  /** For the house alone: what stands in the files. */
  readonly house?: HouseSource & { readonly names: readonly StatedName[] };
  /** Of the copy for a person: these cards alone, by `set/subset/id`. */
  readonly own?: ReadonlySet<string>;
  /** For a person: what they would see if they were cleared for nothing. */
  readonly anybody?: View | null;
}

/** What was made, and what to say of it. */
export interface Book {
  /** Cards that have a row. */
  readonly cards: number;
  /** Whom it is for; null if anybody may see it. */
  readonly mark: string | null;
  /** The bytes of the file in a format. The same view gives the same bytes. */
  readonly bytes: (format: BookFormat) => Promise<Uint8Array>;
}

/**
 * The cards as sheets. A workbook has a sheet that says what it is, one for each set, and one of
 * names; a CSV file has all cards in one table. Without `house`, everything comes from the view.
 * @throws RangeError for `house` with a view of anybody else, and for the house's copy without it.
 */
export function bookOf(view: View, options: BookOptions): Book {
  const isHouse = view.audience === 'house';
  const needsFiles = isHouse && options.what === 'copy';
  if (options.house ? !isHouse : needsFiles) {
    throw new RangeError('what stands in the files is for the house, and its copy is made of that');
  }
  const mark = markOf(view, options.preview === true);
  const parts = view.sets
    .filter(({ id }) => options.set === undefined || id === options.set)
    .map((set) => ({ set, records: recordsOf(view, { set: set.id }, options) }))
    .filter(({ records }) => records.length > 0);
  const table = (name: string, sets: readonly ViewSet[], records: readonly SheetRecord[]): Table =>
    tableOf(name, headingsOf(view, sets, records, options), records, mark);
  const all = parts.flatMap(({ records }) => records);
  const workbook = (): readonly Table[] => {
    const names = sheetNames(parts.map(({ set }) => set.short));
    const { what, own } = options;
    return [
      aboutTable(view, { what, own: own !== undefined, mark }),
      ...parts.map(({ set, records }, at) => table(names[at] ?? set.id, [set], records)),
      namesTable(view, options, mark),
    ];
  };
  return {
    cards: all.length,
    mark,
    bytes: async (format) =>
      format === 'xlsx'
        ? xlsxBytes(workbook())
        : csvBytes(
            table(
              '',
              parts.map(({ set }) => set),
              all,
            ),
          ),
  };
}

/**
 * The cards that a person writes, by `set/subset/id`, as the house's view has them. It is no secret
 * from them which cards they write.
 */
export function cardsBy(writer: string, house: View): ReadonlySet<string> {
  const cards = house.sets.flatMap((set) =>
    set.subsets.flatMap((subset) => subset.cards.map((card) => ({ set, card }))),
  );
  return new Set(
    cards
      .filter(({ card }) => card.notes?.writer === writer)
      .map(({ set, card }) => `${set.id}/${card.identity ?? ''}`),
  );
}

function recordsOf(view: View, which: Which, options: BookOptions): readonly SheetRecord[] {
  if (options.what === 'checklist') return listRecords(view, which);
  if (options.house) return wholeRecords(view, which, options.house, options);
  return cutRecords(view, which, options.own ?? null, options);
}

function headingsOf(
  view: View,
  sets: readonly ViewSet[],
  records: readonly SheetRecord[],
  { what, house }: BookOptions,
): readonly string[] {
  if (what === 'checklist') return listHeadings(view, records);
  if (!house) return cutHeadings(records);
  const asked = sets.flatMap((set) =>
    set.subsets.flatMap(({ id }) => house.facts.get(`${set.id}/${id}`) ?? []),
  );
  return wholeHeadings(
    records,
    asked.map((name) => factColumn(name).heading),
  );
}

function namesTable(view: View, { house, anybody }: BookOptions, mark: string | null): Table {
  const records = house ? statedNames(house.names) : toldNames(view, anybody ?? null);
  return tableOf(NAMES_SHEET, nameHeadings(records), records, mark);
}
