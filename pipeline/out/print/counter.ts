import type { PublicData, PublicSet, PublicSubset } from '../../../schema/index.js';
import {
  dayWords,
  foundWords,
  groupName,
  grouped,
  listed,
  momentWords,
  regionName,
  subsetCount,
} from '../wording/index.js';
import { bandsOf, sectionsBeside, type Stretch } from './beside.js';
import type { PrintFaces } from './faces.js';
import type { Item } from './items.js';
import { oddsStretches } from './odds.js';
import type { Paper } from './papers.js';
import { parallelItems } from './parallels.js';
import { pour, type Band } from './pour.js';
import { sectionHeading, sectionItems, wordsItems } from './section.js';
import { drawSheet, frameOf } from './sheet.js';
import type { Table, TableStyle } from './table.js';

const SIZES = [10.5, 10, 9.5, 9, 8.5, 8, 7.5, 7] as const;
/** For what cannot stand on one page. */
const FLOWING = 9;

const CAUTION =
  'Names, numbers and runs may change. What a pack or a box holds is chance; nothing here is a promise of what it will hold.';

/** The counter sheet of a set: what a shop is asked about, on one page if it can be. */
export async function counterSheet(
  data: PublicData,
  set: PublicSet,
  paper: Paper,
  faces: PrintFaces,
): Promise<Uint8Array> {
  const sheet = { data, set, kind: 'Counter sheet', facts: `${listed(set.listed)}.`, paper, faces };
  const frame = frameOf(sheet);
  const { room, head } = frame;
  const bandsIn = (size: number): readonly Band[] =>
    bandsOf(stretches(data, set, { size, width: room.width }, faces), size * 1.4);
  const isOnOnePage = (bands: readonly Band[]): boolean =>
    pour([head, ...bands], room).pages.length === 1;
  const size = SIZES.find((each) => isOnOnePage(bandsIn(each))) ?? FLOWING;
  return drawSheet(sheet, frame, bandsIn(size));
}

function stretches(
  data: PublicData,
  set: PublicSet,
  style: TableStyle,
  faces: PrintFaces,
): readonly Stretch[] {
  const street = { title: 'In shops', table: streetTable(set, data.property.zone) };
  const products = { title: 'Products', table: productTable(set) };
  const items = [
    ...sectionItems('Subsets', subsetTable(set), style, faces),
    ...parallelItems(set, style, faces),
    ...openingItems(data, set, style, faces),
    ...wordsItems(CAUTION, style, faces, style.size * 1.6),
  ];
  return [
    ...sectionsBeside([street, products], style, faces),
    ...oddsStretches(set, style, faces),
    { columns: 1, items },
  ];
}

function streetTable({ street }: PublicSet, zone: string): Table {
  return {
    heads: ['Day', 'Where'],
    rows: street.map(({ region, at }) => [
      dayWords(at, zone),
      region === null ? '' : regionName(region),
    ]),
  };
}

function productTable({ products }: PublicSet): Table {
  const count = (figure: number | null): string => (figure === null ? '' : grouped(figure));
  return {
    heads: ['Product', 'Cards a pack', 'Packs a box'],
    rows: products.map(({ title, pack, box }) => [title, count(pack), count(box)]),
  };
}

function subsetTable({ subsets }: PublicSet): Table {
  return {
    heads: ['Title', 'Kind', 'Numbers', 'How found', 'Cards listed'],
    rows: subsets.map((subset) => [
      subset.title,
      groupName(subset.group),
      numbersOf(subset),
      subset.found === null ? '' : foundWords(subset.found),
      subset.artists.length === 0 ? grouped(subset.listed) : subsetCount(subset),
    ]),
  };
}

/** "1 to 48", the first and the last number as printed; nothing where there are none. */
function numbersOf({ cards }: PublicSubset): string {
  const numbers = cards.flatMap(({ number }) => number ?? []);
  const [first = ''] = numbers;
  const last = numbers.at(-1) ?? '';
  return first === last ? first : `${first} to ${last}`;
}

/** The announced days on which cards of this set are revealed. */
function openingItems(
  { openings, property }: PublicData,
  { subsets }: PublicSet,
  style: TableStyle,
  faces: PrintFaces,
): readonly Item[] {
  const cards = subsets.flatMap((subset) => subset.cards);
  const lines = openings.flatMap((at) => {
    const count = cards.filter(({ opens }) => opens === at).length;
    if (count === 0) return [];
    const what = count === 1 ? '1 card' : `${grouped(count)} cards`;
    return [`${what} to be revealed on ${momentWords(at, property.zone)}.`];
  });
  if (lines.length === 0) return [];
  const heading = sectionHeading('Still to come', style, faces);
  return [...heading, ...lines.flatMap((line) => wordsItems(line, style, faces, 0))];
}
