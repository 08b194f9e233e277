import { HELD } from './bio.js';
import { plainDay } from './dates.js';
import { markup } from './markup.js';
import { isNameless, listed, notes, printed, runWords, series } from './words.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./types.js').PublicCard} PublicCard */
/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {import('./types.js').PublicSubset} PublicSubset */
/** @typedef {PublicSet['parallels'][number]} Parallel */
/** @typedef {PublicSet['corrections'][number]} Correction */

/**
 * A table: what it is about, the heads of its columns, its rows.
 *
 * @param {string} kind
 * @param {Markup | string} caption
 * @param {Markup | readonly Markup[]} heads
 * @param {readonly Markup[]} rows
 */
function table(kind, caption, heads, rows) {
  return markup`<table class="${kind}">
<caption>${caption}</caption>
<thead><tr>${heads}</tr></thead>
<tbody>
${rows}</tbody>
</table>`;
}

/** @param {readonly string[]} titles */
function plainHeads(titles) {
  return titles.map((title) => markup`<th scope="col">${title}</th>`);
}

/**
 * The cards of a subset, in the order that is given. A column that would stay empty is left out.
 *
 * @param {PublicSubset} subset
 * @param {string} root
 * @param {string} zone
 * @returns {Markup | null}
 */
export function cardTable(subset, root, zone) {
  if (subset.cards.length === 0) return null;
  const lines = subset.cards.map((card) => ({ card, said: notes(card, zone) }));
  const numbered = lines.some(({ card }) => card.number !== null);
  const noted = lines.some(({ said }) => said.length > 0);
  const numberHead = numbered && markup`<th scope="col" class="number">Number</th>`;
  const notesHead = noted && markup`<th scope="col" class="notes">Notes</th>`;
  return table(
    'cards',
    markup`<span class="unseen">${subset.title}: </span>${listed(subset.listed)}`,
    markup`${numberHead}<th scope="col">Name</th>${notesHead}`,
    lines.map(({ card, said }) => cardRow(card, said, { numbered, noted, root })),
  );
}

/**
 * @param {PublicCard} card
 * @param {readonly Markup[]} said
 * @param {{ readonly numbered: boolean, readonly noted: boolean, readonly root: string }} how
 */
function cardRow(card, said, { numbered, noted, root }) {
  const kind = rowKind(card);
  const number = numbered && markup`<td class="number">${numberOf(card)}</td>`;
  const name = markup`<th scope="row">${nameOf(card, root)}</th>`;
  const remarks = noted && markup`<td class="notes">${joined(said)}</td>`;
  return markup`<tr${kind !== '' && markup` class="${kind}"`}>${number}${name}${remarks}</tr>\n`;
}

/** @param {PublicCard} card */
function rowKind(card) {
  if (card.state === 'placeholder') return 'to-come';
  if (card.state === 'not issued') return 'not-issued';
  return card.letter === null ? '' : 'variation';
}

/**
 * The printed number; the letter of a variation stands apart a little.
 *
 * @param {PublicCard} card
 */
export function numberOf(card) {
  if (card.number === null) return markup`<span class="unseen">no number</span>`;
  const letter = card.letter !== null && markup`<span class="letter">${card.letter}</span>`;
  return markup`${card.number}${letter}`;
}

/**
 * @param {PublicCard} card
 * @param {string} root
 */
function nameOf(card, root) {
  const name = isNameless(card) ? HELD : markup`${card.name}`;
  if (card.page === null) return markup`<span class="name">${name}</span>`;
  const label = isNameless(card) && markup` aria-label="${printed(card)}, to be revealed"`;
  return markup`<a class="name" href="${root}${card.page}"${label}>${name}</a>`;
}

/** @param {readonly Markup[]} phrases */
function joined(phrases) {
  return phrases.map((phrase, index) => markup`${index > 0 && '; '}${phrase}`);
}

/**
 * @param {PublicSet} set
 * @returns {Markup | null}
 */
export function parallelTable(set) {
  if (set.parallels.length === 0) return null;
  const titles = new Map(set.subsets.map((subset) => [subset.id, subset.title]));
  return table(
    'parallels',
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
 * @returns {Markup | null}
 */
export function correctionTable(set) {
  if (set.corrections.length === 0) return null;
  return table(
    'corrections',
    'Printed or listed wrongly before',
    plainHeads(['Day', 'Card', 'Was, and is']),
    set.corrections.map(correctionRow),
  );
}

/** @param {Correction} correction */
function correctionRow({ number, at, was, now, note }) {
  const card = markup`<th scope="row">${number ?? 'the set'}</th>`;
  const further = note !== null && markup` <span class="note">${note}</span>`;
  const change = markup`<del>${was}</del> <ins>${now}</ins>${further}`;
  return markup`<tr><td>${plainDay(at)}</td>${card}<td>${change}</td></tr>\n`;
}
