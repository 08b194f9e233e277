import { nameIn, printedIn } from './page-rows.js';
import { seenText } from './elements.js';
import { matches, readQuery, searchKey } from './search-words.js';

/** @typedef {import('./page-rows.js').Row} Row */
/** @typedef {import('./page-rows.js').Table} Table */
/** @typedef {import('./search-words.js').SearchKey} SearchKey */

/** @typedef {'all' | 'missing' | 'doubles'} Show */

/**
 * Which rows stand in the page. What a tick changes is left where it is until somebody looks for
 * something else.
 */
export class Filter {
  typed = '';
  /** @type {Show} */
  show = 'all';
  /** @type {Map<Row, SearchKey> | null} */
  #keys = null;

  /**
   * @param {readonly Table[]} tables
   * @param {(row: Row) => number | null} countOf How many are had of the printing that is ticked;
   *   null where none can be.
   */
  constructor(tables, countOf) {
    this.tables = tables;
    this.countOf = countOf;
  }

  /** What is told has changed: what is folded away is not found. */
  forget() {
    this.#keys = null;
  }

  /** Reads what rows are found by, so that the first letter is as quick as the next. */
  prepare() {
    const rows = this.#keys === null ? this.tables.flatMap((table) => table.rows) : [];
    this.#keys ??= new Map(rows.map((row) => [row, keyOf(row)]));
    return this.#keys;
  }

  get isOn() {
    return this.show !== 'all' || readQuery(this.typed) !== null;
  }

  /** Hides and shows. @returns {string} how many rows are left, in words; empty without a filter */
  apply() {
    const query = readQuery(this.typed);
    const keys = query === null ? null : this.prepare();
    let [left, all] = [0, 0];
    for (const { rows, section } of this.tables) {
      let here = 0;
      for (const row of rows) {
        // A number that was pulled has a row, and no card: the page's own count leaves it out too.
        const cards = row.tr.classList.contains('not-issued') ? 0 : 1;
        const key = keys?.get(row);
        const isFound = query === null || (key !== undefined && matches(key, query));
        const isMeant = isFound && this.#shows(row);
        if (row.tr.hidden === isMeant) row.tr.hidden = !isMeant;
        if (isMeant) {
          here += 1;
          left += cards;
        }
        all += cards;
      }
      if (section instanceof HTMLElement) section.hidden = here === 0;
    }
    const { classList } = document.documentElement;
    classList.toggle('finding', this.isOn);
    classList.toggle('looking', query !== null);
    return this.isOn ? `${String(left)} of ${String(all)} ${all === 1 ? 'card' : 'cards'}` : '';
  }

  /** @param {Row} row */
  #shows(row) {
    if (this.show === 'all') return true;
    const count = this.countOf(row);
    if (count === null) return false;
    return this.show === 'missing' ? count === 0 : count > 1;
  }
}

/**
 * @param {Row} row
 * @returns {SearchKey}
 */
function keyOf(row) {
  const { tr, subset } = row;
  const notes = tr.querySelector('.notes');
  const standing = tr.classList.contains('to-come') ? 'to be revealed' : 'revealed';
  return searchKey({
    number: printedIn(row),
    name: nameIn(row),
    texts: [subset, notes ? seenText(notes) : '', tr.dataset['credits'] ?? ''],
    standing: tr.classList.contains('not-issued') ? 'not issued' : standing,
  });
}
