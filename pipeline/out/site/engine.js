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
 * @param {string} json
 * @returns {unknown}
 */
function frozen(json) {
  /** @type {(key: string, value: unknown) => unknown} */
  const freeze = (_, value) => Object.freeze(value);
  /** @type {unknown} */
  const read = JSON.parse(json, freeze);
  return read;
}

/**
 * Eleventy as every site is made with it, wherever it runs.
 *
 * @param {object} site
 * @param {string} site.input Folder of the templates.
 * @param {string} site.output Folder of the pages.
 * @param {string} site.publicData The public data, as JSON.
 * @param {string} site.fonts The font files that pages may ask for, as JSON.
 * @param {string} site.downloads What else stands beside the pages, as JSON.
 */
export function engineFor({ input, output, publicData, fonts, downloads }) {
  const eleventy = new Eleventy(input, output, {
    configPath: false,
    quietMode: true,
    loader: 'esm',
    config: (config) => {
      config.setTemplateFormats(FORMATS);
      config.setUseGitIgnore(false);
      config.setFrontMatterParsingOptions({
        engines: Object.fromEntries(EXECUTABLE_FENCES.map((name) => [name, refuseFence])),
      });
      config.setNunjucksEnvironmentOptions({ throwOnUndefined: true });
      config.addGlobalData('publicData', frozen(publicData));
      config.addGlobalData('fonts', frozen(fonts));
      config.addGlobalData('downloads', frozen(downloads));
    },
  });
  eleventy.disableLogger();
  return eleventy;
}
