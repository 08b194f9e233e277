import { say } from './elements.js';

/**
 * Puts a list on the clipboard; where the browser refuses, it is shown to be copied by hand.
 *
 * @param {string} text
 * @param {number} left How many cards the list cannot name.
 * @param {(text: string) => void} showIt
 */
export async function copyList(text, left, showIt) {
  try {
    await navigator.clipboard.writeText(text);
    say('.said', `${withoutWords(left)}Copied: ${text}`);
  } catch {
    showIt(text);
  }
}

/** @param {number} left */
function withoutWords(left) {
  if (left === 0) return '';
  const cards = left === 1 ? '1 card that has' : `${String(left)} cards that have`;
  return `Without ${cards} no number. `;
}
