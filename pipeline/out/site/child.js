/**
 * The process that renders the pages. It is started by `sandbox.ts` in a temporary folder of its
 * own and finds there: `input/` (the templates), `data.json` (the public data), `fonts.json` (the
 * font files that pages may ask for), `downloads.json` (what else stands beside the pages). It may
 * write to `output/` and nowhere else.
 */
import { readFileSync } from 'node:fs';
import { engineFor } from './engine.js';

/**
 * What went wrong, outermost first. Eleventy keeps the first error under a name of its own.
 *
 * @param {unknown} error
 * @returns {string}
 */
function sayError(error) {
  if (!(error instanceof Error)) return `${String(error)}\n`;
  const inner = error.cause ?? ('originalError' in error ? error.originalError : undefined);
  return `${error.message}\n${inner === undefined ? '' : sayError(inner)}`;
}

const eleventy = engineFor({
  input: 'input',
  output: 'output',
  publicData: readFileSync('data.json', 'utf8'),
  fonts: readFileSync('fonts.json', 'utf8'),
  downloads: readFileSync('downloads.json', 'utf8'),
});

try {
  await eleventy.write();
} catch (error) {
  process.stderr.write(sayError(error));
  process.exitCode = 1;
}
