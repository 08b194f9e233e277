import { markup } from './markup.js';
import { plainHeads, table } from './tables.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {PublicSet['products'][number]} Product */
/** @typedef {Product['odds'][number]} Odds */

/** What must be said where odds are. */
const CAUTIONS = [
  'Odds are averages over all the packs that are made, rounded up.',
  'A pack, a box or a case may hold more of something, fewer, or none.',
];

/**
 * How often something is found, a column for each product; null where nothing is said.
 *
 * @param {PublicSet} set
 * @returns {Markup | null}
 */
export function oddsTable({ products }) {
  const told = products.filter(({ odds }) => odds.length > 0);
  if (told.length === 0) return null;
  const rows = table(
    markup`class="parallels"`,
    'One in so many packs',
    plainHeads(['Found', ...told.map(({ title }) => title)]),
    rowsOf(told).map((found) => oddsRow(found, told)),
  );
  return markup`${rows}
${CAUTIONS.map((caution) => markup`<p class="terms">${caution}</p>\n`)}`;
}

/**
 * What is found in any product, once each, in the order in which it is told.
 *
 * @param {readonly Product[]} products
 * @returns {readonly Odds[]}
 */
function rowsOf(products) {
  /** @type {Map<string, Odds>} */
  const found = new Map();
  for (const odds of products.flatMap((product) => product.odds)) {
    if (!found.has(keyOf(odds))) found.set(keyOf(odds), odds);
  }
  return [...found.values()];
}

/** @param {Odds} odds */
function keyOf({ subset, parallel }) {
  return JSON.stringify([subset, parallel]);
}

/**
 * @param {Odds} found
 * @param {readonly Product[]} products
 */
function oddsRow(found, products) {
  const { subset, title } = found;
  const name =
    subset === null
      ? markup`<span class="name">${title}</span>`
      : markup`<a class="name" href="#${subset}">${title}</a>`;
  const cells = products.map(({ odds }) => {
    const own = odds.find((each) => keyOf(each) === keyOf(found));
    return markup`<td>${own ? `1:${own.packs.toLocaleString('en-GB')}` : ''}</td>`;
  });
  return markup`<tr><th scope="row">${name}</th>${cells}</tr>\n`;
}
