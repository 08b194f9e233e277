import { made } from './elements.js';
import { nameIn } from './page-rows.js';

/** @typedef {import('./page-rows.js').Row} Row */
/** @typedef {import('./page-rows.js').Table} Table */

const names = new Intl.Collator('en', { numeric: true });

/** @typedef {'number' | 'name'} Order */

/**
 * Makes the heads of number and name to what sorts every table of the page: as printed, or by name
 * as far as names are told. A second press of the name goes back.
 *
 * @param {readonly Table[]} tables
 * @param {(order: Order) => void} sorted
 */
export function startSorting(tables, sorted) {
  const heads = tables.flatMap(({ table }) => headsOf(table));
  /** @type {Order} */
  let order = 'number';
  for (const { head, by } of heads) {
    const button = made('button', head.textContent ?? '');
    button.setAttribute('type', 'button');
    head.replaceChildren(button);
    button.addEventListener('click', () => {
      order = by === 'name' && order === 'name' ? 'number' : by;
      for (const table of tables) sortTable(table, order);
      mark(heads, order);
      button.focus();
      sorted(order);
    });
  }
  mark(heads, order);
}

/**
 * @param {HTMLTableElement} table
 * @returns {readonly { readonly head: HTMLElement, readonly by: Order }[]}
 */
function headsOf(table) {
  const cells = [...(table.tHead?.rows[0]?.cells ?? [])];
  return cells
    .filter(({ className }) => className === 'number' || className === '')
    .map((head) => ({ head, by: head.className === 'number' ? 'number' : 'name' }));
}

/**
 * @param {readonly { readonly head: HTMLElement, readonly by: Order }[]} heads
 * @param {Order} order
 */
function mark(heads, order) {
  for (const { head, by } of heads) {
    if (by === order) head.setAttribute('aria-sort', 'ascending');
    else head.removeAttribute('aria-sort');
  }
}

/**
 * @param {Table} table
 * @param {Order} order
 */
function sortTable({ table, rows }, order) {
  const ordered = order === 'number' ? rows : byName(rows);
  table.tBodies[0]?.append(...ordered.map(({ tr }) => tr));
}

/**
 * Rows whose name is not told come last.
 *
 * @param {readonly Row[]} rows
 */
function byName(rows) {
  const named = rows.map((row) => {
    const isTold = row.tr.querySelector('.name > .held') === null;
    return { row, name: isTold ? nameIn(row) : '' };
  });
  const told = named.filter(({ name }) => name !== '');
  const others = named.filter(({ name }) => name === '');
  told.sort((a, b) => names.compare(a.name, b.name));
  return [...told, ...others].map(({ row }) => row);
}
