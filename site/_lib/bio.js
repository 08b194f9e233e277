import { html } from './html.js';

/** @typedef {import('./html.js').Markup} Markup */
/** @typedef {import('./types.js').PublicCard} PublicCard */
/** @typedef {import('./types.js').PublicRun} PublicRun */

/** The one mark for whatever is held. It never tells how much it stands for. */
export const HELD = html`<span class="held">to be revealed</span>`;

/**
 * The words of a card back, as far as they are told.
 *
 * @param {PublicCard} card
 * @returns {Markup | null}
 */
export function bioOf(card) {
  if (card.bioHeld) return html`<div class="bio"><p>${HELD}</p></div>`;
  if (card.bio.length === 0) return null;
  return html`<div class="bio">${card.bio.map((runs) => html`<p>${runs.map(showRun)}</p>`)}</div>`;
}

/** @param {PublicRun} run */
function showRun(run) {
  if ('held' in run) return HELD;
  if (run.text === '\n') return html`<br />`;
  const words = run.italic ? html`<em>${run.text}</em>` : html`${run.text}`;
  return run.bold ? html`<strong>${words}</strong>` : words;
}
