import { statSync } from 'node:fs';
import { join } from 'node:path';
import { giveUp, root, run } from './run.mjs';

/** Installs the packages of the lock file if they are missing or older than it. */
export function ensureInstalled() {
  if (changed('node_modules/.package-lock.json') >= changed('package-lock.json')) return;
  console.log('Installing the packages (npm ci).');
  const [command, ...first] = npm();
  if (!run(command, [...first, 'ci', '--include=dev', '--loglevel=error'])) {
    giveUp('The packages could not be installed: see what npm says above.');
  }
}

/**
 * @param {string} file
 * @returns {number} when it was last written, in ms; 0 if it is not there
 */
function changed(file) {
  return statSync(join(root, file), { throwIfNoEntry: false })?.mtimeMs ?? 0;
}

/**
 * The npm that started this script, else the one on the path.
 * @returns {[string, ...string[]]}
 */
function npm() {
  const started = process.env['npm_execpath'] ?? '';
  return started.endsWith('npm-cli.js') ? [process.execPath, started] : ['npm'];
}
