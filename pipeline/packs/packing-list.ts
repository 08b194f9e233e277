import type { Fraction } from './fraction.js';
import type { PackReport } from './report.js';

/** A row of what the packing house is given. */
export interface PackingRow {
  readonly product: string;
  /** The title of the line, or `Base cards`. */
  readonly line: string;
  readonly copies: number;
  /** On average, in lowest terms: whole where each case or box gets the same. */
  readonly perCase: Fraction;
  readonly perBox: Fraction;
  readonly placesEach: number;
  readonly places: number;
}

/** What goes in each product, line by line: titles and counts of all that is held, for the house. */
export function packingList({ products }: PackReport): readonly PackingRow[] {
  return products.flatMap(({ title: product, lines }) =>
    lines.map(({ title, copies, aCase, aBox, placesEach, places }) => ({
      product,
      line: title,
      copies,
      perCase: aCase,
      perBox: aBox,
      placesEach,
      places,
    })),
  );
}
