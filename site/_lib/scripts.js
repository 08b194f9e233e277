import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';

/** @typedef {{ readonly file: string, readonly text: string }} Asset */

/** Scripts that pages ask for by name; what they import comes with them. */
const ENTRIES = /** @type {const} */ (['reader', 'checklist', 'home']);
/** @typedef {(typeof ENTRIES)[number]} Script */

const IMPORT = /((?:^|\n)(?:import|export)[^'"]*from )'\.\/([a-z-]+)\.js'/g;

/** @type {Map<string, Asset>} */
const made = new Map();

/**
 * A script, its imports first: each under a name with the digest of its text, in which the names of
 * what it imports are written likewise.
 *
 * @param {string} name
 * @returns {Asset}
 */
function scriptOf(name) {
  const known = made.get(name);
  if (known) return known;
  const source = readFileSync(new URL(`../scripts/${name}.js`, import.meta.url), 'utf8');
  const text = source.replace(IMPORT, (_, before, imported) => {
    const { file } = scriptOf(String(imported));
    return `${String(before)}'./${file.replace('assets/', '')}'`;
  });
  const digest = createHash('sha256').update(text).digest('hex').slice(0, 16);
  const asset = { file: `assets/${name}-${digest}.js`, text };
  made.set(name, asset);
  return asset;
}

/** Every script of the site. @returns {readonly Asset[]} */
export function allScripts() {
  for (const name of ENTRIES) scriptOf(name);
  return [...made.values()].sort((a, b) => (a.file < b.file ? -1 : 1));
}

/**
 * The files that a page with this script loads: those that it imports, then itself.
 *
 * @param {Script} name
 * @returns {{ readonly file: string, readonly imports: readonly string[] }}
 */
export function scriptFiles(name) {
  return { file: scriptOf(name).file, imports: importsOf(name) };
}

/** @type {Map<string, readonly string[]>} */
const imports = new Map();

/**
 * @param {string} name
 * @returns {readonly string[]}
 */
function importsOf(name) {
  const known = imports.get(name);
  if (known) return known;
  const names = [...scriptOf(name).text.matchAll(IMPORT_OF_FILE)].map((found) => found[1] ?? '');
  const all = names.flatMap((each) => [...importsOf(each), scriptOf(each).file]);
  const found = [...new Set(all)];
  imports.set(name, found);
  return found;
}

const IMPORT_OF_FILE = /(?:^|\n)(?:import|export)[^'"]*from '\.\/([a-z-]+)-[0-9a-f]{16}\.js'/g;
