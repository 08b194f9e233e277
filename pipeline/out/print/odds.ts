import type { PublicSet } from '../../../schema/index.js';
import { grouped } from '../wording/index.js';
import type { PrintFaces } from './faces.js';
import type { Item } from './items.js';
import { sectionItems, wordsItems } from './section.js';
import type { TableStyle } from './table.js';

const CAUTION =
  'Odds are averages over all the packs that are made, rounded up. A pack, a box or a case may hold more of something, fewer, or none.';

/** How often something is found, a column for each product, with what must be said of it. */
export function oddsItems(
  { products }: PublicSet,
  style: TableStyle,
  faces: PrintFaces,
): readonly Item[] {
  const told = products.filter(({ odds }) => odds.length > 0);
  if (told.length === 0) return [];
  const titles = new Map(
    told.flatMap(({ odds }) =>
      odds.map(({ subset, parallel, title }) => [keyOf(subset, parallel), title]),
    ),
  );
  const rows = [...titles].map(([key, title]) => [
    title,
    ...told.map(({ odds }) => {
      const found = odds.filter(({ subset, parallel }) => keyOf(subset, parallel) === key);
      return found.map(({ packs }) => `1:${grouped(packs)}`).join(', ');
    }),
  ]);
  const heads = ['One in so many packs', ...told.map(({ title }) => title)];
  return [
    ...sectionItems('Odds', { heads, rows }, style, faces),
    ...wordsItems(CAUTION, style, faces, 0),
  ];
}

function keyOf(subset: string | null, parallel: string | null): string {
  return JSON.stringify([subset, parallel]);
}
