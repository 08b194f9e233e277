import { foldedNumber } from '../scripts/search-words.js';
import { Markup, markup } from './markup.js';
import { printed } from './words.js';

/** @typedef {import('./types.js').PublicData} PublicData */
/** @typedef {import('./types.js').PublicSet} PublicSet */

/** @type {Readonly<Record<string, string>>} */
const ESCAPES = { '<': '\\u003c', '>': '\\u003e', '&': '\\u0026' };

/**
 * The numbers of every set as the find box of the home page looks them up, and no names: data in
 * a page, which no browser runs.
 *
 * @param {PublicData} data
 * @returns {Markup}
 */
export function findIndex({ sets }) {
  const json = JSON.stringify(sets.map((set) => [set.id, foldedRuns(set)]));
  const text = new Markup(json.replace(/[<>&]/g, (sign) => ESCAPES[sign] ?? ''));
  return markup`<script type="application/json" id="find-index">${text}</script>`;
}

/**
 * The folded numbers of a set, neighbours as runs: "1-84 17b lc1-8".
 *
 * @param {PublicSet} set
 */
function foldedRuns({ subsets }) {
  const cards = subsets.flatMap((subset) => subset.cards);
  const numbers = [...new Set(cards.map((card) => foldedNumber(printed(card))))];
  /** @type {Map<string, number[]>} */
  const byPrefix = new Map();
  /** @type {string[]} */
  const others = [];
  for (const number of numbers) {
    const [, prefix, digits] = /^(.*?)(0|[1-9]\d{0,8})$/u.exec(number) ?? [];
    if (prefix === undefined) others.push(number);
    else byPrefix.set(prefix, [...(byPrefix.get(prefix) ?? []), Number(digits)]);
  }
  const runs = [...byPrefix].flatMap(([prefix, all]) => runsOf(prefix, all));
  return [...runs, ...others.filter((number) => number !== '')].join(' ');
}

/**
 * @param {string} prefix
 * @param {readonly number[]} values
 */
function runsOf(prefix, values) {
  /** @type {[number, number][]} */
  const runs = [];
  for (const value of [...values].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last !== undefined && last[1] + 1 === value) last[1] = value;
    else runs.push([value, value]);
  }
  return runs.map(([from, to]) => `${prefix}${String(from)}${from === to ? '' : `-${String(to)}`}`);
}
