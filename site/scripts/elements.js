/**
 * The first element of a kind, if the page has it.
 *
 * @template {Element} T
 * @param {string} selector
 * @param {new () => T} kind
 * @param {ParentNode} [root]
 * @returns {T | null}
 */
export function one(selector, kind, root = document) {
  const found = root.querySelector(selector);
  return found instanceof kind ? found : null;
}

/**
 * @param {ParentNode} root
 * @param {string} selector
 * @param {() => void} act
 */
export function onClick(root, selector, act) {
  one(selector, HTMLButtonElement, root)?.addEventListener('click', act);
}

/**
 * An element with words in it.
 *
 * @param {string} tag
 * @param {string} words
 * @param {string} [kind] Its class.
 */
export function made(tag, words, kind = '') {
  const element = document.createElement(tag);
  element.textContent = words;
  if (kind !== '') element.className = kind;
  return element;
}

/**
 * What a reader sees of an element: without what is folded away, labels of folds and dates.
 *
 * @param {Node} node
 * @returns {string}
 */
export function seenText(node) {
  if (!(node instanceof Element)) return node.textContent ?? '';
  if (node.matches('summary, time, details:not([open])')) return '';
  if (node.childElementCount === 0) return node.textContent ?? '';
  return [...node.childNodes].map(seenText).join('');
}

/**
 * Whether somebody is writing there, so that a key means a letter.
 *
 * @param {EventTarget | null} target
 */
export function isWriting(target) {
  if (target instanceof HTMLInputElement) {
    return !['radio', 'checkbox', 'button', 'file'].includes(target.type);
  }
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement;
}

/**
 * Says something in a place that is read out.
 *
 * @param {string} selector
 * @param {string} words
 */
export function say(selector, words) {
  const place = document.querySelector(selector);
  if (place) place.textContent = words;
}
