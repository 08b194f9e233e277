import type { Item } from './items.js';

/** An item in its place: in which column, from 0, and how far down it, in points. */
export interface Placed {
  readonly item: Item;
  readonly column: number;
  readonly y: number;
}

/** Items in columns, and those that had no room. */
export interface Filled {
  readonly placed: readonly Placed[];
  readonly rest: readonly Item[];
  /** Of the longest column. */
  readonly height: number;
}

/** How near the least height balanced columns come to it, in points. */
const NEAR = 0.25;

/**
 * Fills columns of one height from left to right. An item stands with those that it is kept with,
 * unless they are more than a column holds. The first column takes one item at least.
 */
export function fill(items: readonly Item[], columns: number, height: number): Filled {
  const placed: Placed[] = [];
  let [column, y, deepest] = [0, 0, 0];
  for (const group of keptTogether(items, height)) {
    const atTop = placed.at(-1)?.column !== column;
    if (!atTop && y + lengthOf(group, false) > height) {
      column += 1;
      y = 0;
    }
    if (column === columns) break;
    for (const item of group) {
      if (placed.at(-1)?.column === column) y += item.before;
      placed.push({ item, column, y });
      y += item.height;
      deepest = Math.max(deepest, y);
    }
  }
  return { placed, rest: items.slice(placed.length), height: deepest };
}

/** Whether all items have room in so many columns of one height. */
export function fits(items: readonly Item[], columns: number, height: number): boolean {
  const { rest, height: deepest } = fill(items, columns, height);
  return rest.length === 0 && deepest <= height;
}

/** Fills columns that are as short as they can be and no higher than `height`. */
export function balance(items: readonly Item[], columns: number, height: number): Filled {
  if (!fits(items, columns, height)) return fill(items, columns, height);
  const groups = keptTogether(items, height).map((group) => lengthOf(group, true));
  const even = items.reduce((sum, item) => sum + item.height, 0) / columns;
  let least = Math.max(even, ...groups);
  if (fits(items, columns, least)) return fill(items, columns, least);
  let most = height;
  while (most - least > NEAR) {
    const middle = (least + most) / 2;
    if (fits(items, columns, middle)) most = middle;
    else least = middle;
  }
  return fill(items, columns, most);
}

/** Items that are kept together, as far as they have room in one column. */
function keptTogether(items: readonly Item[], height: number): readonly (readonly Item[])[] {
  const groups: Item[][] = [];
  let joined = false;
  for (const item of items) {
    const last = groups.at(-1);
    if (last && joined) last.push(item);
    else groups.push([item]);
    joined = item.keep;
  }
  return groups.flatMap((group) =>
    lengthOf(group, true) <= height ? [group] : group.map((item) => [item]),
  );
}

function lengthOf(items: readonly Item[], atTop: boolean): number {
  return items.reduce(
    (sum, { before, height }, index) => sum + height + (atTop && index === 0 ? 0 : before),
    0,
  );
}
