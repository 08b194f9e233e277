import type { PacksSet } from '../../../schema/index.js';
import { delimited, neutral } from '../sheets/index.js';
import { decimal } from './say.js';

const HEADINGS = [
  'Product',
  'Cases',
  'Boxes a case',
  'Packs a box',
  'Places a pack',
  'What',
  'Copies',
  'A case, on average',
  'A box, on average',
  'Places each',
  'Places',
  'Cards',
  'Copies of each',
];

/**
 * What the packing house is given, as CSV (RFC 4180): a row for each line of each product. The mark
 * stands in a last heading above empty cells, so that every row has as many and no figure is moved.
 * Averages are decimal, since a spreadsheet takes 4/5 for a day.
 */
export function packingSheet({ products }: PacksSet, mark: string): string {
  const rows = products.flatMap((product) =>
    product.lines.map((line) => {
      const [alike, other] = line.cards;
      return [
        product.title,
        String(product.cases),
        String(product.case),
        String(product.box),
        String(product.pack),
        line.title,
        String(line.copies),
        decimal(line.perCase),
        decimal(line.perBox),
        String(line.placesEach),
        String(line.places),
        String(line.cards.reduce((sum, { cards }) => sum + cards, 0)),
        ...(alike !== undefined && other === undefined ? [decimal(alike.copies)] : ['']),
        '',
      ];
    }),
  );
  return delimited(
    [[...HEADINGS, mark], ...rows].map((row) => row.map(neutral)),
    'csv',
  );
}
