import { expect, test } from 'vitest';

import { fraction, packingList, whole, workOut } from '../../pipeline/packs/index.js';
import { highWater } from './high-water.js';
import { smallPlan } from './small.js';

test('a row for each line, and one for base cards', () => {
  expect(packingList(workOut(smallPlan()))).toEqual([
    row('Lake Charts', 30, whole(10), fraction(5n, 2n), 1),
    row('Timber Relics', 6, whole(2), fraction(1n, 2n), 4),
    row('Varnished', 30, whole(10), fraction(5n, 2n), 1),
    row('Signatures', 12, whole(4), whole(1), 1),
    row('blanks', 2, fraction(2n, 3n), fraction(1n, 6n), 2),
    row('Base cards', 500, fraction(500n, 3n), fraction(125n, 3n), 1),
  ]);
});

test('the places of all rows are those of all packs', () => {
  const report = workOut(highWater());
  const rows = packingList(report);
  expect(rows.reduce((sum, { places }) => sum + places, 0)).toBe(report.totals.places);
  expect(rows.map(({ product }) => product)).toEqual([
    ...Array.from({ length: 13 }, () => 'Hobby'),
    ...Array.from({ length: 5 }, () => 'Retail'),
  ]);
});

function row(
  line: string,
  copies: number,
  perCase: ReturnType<typeof whole>,
  perBox: ReturnType<typeof whole>,
  placesEach: number,
) {
  return {
    product: 'Hobby',
    line,
    copies,
    perCase,
    perBox,
    placesEach,
    places: copies * placesEach,
  };
}
