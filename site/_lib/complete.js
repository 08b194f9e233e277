import { grouped } from './bars.js';
import { curvePicture, spanOf } from './curves.js';
import { markup } from './markup.js';
import { plainHeads, table } from './tables.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {PublicSet['products'][number]} Product */
/** @typedef {import('./curves.js').Completion} Completion */

const MODEL = [
  'How many packs it takes a collector who does not trade: on average, and until 50, 90 and 99 of a hundred have every card.',
  'This holds if each card of a subset is as common as the others, and packs are filled by chance. It is worked out from the odds above, not promised.',
];

const HEADS = ['Subset', 'Average', '50 %', '90 %', '99 %'];

/**
 * What it takes to have all cards of a subset, product by product, with its curves; null where
 * nothing can be told.
 *
 * @param {PublicSet} set
 * @returns {Markup | null}
 */
export function completion({ products }) {
  const told = products.flatMap(({ id, title, complete = [] }) =>
    complete.length === 0 ? [] : [{ id, title, complete }],
  );
  if (told.length === 0) return null;
  const span = spanOf(told.flatMap(({ complete }) => complete));
  return markup`<h3>Every card of a subset</h3>
${MODEL.map((sentence) => markup`<p class="terms">${sentence}</p>\n`)}${told.map(
    ({ id, title, complete }) => markup`<div class="pictures">
${completionTable(title, complete)}
${curvePicture({
  id: `set--complete--${id}`,
  title: `${title}: of 100 collectors, how many have every card after so many packs`,
  about: `A curve for each subset that rises with the packs that are opened, on a scale where equal steps are equal multiples. The points at half, 90 and 99 of 100 are in the table.`,
  complete,
  span,
})}</div>
`,
  )}`;
}

/**
 * @param {string} title
 * @param {readonly Completion[]} complete
 */
function completionTable(title, complete) {
  return table(
    markup`class="parallels figures"`,
    `${title}: packs for every card`,
    plainHeads(HEADS),
    complete.map(completionRow),
  );
}

/**
 * @param {Completion} completion
 * @param {number} at
 */
function completionRow({ subset, title, cards, expected, half, ninety, ninetyNine }, at) {
  const points = [expected, half, ninety, ninetyNine];
  return markup`<tr><th scope="row"><span class="knot" aria-hidden="true">${at + 1}</span> <a class="name" href="#${subset}">${title}</a> <span class="note">${grouped(cards)} cards</span></th>${points.map((packs) => markup`<td>${grouped(packs)}</td>`)}</tr>
`;
}
