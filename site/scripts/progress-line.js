import { made, one } from './elements.js';

/**
 * Writes the line that says how far somebody has come, and offers the rest where it is cut off.
 *
 * @param {string} words
 */
export function showProgress(words) {
  const line = one('.progress', HTMLElement);
  const whole = one('.acts .whole', HTMLButtonElement);
  if (!line || !whole) return;
  if (line.textContent !== words) line.replaceChildren(...unbroken(words));
  whole.classList.toggle('needed', isWhole(whole) || line.scrollHeight > line.clientHeight);
}

/** Lets the line be read to its end. */
export function startProgress() {
  const whole = one('.acts .whole', HTMLButtonElement);
  whole?.addEventListener('click', () => {
    const opens = !isWhole(whole);
    whole.setAttribute('aria-expanded', String(opens));
    whole.textContent = opens ? 'Show fewer' : 'Show all missing';
  });
}

/** @param {HTMLElement} button */
function isWhole(button) {
  return button.getAttribute('aria-expanded') === 'true';
}

/**
 * Words of which no number is broken at a hyphen.
 *
 * @param {string} words
 */
function unbroken(words) {
  const parts = words.split(/(\S*-[^\s;,]*)/);
  return parts.map((part, at) => (at % 2 === 1 ? made('span', part, 'whole') : part));
}
