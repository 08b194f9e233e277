import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { readableOn } from './colour.js';

/** @typedef {import('./types.js').SiteData} SiteData */
/** @typedef {{ readonly file: string, readonly text: string }} Asset */

const SHEETS = ['tokens', 'base', 'layout', 'tables', 'card', 'print'];

/** Contrast that WCAG 2.2 asks of text (1.4.3; and 1.4.6, for the dark), and a little to spare. */
const LEGIBLE = 4.6;
const CLEAR = 7.1;

/** @type {WeakMap<object, { readonly styles: Asset, readonly mark: Asset }>} */
const made = new WeakMap();

/**
 * The style sheet and the mark of the site, each under a name with the digest of its text.
 *
 * @param {SiteData} data
 */
export function assetsOf({ publicData, fonts }) {
  const known = made.get(publicData);
  if (known) return known;
  const sheets = SHEETS.map((name) => readFileSync(sheetPath(name), 'utf8'));
  const accents = accentsOf(sheets[0] ?? '', publicData.property.accent);
  const text = [...fonts.map(fontRule), ...sheets, accents.rule].join('\n');
  const assets = {
    styles: named('site', 'css', text),
    mark: named('mark', 'svg', markOf(accents.light)),
  };
  made.set(publicData, assets);
  return assets;
}

/** @param {string} name */
function sheetPath(name) {
  return new URL(`../styles/${name}.css`, import.meta.url);
}

/**
 * @param {string} stem
 * @param {string} kind
 * @param {string} text
 * @returns {Asset}
 */
function named(stem, kind, text) {
  const digest = createHash('sha256').update(text).digest('hex').slice(0, 16);
  return { file: `assets/${stem}-${digest}.${kind}`, text };
}

/**
 * Whether a face stands in the first lines of a page, so that its file is wanted at once.
 *
 * @param {import('./types.js').FontFace} face
 */
export function isFirst({ script, weight }) {
  return script === 'latin' && weight <= 500;
}

/** @param {import('./types.js').FontFace} face */
function fontRule(face) {
  return `@font-face {
  font-family: '${face.family}';
  font-style: ${face.style};
  font-weight: ${String(face.weight)};
  font-display: swap;
  src: url('${face.file.replace('assets/', '')}') format('woff2');
  unicode-range: ${face.range};
}`;
}

/**
 * The accent of the property, made readable on the light and on the dark ground of `tokens.css`.
 *
 * @param {string} tokens
 * @param {string | null} accent
 */
function accentsOf(tokens, accent) {
  /** @type {(name: string) => readonly string[]} */
  const values = (name) =>
    [...tokens.matchAll(new RegExp(`--${name}: (#[0-9a-f]{6});`, 'g'))].map(
      (found) => found[1] ?? '',
    );
  const [paper = '#ffffff', night = '#000000'] = values('wash');
  const wish = accent ?? values('accent')[0] ?? '#000000';
  const light = readableOn(wish, paper, LEGIBLE);
  const dark = readableOn(wish, night, CLEAR);
  return {
    light,
    rule: `:root { --accent: ${light}; }
@media screen and (prefers-color-scheme: dark) { :root { --accent: ${dark}; } }
`,
  };
}

/**
 * A staff in the water.
 *
 * @param {string} colour
 */
function markOf(colour) {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><path d="M16 2v17M16 5h6M16 10h4M16 15h6M2 23q3.5-4 7 0t7 0 7 0 7 0M2 29q3.5-4 7 0t7 0 7 0 7 0" fill="none" stroke="${colour}" stroke-width="2.5" stroke-linecap="round"/></svg>
`;
}
