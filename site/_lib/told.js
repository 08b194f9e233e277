import { markup } from './markup.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./markup.js').Part} Part */
/** @typedef {import('./types.js').PublicCard} PublicCard */
/** @typedef {import('./types.js').PublicData} PublicData */

/**
 * Something that tells of the story, folded away under the label of its level if that is not the
 * first. As published, what the newest level tells is closed and the rest stands open; the script
 * of the page opens and closes by what the reader chose.
 *
 * This is a courtesy to readers. Whatever may not be told yet is not in the data at all.
 *
 * @param {Part | readonly Part[]} words
 * @param {number} level an index into the levels of the property
 * @param {PublicData} data
 * @returns {Markup}
 */
export function folded(words, level, { property: { levels } }) {
  if (level === 0) return markup`${words}`;
  const open = level < levels.length - 1 && markup` open`;
  const label = markup`<span class="label"><span class="unseen">Tells of </span>${levels[level]}</span>`;
  return markup`<details class="told" data-level="${level}"${open}><summary>${label}</summary>${words}</details>`;
}

/**
 * Whether anything of a card is folded.
 *
 * @param {PublicCard} card
 */
export function tellsMore({ nameLevel, signersLevel, creditsLevel, image, bio, facts, texts }) {
  const parts = [...facts, ...texts, ...(image === null ? [] : [image])];
  const runs = bio.flat().map((run) => ('held' in run ? 0 : run.level));
  const levels = [nameLevel, signersLevel, creditsLevel, ...parts.map(({ level }) => level)];
  return [...levels, ...runs].some((level) => level > 0);
}

/**
 * Whether anything of the data is folded.
 *
 * @param {PublicData} data
 */
export function folds({ property: { levels } }) {
  return levels.length > 1;
}
