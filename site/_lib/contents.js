import { markup } from './markup.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {{ readonly title: string, readonly address: string, readonly count: number | null }} Entry */

/**
 * A table of contents: titles with the figures of what they hold.
 *
 * @param {readonly Entry[]} entries
 * @returns {Markup | null}
 */
export function contents(entries) {
  if (entries.length === 0) return null;
  return markup`<ul class="contents">
${entries.map(entryLine)}</ul>`;
}

/** @param {Entry} entry */
function entryLine({ title, address, count }) {
  const figure = count !== null && countOf(count);
  return markup`<li><a href="${address}"><span class="what">${title}</span>${figure}</a></li>\n`;
}

/** @param {number} count */
function countOf(count) {
  const leader = markup`<span class="leader" aria-hidden="true"></span>`;
  const before = markup`<span class="unseen">, </span>`;
  const after = markup`<span class="unseen"> listed</span>`;
  return markup`${leader}<span class="count">${before}${count}${after}</span>`;
}
