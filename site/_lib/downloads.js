import { markup } from './markup.js';

/** @typedef {import('./types.js').Download} Download */

/**
 * Links to files, each with what it is. On what terms they may be used is said beside the list.
 *
 * @param {readonly Download[]} files
 * @param {string} root
 */
export function downloadList(files, root) {
  return markup`<ul class="files">
${files.map(({ path, title }) => markup`<li><a href="${root}${path}">${path.split('/').at(-1)}</a> <span>${title}</span></li>\n`)}</ul>`;
}
