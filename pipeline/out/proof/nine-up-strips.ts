import { mm, type Rect, type Size } from '../card/index.js';
import type { Strip } from './strips.js';
import { MARGIN } from './template.js';

/** The least margin in which words can stand above and below a block: printers leave 4 mm white. */
const LEAST = mm(11);

/**
 * Where head and foot of a page stand: above and below the cards; beside them, reading upwards,
 * where the paper is so short that there is no room.
 */
export function nineUpStrips(
  page: Size,
  block: Rect | null,
): { readonly head: Strip; readonly foot: Strip } {
  if (block && block.y < LEAST) {
    const up = (x: number): Strip => ({
      matrix: [0, -1, 1, 0, x, block.y + block.height],
      width: block.height,
    });
    return { head: up(mm(7.6)), foot: up(page.width - mm(5)) };
  }
  const x = block?.x ?? MARGIN;
  const across = (y: number): Strip => ({ matrix: [1, 0, 0, 1, x, y], width: page.width - 2 * x });
  return { head: across(mm(8.6)), foot: across(page.height - mm(5.6)) };
}
