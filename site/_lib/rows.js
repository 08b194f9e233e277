import { HELD } from './bio.js';
import { day } from './dates.js';
import { markup } from './markup.js';
import { folded } from './told.js';
import { isNameless, notes, printed, series, signer } from './words.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./types.js').PublicCard} PublicCard */
/** @typedef {import('./types.js').PublicData} PublicData */
/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {import('./types.js').PublicSubset} PublicSubset */

/**
 * What the rows of a page need to know.
 *
 * @typedef {object} RowsOf
 * @property {string} root
 * @property {PublicData} data
 * @property {ReadonlyMap<PublicCard, string>} ids
 * @property {string | null} first The instant at which the first cards of the set were revealed.
 */

/**
 * @param {PublicSet} set
 * @param {string} root
 * @param {PublicData} data
 * @returns {RowsOf}
 */
export function rowsOf(set, root, data) {
  return { root, data, ids: rowIds(set), first: firstReveal(set) };
}

/**
 * The places of the cards on the page of their set: letters, digits and hyphens, each once.
 *
 * @param {PublicSet} set
 * @returns {ReadonlyMap<PublicCard, string>}
 */
export function rowIds({ subsets }) {
  const taken = new Set(['set--parallels', 'set--corrections', 'set--files']);
  for (const { id } of subsets) taken.add(`${id}--title`);
  /** @type {Map<PublicCard, string>} */
  const ids = new Map();
  for (const subset of subsets) {
    for (const card of subset.cards) {
      const words = `${plain(subset.id)}--${plain(printed(card)) || 'card'}`;
      let id = words;
      for (let more = 2; taken.has(id); more += 1) id = `${words}-${String(more)}`;
      taken.add(id);
      ids.set(card, id);
    }
  }
  return ids;
}

/** @param {string} text */
function plain(text) {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}

/** @param {PublicSet} set */
function firstReveal({ subsets }) {
  const instants = subsets.flatMap(({ cards }) => cards.flatMap(({ revealed }) => revealed ?? []));
  /** @param {string} instant */
  const time = (instant) => Date.parse(instant.replace(/\[.*$/, ''));
  return instants.reduce(
    (/** @type {string | null} */ first, at) =>
      first === null || time(at) < time(first) ? at : first,
    null,
  );
}

/**
 * Whether somebody can have it: it is issued, and no placeholder.
 *
 * @param {PublicCard} card
 */
export function canBeHad({ state }) {
  return state === 'shown';
}

/**
 * The row of a card, with the cell in which it is ticked. Its name heads it, or its number where
 * the name is folded away.
 *
 * @param {PublicCard} card
 * @param {Markup | null} remarks
 * @param {{ readonly numbered: boolean, readonly noted: boolean }} columns
 * @param {RowsOf} page
 */
export function cardRow(card, remarks, { numbered, noted }, page) {
  const kind = rowKind(card);
  const its = markup`${kind !== '' && markup` class="${kind}"`}${dataOf(card)}`;
  const isFolded = card.nameLevel > 0;
  const inNumber = numberLink(card, page);
  const number = isFolded
    ? markup`<th scope="row" class="number">${inNumber}</th>`
    : markup`<td class="number">${inNumber}</td>`;
  const name = isFolded
    ? markup`<td class="named">${nameOf(card, page)}</td>`
    : markup`<th scope="row">${nameOf(card, page)}</th>`;
  const said = noted && markup`<td class="notes">${remarks}</td>`;
  const tick = canBeHad(card) ? markup`<td class="tick"></td>` : markup`<td></td>`;
  return markup`<tr id="${page.ids.get(card)}"${its}>${numbered && number}${name}${said}${tick}</tr>\n`;
}

/** @param {PublicCard} card */
function rowKind(card) {
  if (card.state === 'placeholder') return 'to-come';
  if (card.state === 'not issued') return 'not-issued';
  return card.letter === null ? '' : 'variation';
}

/**
 * What the script of the page reads of a row: whom a card is credited to is looked for, and stands
 * on its page alone.
 *
 * @param {PublicCard} card
 */
function dataOf({ number, letter, credits, creditsLevel }) {
  const ofNumber = number !== null && markup` data-number="${number}"`;
  const ofLetter = letter !== null && markup` data-letter="${letter}"`;
  const names = credits.map(({ name }) => name).join(', ');
  const isTold = names !== '' && creditsLevel === 0;
  return markup`${ofNumber}${ofLetter}${isTold && markup` data-credits="${names}"`}`;
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
 * The keyboard goes to the page by the name, unless that is folded away.
 *
 * @param {PublicCard} card
 * @param {RowsOf} page
 */
function numberLink(card, { root }) {
  if (card.page === null) return numberOf(card);
  const way = card.nameLevel === 0 && markup` tabindex="-1"`;
  return markup`<a href="${root}${card.page}"${way}>${numberOf(card)}</a>`;
}

/**
 * @param {PublicCard} card
 * @param {RowsOf} page
 */
function nameOf(card, { root, data }) {
  const name = isNameless(card) ? HELD : markup`${card.name}`;
  const label = isNameless(card) && markup` aria-label="${printed(card)}, to be revealed"`;
  const linked =
    card.page === null
      ? markup`<span class="name">${name}</span>`
      : markup`<a class="name" href="${root}${card.page}"${label}>${name}</a>`;
  return folded(linked, card.nameLevel, data);
}

/**
 * What is said beside a name.
 *
 * @param {PublicCard} card
 * @param {RowsOf} page
 * @returns {Markup | null}
 */
export function remarksOf(card, { data, first }) {
  const { zone } = data.property;
  const phrases = [...notes({ ...card, signers: [] }, zone)];
  if (card.revealed !== null && card.revealed !== first) {
    phrases.push(markup`revealed ${day(card.revealed, zone)}`);
  }
  const signed = card.signers.length > 0 && markup`signed by ${series(card.signers.map(signer))}`;
  if (signed && card.signersLevel === 0) phrases.push(signed);
  const apart = signed && card.signersLevel > 0 && folded(signed, card.signersLevel, data);
  if (phrases.length === 0 && !apart) return null;
  return markup`${phrases.map((phrase, index) => markup`${index > 0 && '; '}${phrase}`)}${apart}`;
}
