import { one, say } from './elements.js';
import { setWith } from './find-number.js';
import { startKeys } from './keys.js';
import { isRecord } from './ticks.js';
import { jsonOf } from './ticks-file.js';

/** @typedef {import('./find-number.js').FindIndex} FindIndex */

const box = one('#find--box', HTMLInputElement);
const root = new URL(document.body.dataset['root'] ?? './', location.href);
if (box) start(box, readIndex());

/**
 * @param {HTMLInputElement} from
 * @param {FindIndex} index
 */
function start(from, index) {
  from.addEventListener('keydown', ({ key }) => {
    if (key === 'Enter') go(from.value, index);
    if (key === 'Escape') from.value = '';
  });
  from.addEventListener('input', () => say('.found', ''));
  startKeys(root.pathname, { '/': () => from.select() });
}

/**
 * @param {string} typed
 * @param {FindIndex} index
 */
function go(typed, index) {
  if (typed.trim() === '') return;
  const set = setWith(index, typed);
  if (set === null) {
    say('.found', `No set has a card ${typed.trim()}. Names are found on the page of their set.`);
    return;
  }
  const address = new URL(`${set}/`, root);
  address.searchParams.set('find', typed.trim());
  location.assign(address);
}

/** @returns {FindIndex} */
function readIndex() {
  const value = jsonOf(document.querySelector('#find-index')?.textContent ?? '');
  if (!Array.isArray(value)) return [];
  return value.filter(isEntry);
}

/**
 * @param {unknown} value
 * @returns {value is [string, string]}
 */
function isEntry(value) {
  return (
    Array.isArray(value) && value.every((each) => typeof each === 'string') && !isRecord(value)
  );
}
