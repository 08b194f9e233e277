import { day } from './dates.js';
import { findIndex } from './find-index.js';
import { markup } from './markup.js';
import { telling } from './telling.js';
import { folds } from './told.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./types.js').PublicData} PublicData */
/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {import('./types.js').PublicSubset} PublicSubset */

/** How many steps of help stand in the box while it is empty. */
const EXAMPLE = '4, LC-4, a name';

/**
 * The find box of the home page: a number leads to the newest set that has it.
 *
 * @param {PublicData} data
 * @returns {Markup}
 */
export function findBox(data) {
  return markup`<div class="find at-home" role="search">
<label for="find--box">Find a card by its number</label>
${box('LC-4')}
<p class="found" role="status"></p>
</div>
${findIndex(data)}`;
}

/** @param {string} example */
function box(example) {
  const quiet = markup`autocomplete="off" autocapitalize="off" spellcheck="false" enterkeyhint="go"`;
  return markup`<input id="find--box" type="search" placeholder="${example}" ${quiet} aria-keyshortcuts="/">`;
}

/**
 * What a want list of one subset alone opens with, each like no other.
 *
 * @param {PublicSet} set
 * @returns {ReadonlyMap<PublicSubset, string>}
 */
export function listHeads({ short, subsets }) {
  const taken = new Set([short]);
  /** @type {Map<PublicSubset, string>} */
  const heads = new Map();
  for (const subset of subsets) {
    const words = `${short} (${subset.title})`;
    let head = words;
    for (let more = 2; taken.has(head); more += 1) head = `${words} ${String(more)}`;
    taken.add(head);
    heads.set(subset, head);
  }
  return heads;
}

/**
 * @typedef {object} ToolsOf
 * @property {PublicSet} set
 * @property {readonly PublicSubset[]} subsets Those on this page.
 * @property {string} head What a want list of this page opens with.
 * @property {string} way From this page to that of the set.
 */

/**
 * Find, show, tick, undo, want lists and files: all that a page needs its script for. Their room
 * is kept free until it has run.
 *
 * @param {ToolsOf} page
 * @param {PublicData} data
 * @returns {Markup | null} null for a page without cards
 */
export function tools({ set, subsets, head, way }, data) {
  if (subsets.every(({ cards }) => cards.length === 0)) return null;
  const about = markup`data-set="${set.id}" data-head="${head}" data-way="${way}" data-site="${data.property.siteTitle}" data-as-of="${data.asOf}"`;
  return markup`<div class="find" role="search">
<label for="find--box">Find</label>
${box(EXAMPLE)}
<p class="found" role="status"></p>
<button type="button" class="undo" aria-disabled="true">Undo</button>
</div>
<div class="tools" ${about}>
<div class="choices">
<fieldset><legend>Show</legend>
${['all', 'missing', 'doubles'].map(showOption)}</fieldset>
${printingChoice(set, subsets)}</div>
<p class="progress" id="tools--progress"></p>
<div class="acts">
<button type="button" class="copy-want">Copy my want list</button>
<button type="button" class="copy-doubles">Copy my doubles</button>
<button type="button" class="print-want" aria-keyshortcuts="p">Print my want list</button>
<button type="button" class="whole" aria-expanded="false" aria-controls="tools--progress">Show all missing</button>
</div>
${more(data)}<p class="said" role="status"></p>
</div>
<p class="unseen" id="tools--heard" role="status"></p>
${listDialog(head)}
${sureDialog()}
<div class="want-sheet" hidden>
<p class="list-day">${data.property.siteTitle}. As of ${day(data.asOf, data.property.zone)}.</p>
</div>`;
}

/** @param {string} words */
function showOption(words) {
  return markup`<label><input type="radio" name="show" value="${words}"${words === 'all' && markup` checked`}> ${words}</label>\n`;
}

/**
 * @param {PublicSet} set
 * @param {readonly PublicSubset[]} subsets
 */
function printingChoice({ parallels }, subsets) {
  const ids = new Set(subsets.map(({ id }) => id));
  const possible = parallels.filter(({ of }) => of.some((id) => ids.has(id)));
  if (possible.length === 0) return null;
  return markup`<label class="printing" for="tools--printing">Ticking</label>
<select id="tools--printing">
<option value="">The cards</option>
${possible.map(({ id, title }) => markup`<option value="${id}">${title}</option>\n`)}</select>
`;
}

/** @param {PublicData} data */
function more(data) {
  return markup`<details class="more">
<summary>Lists, files, keys${folds(data) && ', how much is told'}</summary>
<div class="acts">
<button type="button" class="read-list">Read a list</button>
<button type="button" class="save-ticks">Save my ticks to a file</button>
<label class="load-ticks" for="tools--file">Load ticks from a file</label>
<input class="unseen" id="tools--file" type="file" accept=".json,application/json">
</div>
<p>Your ticks stay in this browser, on this device. Nothing is sent anywhere. A parallel stands in
your want list once you have ticked one card of it.</p>
<label class="keys"><input type="checkbox" id="tools--keys" checked> Keys: <kbd>/</kbd> finds,
<kbd>p</kbd> prints the want list</label>
<p>In the column of boxes the arrow keys, <kbd>Home</kbd> and <kbd>End</kbd> move, the space bar
ticks, <kbd>+</kbd> and <kbd>-</kbd> count. <kbd>Ctrl</kbd> <kbd>Z</kbd> takes back.</p>
${telling(data)}</details>
`;
}

/** @param {string} head */
function listDialog(head) {
  return markup`<dialog class="slip" id="tools--list" aria-labelledby="tools--list-title">
<h2 id="tools--list-title">Read a list</h2>
<p>Paste a want list or a list of doubles of ${head}. What a want list does not name is ticked; what
it names is not.</p>
<label for="tools--text">The list</label>
<textarea id="tools--text" rows="5" spellcheck="false" placeholder="${head}, want: 3, 17-22"></textarea>
<div class="outcome" role="status"></div>
<div class="acts">
<button type="button" class="look">Read it</button>
<button type="button" class="agree" hidden>Change my ticks</button>
<button type="button" class="leave">Leave all as it is</button>
</div>
</dialog>`;
}

function sureDialog() {
  return markup`<dialog class="slip" id="tools--sure" aria-labelledby="tools--sure-title">
<h2 id="tools--sure-title">Load ticks from a file</h2>
<p class="outcome"></p>
<div class="acts">
<button type="button" class="agree">Change my ticks</button>
<button type="button" class="leave">Leave all as it is</button>
</div>
</dialog>`;
}
