import { isRecord, ticksFromJson, ticksToJson } from './ticks.js';

/** @typedef {import('./ticks.js').Ticks} Ticks */

/** @typedef {{ readonly site: string, readonly set: string, readonly asOf: string }} About */

/**
 * A file of ticks: `{ format: 1, site, set, asOf, ticks: { cards, parallels } }`, in which `cards`
 * counts by `<subset>/<number><letter>`, and `parallels` the same for each parallel by its id.
 *
 * @param {About} about
 * @param {Ticks} ticks
 * @returns {string}
 */
export function writeTicksFile({ site, set, asOf }, ticks) {
  return `${JSON.stringify({ format: 1, site, set, asOf, ticks: ticksToJson(ticks) }, null, 2)}\n`;
}

/**
 * @param {string} text
 * @param {About} about
 * @returns {{ readonly ticks: Ticks } | { readonly refused: string }}
 */
export function readTicksFile(text, { set }) {
  const value = jsonOf(text);
  if (!isRecord(value) || !('ticks' in value)) {
    return { refused: 'This is no file of ticks. Choose one that was saved on a page like this.' };
  }
  if (value['format'] !== 1) {
    return { refused: 'This file of ticks has another form than this page can read.' };
  }
  if (value['set'] !== set) {
    return { refused: `This file is of the set “${String(value['set'])}”, this page of “${set}”.` };
  }
  const ticks = ticksFromJson(value['ticks']);
  if (ticks === null) return { refused: 'The ticks in this file cannot be read: it is damaged.' };
  return { ticks };
}

/**
 * @param {string} text
 * @returns {unknown}
 */
export function jsonOf(text) {
  try {
    /** @type {unknown} */
    const value = JSON.parse(text);
    return value;
  } catch {
    return null;
  }
}
