import type { PublicSubset } from '../../../schema/index.js';
import { capital, foundWords, groupName, subsetCount } from '../wording/index.js';
import type { PrintFaces } from './faces.js';
import { type Item, leadingOf, paragraph } from './items.js';
import {
  artistWords,
  cardWords,
  leastRows,
  rowItems,
  smallSize,
  type RowStyle,
  type RowWords,
} from './rows.js';
import { span } from './set-lines.js';

/** A subset as it is listed: its heading and its rows. */
export interface ListedSubset {
  readonly title: string;
  readonly says: string;
  readonly cards: readonly RowWords[];
  readonly artists: readonly RowWords[];
}

/** The subsets of a set, in the order of the list. */
export function listedSubsets(
  subsets: readonly PublicSubset[],
  zone: string,
): readonly ListedSubset[] {
  return subsets.map((subset) => ({
    title: subset.title,
    says: tally(subset),
    cards: subset.cards.map((card) => cardWords(card, zone)),
    artists: subset.artists.map(artistWords),
  }));
}

/** "8 cards listed. Inserts, found in packs"; of the base set its kind is not said. */
function tally(subset: PublicSubset): string {
  const { group, found } = subset;
  const count = subsetCount(subset);
  const kind = group === 'base' ? [] : [groupName(group)];
  const way = found === null ? [] : [foundWords(found)];
  const said = capital([...kind, ...way].join(', '));
  return said === '' ? count : `${count}. ${said}`;
}

/** Headings and rows, each heading with the first two of its rows. */
export function subsetItems(
  subsets: readonly ListedSubset[],
  style: RowStyle,
  faces: PrintFaces,
): readonly Item[] {
  return subsets.flatMap((subset) => [
    ...headingItems(subset, style, faces),
    ...rowItems(subset.cards, style, faces),
    ...artistItems(subset.artists, style, faces),
  ]);
}

function artistItems(
  artists: readonly RowWords[],
  style: RowStyle,
  faces: PrintFaces,
): readonly Item[] {
  if (artists.length === 0) return [];
  const size = smallSize(style.size);
  const label = paragraph({
    part: { tag: 'P' },
    spans: [span('Artists', faces.labels.medium, size, 100)],
    width: style.width,
    leading: leadingOf(size),
    before: 2,
    keep: true,
  });
  return [...label, ...rowItems(artists, style, faces)];
}

/** Points that the subsets take at least, in columns of a width. */
export function leastLength(
  subsets: readonly ListedSubset[],
  style: RowStyle,
  faces: PrintFaces,
): number {
  return subsets.reduce((sum, { cards }) => sum + leastRows(cards, style, faces), 0);
}

/** A heading, its bookmark and its rule. */
function headingItems(
  { title, says, cards, artists }: ListedSubset,
  { size, width }: RowStyle,
  faces: PrintFaces,
): readonly Item[] {
  const large = size + 1.5;
  const small = smallSize(size);
  const heads = paragraph({
    part: { tag: 'H2' },
    spans: [span(title, faces.text.bold, large, 100)],
    width,
    leading: leadingOf(large) * 0.95,
    before: size,
    keep: true,
  });
  const counts = paragraph({
    part: { tag: 'P' },
    spans: [span(says, faces.labels.regular, small, 70)],
    width,
    leading: leadingOf(small),
    before: 0,
    keep: true,
  });
  return [
    ...heads.map((item, index) => (index === 0 ? marked(item, title) : item)),
    ...counts,
    rule(width, cards.length + artists.length > 0),
  ];
}

function marked(item: Item, title: string): Item {
  return {
    ...item,
    draw: (pen, at) => {
      pen.bookmark(title, Math.max(0, at.y - 6));
      item.draw(pen, at);
    },
  };
}

function rule(width: number, keep: boolean): Item {
  return {
    before: 0,
    height: 4.5,
    keep,
    draw: (pen, { x, y }) => {
      pen.furniture('Layout', () => pen.rule({ x, y: y + 2 }, width, 0.5, 70));
    },
  };
}
