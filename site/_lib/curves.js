import { em, grouped, tenths } from './bars.js';
import { markup } from './markup.js';

/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {NonNullable<PublicSet['products'][number]['complete']>[number]} Completion */

/**
 * What a scale of packs spans: its first line and its last.
 *
 * @typedef {{ readonly from: number, readonly to: number }} Span
 */

/** Of how many of a hundred collectors each point of a curve is. */
const SHARES = [...Array.from({ length: 19 }, (_, at) => (at + 1) * 5), 99];

/** Where the plot stands: hundredths of the width, and em. */
const LEFT = 11;
const RIGHT = 96;
const TOP = 0.8;
const HIGH = 12;

/** Most lines that all have their number, and how far apart the ends are if every other has. */
const ALL_NUMBERED = 5;
const CLOSE = 130;

/** Lines that are told apart without colour; '' is a whole one. */
const DASHES = ['', '7 4', '2 3', '10 3 2 3', '1 5'];

/** Where the number of a curve stands on it, in turn, so that those of neighbours stay apart. */
const NUMBERED = [50, 75, 25];

/**
 * The span of the curves of all products of a set, so that they can be compared.
 *
 * @param {readonly Completion[]} all
 * @returns {Span}
 */
export function spanOf(all) {
  const least = Math.min(...all.map(({ curve }) => curve[0] ?? 1));
  const most = Math.max(...all.map(({ ninetyNine }) => ninetyNine));
  const lines = roundNumbers(most * 10);
  const from = lines.filter((line) => line <= least).at(-1) ?? 1;
  return { from, to: lines.find((line) => line >= most && line > from) ?? most };
}

/**
 * 1, 2, 5, 10, 20, 50 … up to a number.
 *
 * @param {number} most
 */
function roundNumbers(most) {
  const lines = [];
  for (let ten = 1; ten <= most; ten *= 10) lines.push(ten, 2 * ten, 5 * ten);
  return lines;
}

/**
 * How many of a hundred collectors have all cards after so many packs, a curve for each subset. The
 * table beside it has the numbers of the curves.
 *
 * @param {object} picture
 * @param {string} picture.id
 * @param {string} picture.title
 * @param {string} picture.about
 * @param {readonly Completion[]} picture.complete
 * @param {Span} picture.span
 */
export function curvePicture({ id, title, about, complete, span }) {
  return markup`<figure class="drawn"><figcaption>${title}</figcaption>
<svg role="img" aria-labelledby="${id}--title ${id}--about" width="100%" height="${em(TOP + HIGH + 2.1)}">
<title id="${id}--title">${title}</title><desc id="${id}--about">${about}</desc>
${[0, 25, 50, 75, 100].map(shareLine)}${packLines(span)}
<svg x="${LEFT}%" y="${em(TOP)}" width="${RIGHT - LEFT}%" height="${em(HIGH)}" viewBox="0 0 1000 1000" preserveAspectRatio="none">
${complete.map((own, at) => line(own, at, span))}</svg>
${complete.map((own, at) => number(own, at, span))}</svg></figure>
`;
}

/** @param {number} share */
function shareLine(share) {
  const y = em(heightOf(share));
  return markup`<line class="grid" x1="${LEFT}%" x2="${RIGHT}%" y1="${y}" y2="${y}"/><text class="scale end" x="${LEFT - 2}%" y="${em(heightOf(share) + 0.35)}">${share}</text>
`;
}

/** @param {Span} span */
function packLines(span) {
  const lines = roundNumbers(span.to).filter((line) => line >= span.from && line <= span.to);
  const isFar = span.to / span.from > CLOSE;
  return lines.map((packs) => {
    const x = tenths(LEFT + placeOf(packs, span) * (RIGHT - LEFT));
    const first = String(packs).charAt(0);
    const isTold = lines.length <= ALL_NUMBERED || first === '1' || (first === '5' && !isFar);
    const told =
      isTold &&
      markup`<text class="scale middle" x="${x}%" y="${em(TOP + HIGH + 1.7)}">${grouped(packs)}</text>`;
    return markup`<line class="grid" x1="${x}%" x2="${x}%" y1="${em(TOP)}" y2="${em(TOP + HIGH)}"/>${told}
`;
  });
}

/**
 * @param {Completion} completion
 * @param {number} at
 * @param {Span} span
 */
function line({ curve }, at, span) {
  const points = curve.map((packs, point) => {
    const x = Math.round(placeOf(packs, span) * 1000);
    return `${String(x)} ${String(1000 - (SHARES[point] ?? 0) * 10)}`;
  });
  const dash = DASHES[at % DASHES.length] ?? '';
  const dashed = dash !== '' && markup` stroke-dasharray="${dash}"`;
  return markup`<path class="curve" d="M${points.join('L')}"${dashed}/>
`;
}

/**
 * @param {Completion} completion
 * @param {number} at
 * @param {Span} span
 */
function number({ curve }, at, span) {
  const share = NUMBERED[at % NUMBERED.length] ?? 50;
  const packs = curve[SHARES.indexOf(share)] ?? span.from;
  const x = tenths(LEFT + placeOf(packs, span) * (RIGHT - LEFT));
  return markup`<circle class="knot" cx="${x}%" cy="${em(heightOf(share))}" r="0.7em"/><text class="middle" x="${x}%" y="${em(heightOf(share) + 0.35)}">${at + 1}</text>
`;
}

/** @param {number} share */
function heightOf(share) {
  return TOP + HIGH * (1 - share / 100);
}

/**
 * From 0 at the first line to 1 at the last.
 *
 * @param {number} packs
 * @param {Span} span
 */
function placeOf(packs, { from, to }) {
  return Math.log(packs / from) / Math.log(to / from);
}
