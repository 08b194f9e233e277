import { HELD } from './bio.js';
import { plainDay } from './dates.js';
import { html } from './html.js';
import { isNameless, listed, notes, printed, runWords, series } from './words.js';

/** @typedef {import('./html.js').Markup} Markup */
/** @typedef {import('./types.js').PublicCard} PublicCard */
/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {import('./types.js').PublicSubset} PublicSubset */

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
  const rows = subset.cards.map((card) => ({ card, said: notes(card, zone) }));
  const numbered = rows.some(({ card }) => card.number !== null);
  const noted = rows.some(({ said }) => said.length > 0);
  return html`<table class="cards">
    <caption>
      <span class="unseen">${subset.title}: </span
      >${listed(subset.listed)}
    </caption>
    <thead>
      <tr>
        ${numbered && html`<th scope="col" class="number">Number</th>`}
        <th scope="col">Name</th>
        ${noted && html`<th scope="col" class="notes">Notes</th>`}
      </tr>
    </thead>
    <tbody>
      ${rows.map(({ card, said }) => cardRow(card, said, { numbered, noted, root }))}
    </tbody>
  </table>`;
}

/**
 * @param {PublicCard} card
 * @param {readonly Markup[]} said
 * @param {{ readonly numbered: boolean, readonly noted: boolean, readonly root: string }} how
 */
function cardRow(card, said, { numbered, noted, root }) {
  const kind = rowKind(card);
  return html`<tr${kind !== '' && html` class="${kind}"`}>${numbered && html`<td class="number">${numberOf(card)}</td>`}<th scope="row">${nameOf(card, root)}</th>${noted && html`<td class="notes">${joined(said)}</td>`}</tr>
`;
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
  if (card.number === null) return html`<span class="unseen">no number</span>`;
  return card.letter === null
    ? html`${card.number}`
    : html`${card.number}<span class="letter">${card.letter}</span>`;
}

/**
 * @param {PublicCard} card
 * @param {string} root
 */
function nameOf(card, root) {
  const name = isNameless(card) ? HELD : html`${card.name}`;
  if (card.page === null) return html`<span class="name">${name}</span>`;
  return html`<a
    class="name"
    href="${root}${card.page}"
    ${isNameless(card) && html` aria-label="${printed(card)}, to be revealed"`}
    >${name}</a
  >`;
}

/** @param {readonly Markup[]} phrases */
function joined(phrases) {
  return phrases.map((phrase, index) => html`${index > 0 && '; '}${phrase}`);
}

/**
 * @param {PublicSet} set
 * @returns {Markup | null}
 */
export function parallelTable(set) {
  if (set.parallels.length === 0) return null;
  const titles = new Map(set.subsets.map((subset) => [subset.id, subset.title]));
  const rows = set.parallels.map(
    ({ title, of, run, tell }) =>
      html`<tr>
        <th scope="row"><span class="name">${title}</span></th>
        <td>${series(of.map((id) => titles.get(id) ?? id))}</td>
        <td>${run === null ? '' : `${runWords(run)}${run === 1 ? '' : ' of each'}`}</td>
        <td>${tell}</td>
      </tr> `,
  );
  return html`<table class="parallels">
    <caption>
      The same cards in other finishes
    </caption>
    <thead>
      <tr>
        <th scope="col">Name</th>
        <th scope="col">Of</th>
        <th scope="col">Run</th>
        <th scope="col">How to tell</th>
      </tr>
    </thead>
    <tbody>
      ${rows}
    </tbody>
  </table>`;
}

/**
 * @param {PublicSet} set
 * @returns {Markup | null}
 */
export function correctionTable(set) {
  if (set.corrections.length === 0) return null;
  const rows = set.corrections.map(
    ({ number, at, was, now, note }) =>
      html`<tr>
        <td>${plainDay(at)}</td>
        <th scope="row">${number ?? 'the set'}</th>
        <td>
          <del>${was}</del>
          <ins>${now}</ins>${note !== null && html` <span class="note">${note}</span>`}
        </td>
      </tr> `,
  );
  return html`<table class="corrections">
    <caption>
      Printed or listed wrongly before
    </caption>
    <thead>
      <tr>
        <th scope="col">Day</th>
        <th scope="col">Card</th>
        <th scope="col">Was, and is</th>
      </tr>
    </thead>
    <tbody>
      ${rows}
    </tbody>
  </table>`;
}
