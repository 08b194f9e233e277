import { markup } from './markup.js';

/** @typedef {import('./markup.js').Markup} Markup */

/**
 * What a bar is of: its title, how much it is, and how that is said.
 *
 * @typedef {{ readonly title: string, readonly amount: number, readonly says: string }} Bar
 */

/** Where the line of 1 stands and where the last one does, in hundredths of the width. */
const FIRST = 12;
const LAST = 94;

/** Heights in em, since the letters are as large in a narrow picture as in a wide one. */
const HEAD = 1.6;
const ROW = 2.3;

/** Signs of a title that stand above a bar on a telephone. */
const WIDEST = 36;

/** Signs of a number that has room over the last line, and up to how many lines all have theirs. */
const WIDE = 5;
const ALL_NUMBERED = 4;

/**
 * How many times ten it takes to reach the largest of these amounts, at least once.
 *
 * @param {readonly number[]} amounts whole numbers above 0
 */
export function decadesOf(amounts) {
  return Math.max(1, Math.ceil(Math.log10(Math.max(...amounts))));
}

/**
 * Bars on a logarithmic scale, one below the other. What they say stands in a table as well.
 *
 * @param {object} picture
 * @param {string} picture.id
 * @param {string} picture.title What it is of.
 * @param {string} picture.about What it shows, in a sentence.
 * @param {readonly Bar[]} picture.bars
 * @param {number} picture.decades How far the scale goes.
 */
export function barPicture({ id, title, about, bars, decades }) {
  const high = HEAD + bars.length * ROW;
  return markup`<figure class="drawn"><figcaption>${title}</figcaption>
<svg role="img" aria-labelledby="${id}--title ${id}--about" width="100%" height="${em(high)}">
<title id="${id}--title">${title}</title><desc id="${id}--about">${about}</desc>
${Array.from({ length: decades + 1 }, (_, at) => gridLine(at, decades, high))}
${bars.map((bar, at) => drawnBar(bar, at, decades))}</svg></figure>
`;
}

/**
 * A line of the scale, with its number where there is room.
 *
 * @param {number} power
 * @param {number} decades
 * @param {number} high
 */
function gridLine(power, decades, high) {
  const amount = 10 ** power;
  const x = placeOf(amount, decades);
  const words = grouped(amount);
  const isAtEdge = power === decades && words.length > WIDE;
  const place = isAtEdge ? markup`end" x="100%"` : markup`middle" x="${x}%"`;
  const told =
    (decades <= ALL_NUMBERED || power % 2 === 0) &&
    markup`<text class="scale ${place} y="1em">${words}</text>`;
  return markup`<line class="grid" x1="${x}%" x2="${x}%" y1="${em(HEAD - 0.3)}" y2="${em(high)}"/>${told}
`;
}

/**
 * @param {Bar} bar
 * @param {number} at
 * @param {number} decades
 */
function drawnBar({ title, amount, says }, at, decades) {
  const top = HEAD + at * ROW;
  return markup`<text x="0" y="${em(top + 1.1)}">${fitted(title)} <tspan class="scale">${says}</tspan></text><rect class="bar" y="${em(top + 1.45)}" width="${placeOf(amount, decades)}%" height="0.5em"/>
`;
}

/**
 * @param {number} amount
 * @param {number} decades
 */
function placeOf(amount, decades) {
  return tenths(FIRST + (Math.log10(amount) / decades) * (LAST - FIRST));
}

/**
 * Cut to what fits; the table has it whole.
 *
 * @param {string} title
 */
function fitted(title) {
  const signs = [...title];
  return signs.length <= WIDEST ? title : `${signs.slice(0, WIDEST - 1).join('')}…`;
}

/** @param {number} high */
export function em(high) {
  return `${String(tenths(high * 10) / 10)}em`;
}

/**
 * The same signs wherever a page is made.
 *
 * @param {number} figure
 */
export function tenths(figure) {
  return Math.round(figure * 10) / 10;
}

/** @param {number} count */
export function grouped(count) {
  return count.toLocaleString('en-GB');
}
