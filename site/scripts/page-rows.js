import { one, seenText } from './elements.js';
import { foldedWords } from './search-words.js';

/** @typedef {import('./collection.js').Collection} Collection */
/** @typedef {import('./collection.js').ListCard} ListCard */
/** @typedef {import('./collection.js').Printing} Printing */

/**
 * The table of a subset, as it stands in the page.
 *
 * @typedef {object} Table
 * @property {string} title
 * @property {boolean} base
 * @property {string} head What a want list of this subset alone opens with.
 * @property {ReadonlySet<string>} of The parallels that it is printed in besides.
 * @property {HTMLTableElement} table
 * @property {Element | null} section
 * @property {readonly Row[]} rows As published.
 *
 * @typedef {object} Row
 * @property {HTMLTableRowElement} tr
 * @property {ListCard} card
 * @property {string} subset The title of its subset.
 * @property {ReadonlySet<string>} of
 */

/** @returns {readonly Table[]} */
export function readTables() {
  return [...document.querySelectorAll('table.cards')]
    .filter((table) => table instanceof HTMLTableElement)
    .map(tableOf);
}

/**
 * @param {HTMLTableElement} table
 * @returns {Table}
 */
function tableOf(table) {
  const { subset: id = '', title = '', group, head = '', of: parallels = '' } = table.dataset;
  const of = new Set(parallels.split(' ').filter((each) => each !== ''));
  /** @type {Set<string>} */
  const taken = new Set();
  const rows = [...(table.tBodies[0]?.rows ?? [])].map((tr) => {
    return { tr, card: cardOf(tr, id, taken), subset: title, of };
  });
  return {
    title,
    base: group === 'base',
    head,
    of,
    table,
    section: table.closest('section'),
    rows,
  };
}

/**
 * @param {HTMLTableRowElement} tr
 * @param {string} subset
 * @param {Set<string>} taken Keys of rows before it: of two alike, only the first can be ticked.
 * @returns {ListCard}
 */
function cardOf(tr, subset, taken) {
  const { number = null, letter = '' } = tr.dataset;
  const name = foldedWords(tr.querySelector('.name')?.textContent ?? '').join('');
  const key = `${subset}/${number === null ? `:${name}` : number}${letter}`;
  const can = tr.querySelector('td.tick') !== null && !taken.has(key);
  taken.add(key);
  return { key, number, letter, can };
}

/** @param {Row} row */
export function printedIn({ card: { number, letter } }) {
  return `${number ?? ''}${letter}`;
}

/**
 * The name of a row as far as it is told just now.
 *
 * @param {Row} row
 */
export function nameIn({ tr }) {
  const name = one('th:not(.number), .named', HTMLTableCellElement, tr);
  return name === null ? '' : seenText(name).trim();
}

/**
 * "LC-4 The fourth gate".
 *
 * @param {Row} row
 */
export function labelOf(row) {
  return `${printedIn(row)} ${nameIn(row)}`.trim() || `a card of ${row.subset}`;
}

/**
 * @param {string} head
 * @param {readonly Table[]} tables
 * @param {readonly Printing[]} parallels
 * @returns {Collection}
 */
export function collectionOf(head, tables, parallels) {
  return {
    head,
    parallels: parallels.filter(({ id }) => tables.some(({ of }) => of.has(id))),
    subsets: tables.map(({ title, base, of, rows }) => {
      return { title, base, of, cards: rows.map(({ card }) => card) };
    }),
  };
}
