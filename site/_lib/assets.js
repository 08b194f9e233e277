import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { mixed, readableOn } from './colour.js';
import { allScripts } from './scripts.js';

/** @typedef {import('./types.js').SiteData} SiteData */
/** @typedef {import('./types.js').PublicData} PublicData */
/** @typedef {{ readonly file: string, readonly text: string }} Asset */

const SHEETS = ['tokens', 'base', 'layout', 'tables', 'packs', 'tools', 'card', 'lists', 'print'];

/** Contrast that WCAG 2.2 asks of text (1.4.3; and 1.4.6, for the dark), and a little to spare. */
const LEGIBLE = 4.6;
const CLEAR = 7.1;
/** What WCAG 2.2 asks of lines that mean something (1.4.11). */
const SEEN = 3.05;

/** @type {WeakMap<object, { readonly styles: Asset, readonly mark: Asset, readonly scripts: readonly Asset[] }>} */
const made = new WeakMap();

/**
 * The style sheet, the mark and the scripts, each under a name with the digest of its text.
 *
 * @param {SiteData} data
 */
export function assetsOf({ publicData, fonts }) {
  const known = made.get(publicData);
  if (known) return known;
  const sheets = SHEETS.map((name) => readFileSync(sheetPath(name), 'utf8'));
  const { look } = publicData.property;
  const accents = accentsOf(sheets[0] ?? '', look);
  const text = [
    ...fonts.map(fontRule),
    ...sheets,
    typeRule(fonts),
    inkRule(sheets[0] ?? '', look),
    accents.rule,
  ];
  const assets = {
    styles: named('site', 'css', text.join('\n')),
    mark: named('mark', 'svg', markOf(accents.light)),
    scripts: allScripts(),
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
 * The families of the type that the property chose, if it is not that of `tokens.css`.
 *
 * @param {SiteData['fonts']} fonts
 */
function typeRule(fonts) {
  const rules = [
    ['--serif', fonts.find(({ role }) => role === 'words')?.family, 'Alegreya', 'Georgia, serif'],
    ['--sans', fonts.find(({ role }) => role === 'labels')?.family, 'Alegreya Sans', 'sans-serif'],
  ];
  const own = rules.filter(([, family, usual]) => family !== undefined && family !== usual);
  const lines = own.map(([name, family, , rest]) => `${name}: '${family}', ${rest};`);
  return lines.length === 0 ? '' : `:root { ${lines.join(' ')} }`;
}

/**
 * Paper and ink of the property on the light ground, with the shades between them. Ink that cannot
 * be read on the paper is made readable.
 *
 * @param {string} tokens
 * @param {PublicData['property']['look']} look
 */
function inkRule(tokens, { paper, ink }) {
  if (paper === null && ink === null) return '';
  const ground = paper ?? valuesOf(tokens, 'ground')[0] ?? '#ffffff';
  const text = readableOn(ink ?? valuesOf(tokens, 'ink')[0] ?? '#000000', ground, CLEAR);
  const shades = {
    ground,
    ink: text,
    wash: mixed(ground, text, 0.06),
    quiet: readableOn(mixed(text, ground, 0.25), mixed(ground, text, 0.06), LEGIBLE),
    rule: mixed(ground, text, 0.16),
    'rule-strong': readableOn(mixed(ground, text, 0.45), ground, SEEN),
  };
  const lines = Object.entries(shades).map(([name, colour]) => `--${name}: ${colour};`);
  return `@media not print { @media not (prefers-color-scheme: dark) { :root { ${lines.join(' ')} } } }`;
}

/**
 * A colour of `tokens.css`: by day, then by night.
 *
 * @param {string} tokens
 * @param {string} name
 * @returns {readonly string[]}
 */
function valuesOf(tokens, name) {
  const found = tokens.matchAll(new RegExp(`--${name}: (#[0-9a-f]{6});`, 'g'));
  return [...found].map((each) => each[1] ?? '');
}

/**
 * The accent of the property, made readable on the light and on the dark ground.
 *
 * @param {string} tokens
 * @param {PublicData['property']['look']} look
 */
function accentsOf(tokens, { accent, paper, ink }) {
  const [wash = '#ffffff', night = '#000000'] = valuesOf(tokens, 'wash');
  const day =
    paper === null ? wash : mixed(paper, ink ?? valuesOf(tokens, 'ink')[0] ?? '#000000', 0.06);
  const wish = accent ?? valuesOf(tokens, 'accent')[0] ?? '#000000';
  const light = readableOn(wish, day, LEGIBLE);
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
