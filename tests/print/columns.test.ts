import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { balance, fill, fits } from '../../pipeline/out/print/columns.js';
import type { Item } from '../../pipeline/out/print/items.js';

const item = (height: number, before = 0, keep = false): Item => ({
  before,
  height,
  keep,
  draw: () => undefined,
});

const items = fc.array(
  fc
    .tuple(fc.integer({ min: 5, max: 40 }), fc.integer({ min: 0, max: 12 }), fc.boolean())
    .map(([height, before, keep]) => item(height, before, keep)),
  { maxLength: 60 },
);
const columns = fc.integer({ min: 1, max: 5 });
const height = fc.integer({ min: 60, max: 500 });

/** Items by what is kept together, found from the end. */
function together(all: readonly Item[]): readonly (readonly Item[])[] {
  return all.reduceRight<readonly (readonly Item[])[]>((groups, each) => {
    const [next = [], ...others] = groups;
    return each.keep ? [[each, ...next], ...others] : [[each], ...groups];
  }, []);
}

describe('columns', () => {
  test('hold each item once, in order, one below the other', () => {
    fc.assert(
      fc.property(items, columns, height, (all, count, deep) => {
        const { placed, rest } = fill(all, count, deep);
        expect([...placed.map((each) => each.item), ...rest]).toEqual(all);
        placed.slice(1).forEach((each, index) => {
          const before = placed[index];
          if (!before) expect.fail('no item before');
          if (each.column === before.column) {
            expect(each.y).toBe(before.y + before.item.height + each.item.before);
          } else {
            expect([each.column, each.y]).toEqual([before.column + 1, 0]);
          }
          expect(each.y + each.item.height).toBeLessThanOrEqual(deep);
        });
      }),
    );
  });

  test('do not part what is kept together, if a column holds it', () => {
    fc.assert(
      fc.property(items, columns, height, (all, count, deep) => {
        const { placed } = fill(all, count, deep);
        const columnOf = new Map(placed.map((each) => [each.item, each.column]));
        for (const group of together(all)) {
          const length = group.reduce((sum, each) => sum + each.before + each.height, 0);
          const stand = group.flatMap((each) => columnOf.get(each) ?? []);
          if (length <= deep) expect(new Set(stand).size).toBeLessThanOrEqual(1);
        }
      }),
    );
    const kept = [item(40), item(10, 0, true), item(10)];
    expect(fill(kept, 2, 50).placed.map((each) => each.column)).toEqual([0, 1, 1]);
  });

  test('are as short as they can be where all has room', () => {
    fc.assert(
      fc.property(items, columns, height, (all, count, deep) => {
        fc.pre(all.length > 0 && fits(all, count, deep));
        const { rest, height: least } = balance(all, count, deep);
        expect(rest).toEqual([]);
        expect(least).toBeLessThanOrEqual(deep);
        expect(fits(all, count, least)).toBe(true);
        // Half a point less is too little, unless something kept together is as long.
        const longest = Math.max(...all.map((each) => each.height));
        if (all.every(({ keep }) => !keep) && least - 0.5 > longest) {
          expect(fits(all, count, least - 0.5)).toBe(false);
        }
      }),
    );
  });

  test('take an item that is higher than they are', () => {
    const { placed, rest } = fill([item(100), item(5)], 1, 50);
    expect([placed.length, rest.length]).toEqual([1, 1]);
  });
});
