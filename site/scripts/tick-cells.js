import { made } from './elements.js';
import { labelOf, printedIn } from './page-rows.js';
import { countOf, PLAIN } from './ticks.js';

/** @typedef {import('./page-rows.js').Row} Row */
/** @typedef {import('./ticks.js').Ticks} Ticks */

/**
 * The box of a card, and what adds one more to it.
 *
 * @typedef {object} TickCell
 * @property {Row} row
 * @property {HTMLElement} box
 * @property {HTMLElement} plus
 * @property {string} label
 * @property {number | null} shown How many it shows; null if that must be written anew.
 */

/**
 * @param {readonly Row[]} rows
 * @returns {readonly TickCell[]}
 */
export function makeCells(rows) {
  const boxes = made('button', '', 'box');
  const pluses = made('button', '', 'plus');
  for (const button of [boxes, pluses]) button.setAttribute('type', 'button');
  return rows
    .filter(({ card }) => card.can)
    .map((row) => {
      const box = boxes.cloneNode();
      const plus = pluses.cloneNode();
      if (!(box instanceof HTMLElement) || !(plus instanceof HTMLElement)) throw new TypeError();
      row.tr.lastElementChild?.append(plus, box);
      return { row, box, plus, label: '', shown: null };
    });
}

/**
 * Names the boxes after their cards, as far as those are told just now.
 *
 * @param {readonly TickCell[]} cells
 */
export function nameCells(cells) {
  for (const cell of cells) {
    cell.label = labelOf(cell.row);
    cell.shown = null;
    cell.plus.setAttribute('aria-label', `${printedIn(cell.row) || cell.label}: one more`);
  }
}

/**
 * @param {readonly TickCell[]} cells
 * @param {string} printing
 * @param {Ticks} ticks
 */
export function showCells(cells, printing, ticks) {
  for (const cell of cells) {
    const applies = isPrintedIn(cell.row, printing);
    if (cell.box.hidden === applies) cell.box.hidden = !applies;
    showCount(cell, applies ? countOf(ticks, printing, cell.row.card.key) : 0);
  }
}

/**
 * @param {Row} row
 * @param {string} printing
 */
export function isPrintedIn({ card, of }, printing) {
  return card.can && (printing === PLAIN || of.has(printing));
}

/**
 * @param {TickCell} cell
 * @param {number} count
 */
function showCount(cell, count) {
  const { box, plus, label } = cell;
  if (cell.shown === count) return;
  cell.shown = count;
  const words = count > 1 ? String(count) : '';
  if (box.textContent !== words) box.textContent = words;
  box.classList.toggle('had', count === 1);
  box.setAttribute('aria-label', `${label}: have ${count === 0 ? 'none' : String(count)}`);
  plus.hidden = count === 0;
}
