import { markup } from './markup.js';
import { folded } from './told.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./types.js').PublicCard} PublicCard */
/** @typedef {import('./types.js').PublicData} PublicData */
/** @typedef {import('./types.js').PublicRun} PublicRun */

/** The one mark for whatever is held. It never tells how much it stands for. */
export const HELD = markup`<span class="held">to be revealed</span>`;

/**
 * The words of a card back, as far as they are told. Where a part tells more of the story than the
 * rest, it stands folded in its place.
 *
 * @param {PublicCard} card
 * @param {PublicData} data
 * @returns {Markup | null}
 */
export function bioOf(card, data) {
  if (card.bioHeld) return markup`<div class="bio"><p>${HELD}</p></div>`;
  if (card.bio.length === 0) return null;
  const level = Math.min(...card.bio.flat().map((run) => ('held' in run ? Infinity : run.level)));
  const least = Number.isFinite(level) ? level : 0;
  const paragraphs = card.bio.map((runs) => paragraph(runs, least, data));
  return markup`<div class="bio">${folded(paragraphs, least, data)}</div>`;
}

/**
 * A paragraph cannot hold what folds, so one that has parts which tell more is a block of pieces.
 *
 * @param {readonly PublicRun[]} runs
 * @param {number} least
 * @param {PublicData} data
 */
function paragraph(runs, least, data) {
  const tellsMore = runs.some((run) => !('held' in run) && run.level > least);
  if (!tellsMore) return markup`<p>${runs.map(showRun)}</p>`;
  const pieces = runs.map((run) =>
    'held' in run || run.level <= least
      ? showRun(run)
      : folded(markup`<span>${showRun(run)}</span>`, run.level, data),
  );
  return markup`<div class="paragraph">${pieces}</div>`;
}

/** @param {PublicRun} run */
function showRun(run) {
  if ('held' in run) return HELD;
  if (run.text === '\n') return markup`<br>`;
  const words = run.italic ? markup`<em>${run.text}</em>` : markup`${run.text}`;
  return run.bold ? markup`<strong>${words}</strong>` : words;
}
