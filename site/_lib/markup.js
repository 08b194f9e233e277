/**
 * Markup that is safe to stand in a page. Everything that is put into `markup` is escaped, unless
 * it is markup itself; nothing else in this folder writes `<`.
 */
export class Markup {
  /** @param {string} text */
  constructor(text) {
    this.text = text;
  }

  toString() {
    return this.text;
  }
}

/** @typedef {Markup | string | number | null | undefined | false} Part */

/** @type {Readonly<Record<string, string>>} */
const ESCAPES = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/**
 * @param {string} text
 * @returns {string}
 */
function escape(text) {
  return /[&<>"']/.test(text) ? text.replace(/[&<>"']/g, (sign) => ESCAPES[sign] ?? '') : text;
}

/**
 * @param {Part | readonly Part[]} part
 * @returns {string}
 */
function show(part) {
  if (part === null || part === undefined || part === false) return '';
  if (part instanceof Markup) return part.text;
  if (typeof part === 'object') return part.map(show).join('');
  return escape(String(part));
}

/**
 * A piece of a page. Lists are joined, `null`, `undefined` and `false` leave nothing.
 *
 * @param {TemplateStringsArray} strings
 * @param {readonly (Part | readonly Part[])[]} parts
 * @returns {Markup}
 */
export function markup(strings, ...parts) {
  let text = strings[0] ?? '';
  for (const [index, part] of parts.entries()) text += show(part) + (strings[index + 1] ?? '');
  return new Markup(text);
}
