import { one } from './elements.js';

/** @typedef {import('./tick-cells.js').TickCell} TickCell */

/** Where each key of the column of boxes leads, from a place in it to one of so many. */
/** @type {Readonly<Record<string, (at: number, count: number) => number>>} */
const WAYS = {
  ArrowDown: (at, count) => Math.min(at + 1, count - 1),
  ArrowUp: (at) => Math.max(at - 1, 0),
  Home: () => 0,
  End: (_, count) => count - 1,
};

/**
 * Taps and keys in the column of boxes. A tap on an empty box ticks, on any other takes one off.
 *
 * @param {readonly TickCell[]} cells
 * @param {(cell: TickCell, by: 'tap' | 1 | -1) => void} tick
 */
export function startBoxes(cells, tick) {
  const main = one('main', HTMLElement);
  /** @type {Map<Element, TickCell>} */
  const known = new Map(
    cells.flatMap((cell) => [
      [cell.box, cell],
      [cell.plus, cell],
    ]),
  );
  main?.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest('.tick button') : null;
    const cell = button && known.get(button);
    if (cell) tick(cell, button === cell.plus ? 1 : 'tap');
  });
  main?.addEventListener('keydown', (event) => {
    const { key, target } = event;
    const cell = target instanceof Element ? known.get(target) : undefined;
    if (!cell || event.ctrlKey || event.metaKey || event.altKey) return;
    const way = WAYS[key];
    if (way) move(cell.box, way);
    else if (key === '+' || key === '=') tick(cell, 1);
    else if (key === '-') tick(cell, -1);
    else return;
    event.preventDefault();
  });
}

const ROWS = 'section:not([hidden]) tbody tr:not([hidden])';

/**
 * The boxes that stand in the page just now, in their order.
 *
 * @returns {readonly HTMLElement[]}
 */
function boxesInSight() {
  const boxes = document.querySelectorAll(`${ROWS} button.box:not([hidden])`);
  return [...boxes].filter((box) => box instanceof HTMLElement);
}

/** Goes to the first box, or where none can be ticked to the first card. */
export function goToFirst() {
  const [box = one(`${ROWS} a`, HTMLElement)] = boxesInSight();
  box?.focus();
}

/**
 * @param {HTMLElement} from
 * @param {(at: number, count: number) => number} way
 */
function move(from, way) {
  const boxes = boxesInSight();
  boxes[way(boxes.indexOf(from), boxes.length)]?.focus();
}
