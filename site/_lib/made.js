import { barPicture, decadesOf, grouped } from './bars.js';
import { markup } from './markup.js';
import { plainHeads, table } from './tables.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./types.js').PublicSet} PublicSet */

/**
 * The runs that are told, as a table and a picture; null where none is.
 *
 * @param {PublicSet} set
 * @returns {Markup | null}
 */
export function runsMade({ made = [] }) {
  if (made.length === 0) return null;
  const rows = made.map(
    ({ title, cards, copies }) =>
      markup`<tr><th scope="row"><span class="name">${title}</span></th><td>${grouped(cards)}</td><td>${grouped(copies)}</td></tr>\n`,
  );
  const heads = plainHeads(['Name', 'Cards', 'Copies']);
  return markup`<div class="pictures">
${table(markup`class="parallels figures"`, 'How many are made of each card, where it is told', heads, rows)}
${barPicture({
  id: 'set--made',
  title: 'Copies of each card, each line ten times the one before',
  about: 'A bar for each row of the table, from most copies to fewest.',
  bars: made.map(({ title, copies }) => ({ title, amount: copies, says: grouped(copies) })),
  decades: decadesOf(made.map(({ copies }) => copies)),
})}</div>`;
}
