import { made, one } from './elements.js';
import { labelOf, nameIn, printedIn } from './page-rows.js';
import { isCollected } from './collection.js';
import { isPrintedIn } from './tick-cells.js';
import { countOf, PLAIN } from './ticks.js';

/** @typedef {import('./collection.js').Collection} Collection */
/** @typedef {import('./page-rows.js').Table} Table */
/** @typedef {import('./ticks.js').Ticks} Ticks */

/**
 * Prints what is missing, of every printing that is collected, on a sheet of its own; then the
 * page is as it was.
 *
 * @param {Collection} collection
 * @param {readonly Table[]} tables
 * @param {Ticks} ticks
 */
export function printWant(collection, tables, ticks) {
  const sheet = one('.want-sheet', HTMLElement);
  if (sheet === null) return;
  const dated = one('.list-day', HTMLElement, sheet);
  const legal = document.querySelector('.colophon .legal');
  sheet.replaceChildren(
    made('h1', `${collection.head}: want list`),
    ...(dated ? [dated] : []),
    ...partsOf(collection, tables, ticks),
    ...(legal ? [legal.cloneNode(true)] : []),
  );
  sheet.hidden = false;
  document.documentElement.classList.add('printing-want');
  addEventListener('afterprint', () => putAway(sheet), { once: true });
  print();
}

/** @param {HTMLElement} sheet */
function putAway(sheet) {
  sheet.hidden = true;
  document.documentElement.classList.remove('printing-want');
}

/**
 * @param {Collection} collection
 * @param {readonly Table[]} tables
 * @param {Ticks} ticks
 */
function partsOf(collection, tables, ticks) {
  const printings = [{ id: PLAIN, title: '' }, ...collection.parallels];
  const collected = printings.filter(({ id }) => isCollected(collection, ticks, id));
  const parts = collected.flatMap((printing) =>
    tables.flatMap((table) => partOf(table, printing, ticks)),
  );
  return parts.length > 0 ? parts : [made('p', 'Nothing is missing.')];
}

/**
 * @param {Table} table
 * @param {import('./collection.js').Printing} printing
 * @param {Ticks} ticks
 */
function partOf({ title, rows }, printing, ticks) {
  const missing = rows.filter(
    (row) => isPrintedIn(row, printing.id) && countOf(ticks, printing.id, row.card.key) === 0,
  );
  if (missing.length === 0) return [];
  const list = document.createElement('ul');
  list.append(
    ...missing.map((row) => {
      const line = document.createElement('li');
      const number = printedIn(row);
      const name = number === '' ? labelOf(row) : nameIn(row);
      line.append(made('span', number, 'number'), ' ', made('span', name, 'name'));
      return line;
    }),
  );
  return [made('h2', printing.title === '' ? title : `${printing.title}: ${title}`), list];
}
