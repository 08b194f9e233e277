import { one, say } from './elements.js';
import { Filter } from './filter.js';
import { collectionOf, readTables } from './page-rows.js';
import { showProgress } from './progress-line.js';
import { progressOf } from './progress.js';
import { Store } from './store.js';
import { isPrintedIn, makeCells, nameCells, showCells } from './tick-cells.js';
import { countOf, MOST, PLAIN } from './ticks.js';

/** @typedef {import('./tick-cells.js').TickCell} TickCell */
/** @typedef {import('./ticks.js').Change} Change */

/** The list of a set or of a subset, with what somebody has ticked of it. */
export class ListPage {
  #choice = one('#tools--printing', HTMLSelectElement);

  /**
   * @param {string} head What a want list of this page opens with.
   * @param {string} key What its ticks are kept under.
   */
  constructor(head, key) {
    this.parallels = [...(this.#choice?.options ?? [])]
      .filter(({ value }) => value !== PLAIN)
      .map(({ value, text }) => ({ id: value, title: text }));
    this.tables = readTables();
    this.collection = collectionOf(head, this.tables, this.parallels);
    this.parts = this.tables.map((table) => collectionOf(table.head, [table], this.parallels));
    this.store = new Store(keeper(), key);
    this.cells = makeCells(this.tables.flatMap(({ rows }) => rows));
    this.filter = new Filter(this.tables, (row) =>
      isPrintedIn(row, this.printing) ? countOf(this.ticks, this.printing, row.card.key) : null,
    );
    this.#choice?.addEventListener('change', () => this.showAnew());
    nameCells(this.cells);
    this.show();
  }

  /** The printing that is ticked just now. */
  get printing() {
    return this.#choice?.value ?? PLAIN;
  }

  get ticks() {
    return this.store.ticks;
  }

  /** Shows what is had. */
  show() {
    showCells(this.cells, this.printing, this.ticks);
    const title = this.parallels.find(({ id }) => id === this.printing)?.title ?? '';
    showProgress(progressOf(this.collection, this.ticks, this.printing, title));
    one('.undo', HTMLElement)?.setAttribute('aria-disabled', String(!this.store.canUndo));
    if (this.store.trouble !== null) say('.said', this.store.trouble);
  }

  /** Shows what is had and looks again for what is looked for. */
  showAnew() {
    this.show();
    say('.found', this.filter.apply());
  }

  /** What is told has changed. */
  nameAnew() {
    nameCells(this.cells);
    this.showAnew();
  }

  /** Somebody has ticked elsewhere. */
  refresh() {
    this.store.refresh();
    this.show();
  }

  /**
   * @param {TickCell} cell
   * @param {'tap' | 1 | -1} by
   */
  tick(cell, by) {
    const { printing } = this;
    const { key } = cell.row.card;
    const from = countOf(this.ticks, printing, key);
    const step = by === 'tap' ? (from === 0 ? 1 : -1) : by;
    const to = Math.min(Math.max(from + step, 0), MOST);
    this.store.change([{ printing, key, from, to }]);
    this.show();
    say('#tools--heard', cell.box.getAttribute('aria-label') ?? '');
  }

  /** @param {readonly Change[]} changes */
  change(changes) {
    const made = this.store.change(changes);
    this.showAnew();
    say('.said', this.store.trouble ?? `${cardsChanged(made.length)} Undo takes it back.`);
  }

  undo() {
    const back = this.store.undo();
    this.show();
    const [only] = back;
    if (!only) return say('.said', 'There is nothing to take back.');
    const cell = this.cells.find(({ row }) => row.card.key === only.key);
    const what =
      back.length === 1 && cell
        ? `${cell.label}: have ${only.to === 0 ? 'none' : String(only.to)}.`
        : cardsChanged(back.length);
    return say('.said', `Taken back. ${what}`);
  }
}

/** The storage of this device, where the browser gives it. */
function keeper() {
  try {
    return localStorage;
  } catch {
    return null;
  }
}

/** @param {number} count */
function cardsChanged(count) {
  return count === 1 ? '1 card is changed.' : `${String(count)} cards are changed.`;
}
