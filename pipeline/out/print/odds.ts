import type { PublicSet } from '../../../schema/index.js';
import { ODDS_CAUTIONS, oddsWords } from '../wording/index.js';
import { sectionInHalves, type Stretch } from './beside.js';
import type { PrintFaces } from './faces.js';
import { wordsItems } from './section.js';
import type { Table, TableStyle } from './table.js';

/** How often something is found, a column for each product, with what must be said of it. */
export function oddsStretches(
  { products }: PublicSet,
  style: TableStyle,
  faces: PrintFaces,
): readonly Stretch[] {
  const told = products.filter(({ odds }) => odds.length > 0);
  if (told.length === 0) return [];
  const table = sectionInHalves({ title: 'Odds', table: tableOf(told) }, style, faces);
  const cautions = wordsItems(ODDS_CAUTIONS.join(' '), style, faces, style.size * 0.4);
  return [table, { columns: 1, items: cautions }];
}

function tableOf(told: PublicSet['products']): Table {
  const titles = new Map(
    told.flatMap(({ odds }) =>
      odds.map(({ subset, parallel, title }) => [keyOf(subset, parallel), title]),
    ),
  );
  const rows = [...titles].map(([key, title]) => [
    title,
    ...told.map(({ odds }) => {
      const found = odds.filter(({ subset, parallel }) => keyOf(subset, parallel) === key);
      return found.map(({ packs }) => oddsWords(packs)).join(', ');
    }),
  ]);
  return { heads: ['One in so many packs', ...told.map(({ title }) => title)], rows };
}

function keyOf(subset: string | null, parallel: string | null): string {
  return JSON.stringify([subset, parallel]);
}
