import type { PublicData, PublicSet, PublicSubset } from '../../../schema/index.js';
import { listed, streetWords } from '../wording/index.js';
import { fits } from './columns.js';
import type { PrintFaces } from './faces.js';
import type { Paper } from './papers.js';
import { parallelItems } from './parallels.js';
import { columnWidth, pour, type Band, type Room } from './pour.js';
import { LEAST_SIZE, type RowStyle } from './rows.js';
import { drawSheet, frameOf, type Sheet } from './sheet.js';
import { leastLength, listedSubsets, subsetItems, type ListedSubset } from './subsets.js';

/** Sizes of type that are tried, largest first. */
const SIZES = [10, 9.5, 9, 8.5, 8, 7.5, 7, 6.5, LEAST_SIZE] as const;
/** Columns that are tried: three first, in which most names take a line. */
const COLUMNS = [3, 2, 4, 5] as const;
/** For what cannot stand on one page. */
const FLOWING = { size: 8.5, columns: 3 } as const;
/** No smaller type saves a page for what need not stand on one. */
const LEAST_BESIDE = 8;
const TABLE_SIZE = 9;
const GAP = 14;
const BETWEEN_BANDS = 16;

/** The checklist of a set: the base set on one page if it can be, then the other subsets. */
export async function checklistSheet(
  data: PublicData,
  set: PublicSet,
  paper: Paper,
  faces: PrintFaces,
): Promise<Uint8Array> {
  const street = streetWords(set, data.property.zone);
  const facts = `${listed(set.listed)}.${street === '' ? '' : ` In shops ${street}.`}`;
  const sheet = { data, set, kind: 'Checklist', facts, paper, faces };
  const frame = frameOf(sheet);
  return drawSheet(sheet, frame, bandsOf(sheet, frame.room, [frame.head]));
}

function bandsOf({ set, data, faces }: Sheet, room: Room, head: readonly Band[]): readonly Band[] {
  const { zone } = data.property;
  const base = listedSubsets(set.subsets.filter(isBase), zone);
  const others = listedSubsets(
    set.subsets.filter((subset) => !isBase(subset)),
    zone,
  );
  const first = listBand(base, room, faces, [{ sizes: SIZES, height: roomAfter(head, room) }]);
  const atMost = SIZES.filter((size) => size <= first.size);
  const before = [...head, ...first.bands];
  const second = listBand(others, room, faces, [
    { sizes: atMost.filter((size) => size >= LEAST_BESIDE), height: roomAfter(before, room) },
    { sizes: atMost.filter((size) => size >= FLOWING.size), height: room.bottom - room.top(1) },
  ]);
  const items = parallelItems(set, { size: TABLE_SIZE, width: room.width }, faces);
  const parallels = { columns: 1, gap: 0, before: BETWEEN_BANDS, items };
  return [...first.bands, ...second.bands, ...(items.length > 0 ? [parallels] : [])];
}

function isBase({ group }: PublicSubset): boolean {
  return group === 'base';
}

/** What is left of the page on which bands end, in points. */
function roomAfter(bands: readonly Band[], room: Room): number {
  return room.bottom - pour(bands, room).y - BETWEEN_BANDS;
}

/** Sizes to try, largest first, in columns of a height. */
interface Attempt {
  readonly sizes: readonly number[];
  readonly height: number;
}

/**
 * Subsets in the largest type, and the first of the columns, in which all of them have room in one
 * of the attempts; if they never have, in as many pages as they take. No band for no subset.
 */
function listBand(
  subsets: readonly ListedSubset[],
  room: Room,
  faces: PrintFaces,
  attempts: readonly Attempt[],
): { readonly bands: readonly Band[]; readonly size: number } {
  const styleOf = (size: number, columns: number): RowStyle => ({
    size,
    width: columnWidth(room.width, columns, GAP),
  });
  const bandOf = (size: number, columns: number): Band => ({
    columns,
    gap: GAP,
    before: BETWEEN_BANDS,
    items: subsetItems(subsets, styleOf(size, columns), faces),
  });
  if (subsets.length === 0) return { bands: [], size: SIZES[0] };
  for (const { sizes, height } of attempts) {
    for (const size of sizes) {
      for (const columns of COLUMNS) {
        if (leastLength(subsets, styleOf(size, columns), faces) > columns * height) continue;
        const band = bandOf(size, columns);
        if (fits(band.items, columns, height)) return { bands: [band], size };
      }
    }
  }
  return { bands: [bandOf(FLOWING.size, FLOWING.columns)], size: FLOWING.size };
}
