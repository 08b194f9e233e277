import { plainDay } from './dates.js';
import { markup } from './markup.js';
import { cardRow, numberOf, remarksOf } from './rows.js';
import { folded } from './told.js';
import { listed, printed, runWords, series } from './words.js';

export { numberOf };

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./rows.js').RowsOf} RowsOf */
/** @typedef {import('./types.js').PublicCard} PublicCard */
/** @typedef {import('./types.js').PublicData} PublicData */
/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {import('./types.js').PublicSubset} PublicSubset */
/** @typedef {PublicSet['parallels'][number]} Parallel */
/** @typedef {PublicSet['corrections'][number]} Correction */

/**
 * A table: what it is, what it is about, the heads of its columns, its rows.
 *
 * @param {Markup} opening
 * @param {Markup | string} caption
 * @param {Markup | readonly Markup[]} heads
 * @param {readonly Markup[]} rows
 */
export function table(opening, caption, heads, rows) {
  return markup`<table ${opening}>
<caption>${caption}</caption>
<thead><tr>${heads}</tr></thead>
<tbody>
${rows}</tbody>
</table>`;
}

/** @param {readonly string[]} titles */
export function plainHeads(titles) {
  return titles.map((title) => markup`<th scope="col">${title}</th>`);
}

/** Up to how many signs the numbers of a table are narrow, and up to how many they are not wide. */
const NARROW = 3;
const MIDDLE = 6;

/**
 * The cards of a subset, in the order that is given. A column that would stay empty is left out.
 *
 * @param {PublicSubset} subset
 * @param {PublicSet} set
 * @param {string} head What a want list of this subset alone opens with.
 * @param {RowsOf} page
 * @returns {Markup | null}
 */
export function cardTable(subset, set, head, page) {
  const { cards } = subset;
  if (cards.length === 0) return null;
  const lines = cards.map((card) => ({ card, remarks: remarksOf(card, page) }));
  const columns = {
    numbered: cards.some(({ number }) => number !== null),
    noted: lines.some(({ remarks }) => remarks !== null),
  };
  const numberHead = columns.numbered && markup`<th scope="col" class="number">Number</th>`;
  const notesHead = columns.noted && markup`<th scope="col" class="notes">Notes</th>`;
  return table(
    markup`class="cards ${widthOf(cards)}${columns.noted && ' noted'}" ${dataOf(subset, set, head)}`,
    markup`<span class="unseen">${subset.title}: </span>${listed(subset.listed)}`,
    markup`${numberHead}<th scope="col">Name</th>${notesHead}<th scope="col" class="tick">Have</th>`,
    lines.map(({ card, remarks }) => cardRow(card, remarks, columns, page)),
  );
}

/**
 * How wide the numbers of a table are, as a class.
 *
 * @param {readonly PublicCard[]} cards
 */
function widthOf(cards) {
  const longest = Math.max(...cards.map((card) => printed(card).length));
  if (longest === 0) return 'no-numbers';
  if (longest <= NARROW) return 'narrow';
  return longest <= MIDDLE ? 'middle' : 'wide';
}

/**
 * What the script of the page reads of a subset.
 *
 * @param {PublicSubset} subset
 * @param {PublicSet} set
 * @param {string} head
 */
function dataOf({ id, title, group }, { parallels }, head) {
  const of = parallels
    .filter((parallel) => parallel.of.includes(id))
    .map((parallel) => parallel.id);
  return markup`data-subset="${id}" data-title="${title}" data-group="${group}" data-of="${of.join(' ')}" data-head="${head}"`;
}

/**
 * @param {PublicSet} set
 * @returns {Markup | null}
 */
export function parallelTable(set) {
  if (set.parallels.length === 0) return null;
  const titles = new Map(set.subsets.map((subset) => [subset.id, subset.title]));
  return table(
    markup`class="parallels"`,
    'The same cards in other finishes',
    plainHeads(['Name', 'Of', 'Run', 'How to tell']),
    set.parallels.map((parallel) => parallelRow(parallel, titles)),
  );
}

/**
 * @param {Parallel} parallel
 * @param {ReadonlyMap<string, string>} titles
 */
function parallelRow({ title, of, run, tell }, titles) {
  const name = markup`<th scope="row"><span class="name">${title}</span></th>`;
  const subsets = series(of.map((id) => titles.get(id) ?? id));
  const copies = run === null ? '' : `${runWords(run)}${run === 1 ? '' : ' of each'}`;
  return markup`<tr>${name}<td>${subsets}</td><td>${copies}</td><td>${tell}</td></tr>\n`;
}

/**
 * @param {PublicSet} set
 * @param {string} root
 * @param {PublicData} data
 * @returns {Markup | null}
 */
export function correctionTable(set, root, data) {
  if (set.corrections.length === 0) return null;
  return table(
    markup`class="corrections"`,
    'Printed or listed wrongly before',
    plainHeads(['Day', 'Card', 'Was, and is']),
    set.corrections.map((correction) => correctionRow(correction, root, data)),
  );
}

/**
 * @param {Correction} correction
 * @param {string} root
 * @param {PublicData} data
 */
function correctionRow({ number, letter, page, level, at, was, now, note }, root, data) {
  const words = number === null ? 'the set' : `${number}${letter ?? ''}`;
  const linked = page === null ? words : markup`<a href="${root}${page}">${words}</a>`;
  const further = note !== null && markup` <span class="note">${note}</span>`;
  const change = folded(markup`<del>${was}</del> <ins>${now}</ins>${further}`, level, data);
  return markup`<tr><td>${plainDay(at)}</td><th scope="row">${linked}</th><td>${change}</td></tr>\n`;
}
