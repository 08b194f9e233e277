import { foldedNumber } from './search-words.js';

/**
 * The numbers of the sets, newest first: for each its id, and its folded numbers with runs, as in
 * "1-84 17b lc1-8".
 *
 * @typedef {readonly (readonly [set: string, numbers: string])[]} FindIndex
 */

/**
 * The newest set that has a card of this number; if none has, the newest in which a number ends
 * like this.
 *
 * @param {FindIndex} index
 * @param {string} typed
 * @returns {string | null}
 */
export function setWith(index, typed) {
  const number = foldedNumber(typed);
  if (number === '') return null;
  const found =
    index.find(([, numbers]) => has(numbers, number, true)) ??
    index.find(([, numbers]) => has(numbers, number, false));
  return found?.[0] ?? null;
}

/**
 * @param {string} numbers
 * @param {string} number
 * @param {boolean} whole
 */
function has(numbers, number, whole) {
  return numbers.split(' ').some((token) => {
    const run = /^(.*?)(\d+)-(\d+)$/u.exec(token);
    if (run === null)
      return token === number || (!whole && /^\d/.test(number) && endsWith(token, number));
    const [, prefix = '', from, to] = run;
    const start = whole || number.startsWith(prefix) ? prefix : '';
    const digits = number.startsWith(start) ? number.slice(start.length) : '';
    return /^\d+$/.test(digits) && Number(digits) >= Number(from) && Number(digits) <= Number(to);
  });
}

/**
 * @param {string} token
 * @param {string} number
 */
function endsWith(token, number) {
  return token.endsWith(number) && !/\d/.test(token.charAt(token.length - number.length - 1));
}
