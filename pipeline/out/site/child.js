/**
 * The process that renders the pages. It is started by `sandbox.ts` in a temporary folder of its
 * own and finds there: `input/` (the templates), `data.json` (the public data), `fonts.json` (the
 * font files that pages may ask for). It may write to `output/` and nowhere else.
 */
import { readFileSync } from 'node:fs';
import Eleventy from '@11ty/eleventy';

const FORMATS = ['11ty.js', 'njk'];
const EXECUTABLE_FENCES = ['js', 'javascript', 'node'];

/** @returns {never} */
function refuseFence() {
  throw new Error('a template opens with a fence that asks to be executed');
}

/**
 * Reads and freezes: Eleventy shares frozen values between pages, and copies others for each.
 *
 * @param {string} file
 * @returns {unknown}
 */
function frozenJson(file) {
  /** @type {(key: string, value: unknown) => unknown} */
  const freeze = (_, value) => Object.freeze(value);
  /** @type {unknown} */
  const read = JSON.parse(readFileSync(file, 'utf8'), freeze);
  return read;
}

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

const eleventy = new Eleventy('input', 'output', {
  configPath: false,
  quietMode: true,
  config: (config) => {
    config.setTemplateFormats(FORMATS);
    config.setUseGitIgnore(false);
    config.setFrontMatterParsingOptions({
      engines: Object.fromEntries(EXECUTABLE_FENCES.map((name) => [name, refuseFence])),
    });
    config.setNunjucksEnvironmentOptions({ throwOnUndefined: true });
    config.addGlobalData('publicData', frozenJson('data.json'));
    config.addGlobalData('fonts', frozenJson('fonts.json'));
  },
});
eleventy.disableLogger();

try {
  await eleventy.write();
} catch (error) {
  process.stderr.write(sayError(error));
  process.exitCode = 1;
}
