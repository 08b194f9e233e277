/**
 * Words and numbers as somebody types them who has a card in one hand: without capitals, accents,
 * spaces, hyphens, signs and zeros in front, and with O and 0 alike.
 */

const MARKS = /\p{M}/gu;
const APOSTROPHES = /['’ʼ]/g;
const NO_WORD = /[^\p{L}\p{N}]+/gu;
const WORD = /[\p{L}\p{N}]+/gu;
/** How a card stands, as it is typed without spaces. */
const STANDINGS = ['revealed', 'toberevealed', 'notissued'];
const ZEROS_IN_FRONT = /(?<!\p{N})0+(?=\p{N})/gu;

/** @param {string} text */
function plain(text) {
  return text.normalize('NFKD').replace(MARKS, '').toLowerCase();
}

/**
 * "lc4" for LC-4, `lc 4`, `LC-004`.
 *
 * @param {string} text
 * @returns {string} Letters and digits alone; empty if there are none.
 */
export function foldedNumber(text) {
  const parts = plain(text).replaceAll('o', '0').replace(ZEROS_IN_FRONT, '');
  return parts.replace(NO_WORD, '').replace(ZEROS_IN_FRONT, '');
}

/**
 * "lamps" and "light" for Lamp’s Light.
 *
 * @param {string} text
 * @returns {readonly string[]}
 */
export function foldedWords(text) {
  return plain(text).replace(APOSTROPHES, '').match(WORD) ?? [];
}

/**
 * What a row is found by.
 *
 * @typedef {object} SearchKey
 * @property {readonly string[]} numbers Its folded number, with and without what stands before the
 *   last digits and what stands behind them.
 * @property {string} words Folded words, a space before each.
 * @property {string} phrases Folded phrases without spaces, a bar before each.
 */

/**
 * @param {object} row
 * @param {string} row.number The number as printed, with its letter; empty for none.
 * @param {string} row.name
 * @param {readonly string[]} row.texts What else it is found by.
 * @param {string} row.standing "revealed" or "to be revealed".
 * @returns {SearchKey}
 */
export function searchKey({ number, name, texts, standing }) {
  const whole = foldedNumber(number);
  const tail = foldedNumber(/\d+\D*$/.exec(number)?.[0] ?? '');
  const digits = /^\d+/.exec(tail)?.[0] ?? '';
  const phrase = foldedWords(standing).join('');
  const nameWords = foldedWords(name);
  const more = texts.flatMap(foldedWords).filter((word) => !/^\p{N}+$/u.test(word));
  return {
    numbers: [whole, tail, digits].filter((form) => form !== ''),
    words: [...nameWords, ...more, phrase].map((word) => ` ${word}`).join(''),
    phrases: [nameWords.join(''), phrase].map((each) => `|${each}`).join(''),
  };
}

/**
 * @typedef {object} Query What is looked for.
 * @property {string} number
 * @property {boolean} exact With # in front the number is meant whole.
 * @property {readonly string[]} words
 */

/**
 * @param {string} typed
 * @returns {Query | null} null if it asks for nothing
 */
export function readQuery(typed) {
  const words = foldedWords(typed);
  if (words.length === 0) return null;
  return { number: foldedNumber(typed), exact: typed.trimStart().startsWith('#'), words };
}

/**
 * Whether a row is meant: by the beginning of its number, or by the beginnings of words of it.
 * Digits alone mean a number, or a word of the name.
 *
 * @param {SearchKey} key
 * @param {Query} query
 */
export function matches({ numbers, words, phrases }, { number, exact, words: wanted }) {
  if (exact) return numbers.includes(number);
  if (numbers.some((form) => form.startsWith(number))) return true;
  const joined = wanted.join('');
  if (phrases.includes(`|${joined}`)) return true;
  if (asksHowItStands(joined)) return false;
  return wanted.every((word) => words.includes(` ${word}`) || startsNumber(numbers, word));
}

/**
 * Whether somebody looks for what is revealed, or is not: then no word of a row is meant that only
 * begins alike.
 *
 * @param {string} joined
 */
function asksHowItStands(joined) {
  return joined.length > 5 && STANDINGS.some((standing) => standing.startsWith(joined));
}

/**
 * @param {readonly string[]} numbers
 * @param {string} word
 */
function startsNumber(numbers, word) {
  const form = foldedNumber(word);
  return /\d/.test(word) && numbers.some((each) => each.startsWith(form));
}
