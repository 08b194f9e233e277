import { barPicture, decadesOf, grouped } from './bars.js';
import { completion } from './complete.js';
import { markup } from './markup.js';
import { plainHeads, table } from './tables.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {PublicSet['products'][number]} Product */
/** @typedef {Product['odds'][number]} Odds */

/** What must be said where odds are. */
export const CAUTIONS = [
  'Odds are averages over all the packs that are made, rounded up.',
  'A pack, a box or a case may hold more of something, fewer, or none.',
];

const PROMOTIONS =
  'Prizes and promotions have rules of their own, which stand where they are announced and not here.';

/**
 * How often something is found, as a table and as pictures, and what it takes to have all cards of
 * a subset; null where nothing is said.
 *
 * @param {PublicSet} set
 * @returns {Markup | null}
 */
export function oddsOf(set) {
  const rows = oddsTable(set);
  if (rows === null) return null;
  return markup`${rows}
<p class="terms">${PROMOTIONS}</p>
${foundPictures(set)}
${completion(set)}`;
}

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
 * From most often to rarest, on one scale for all products.
 *
 * @param {PublicSet} set
 */
function foundPictures({ products }) {
  const told = products.filter(({ odds }) => odds.length > 0);
  const decades = decadesOf(told.flatMap(({ odds }) => odds.map(({ packs }) => packs)));
  return markup`<h3>From often to rare</h3>
<p class="terms">The longer a bar, the more packs it takes: each line is ten times the one before.</p>
<div class="pictures">
${told.map(({ id, title, odds }) =>
  barPicture({
    id: `set--found--${id}`,
    title: `${title}: one in so many packs`,
    about:
      'A bar for each line of the table of odds, from what is found most often to what is rarest.',
    bars: odds
      .toSorted((a, b) => a.packs - b.packs)
      .map(({ title: of, packs }) => ({ title: of, amount: packs, says: `1:${grouped(packs)}` })),
    decades,
  }),
)}</div>`;
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
    return markup`<td>${own ? `1:${grouped(own.packs)}` : ''}</td>`;
  });
  return markup`<tr><th scope="row">${name}</th>${cells}</tr>\n`;
}
