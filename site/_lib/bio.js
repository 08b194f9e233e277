import { markup } from './markup.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./types.js').PublicCard} PublicCard */
/** @typedef {import('./types.js').PublicRun} PublicRun */

/** The one mark for whatever is held. It never tells how much it stands for. */
export const HELD = markup`<span class="held">to be revealed</span>`;

/**
 * The words of a card back, as far as they are told.
 *
 * @param {PublicCard} card
 * @returns {Markup | null}
 */
export function bioOf(card) {
  if (card.bioHeld) return markup`<div class="bio"><p>${HELD}</p></div>`;
  if (card.bio.length === 0) return null;
  return markup`<div class="bio">${card.bio.map((runs) => markup`<p>${runs.map(showRun)}</p>`)}</div>`;
}

/** @param {PublicRun} run */
function showRun(run) {
  if ('held' in run) return HELD;
  if (run.text === '\n') return markup`<br>`;
  const words = run.italic ? markup`<em>${run.text}</em>` : markup`${run.text}`;
  return run.bold ? markup`<strong>${words}</strong>` : words;
}
