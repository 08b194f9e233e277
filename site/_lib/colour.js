const STEPS = 40;

/** @typedef {readonly [number, number, number]} Rgb Red, green and blue, from 0 to 255. */

/**
 * The colour itself if it can be read on the ground, else the nearest towards black or white that
 * can be.
 *
 * @param {string} colour `#rrggbb`
 * @param {string} ground `#rrggbb`
 * @param {number} enough The contrast that is asked for, from 1; at most 21.
 * @returns {string} `#rrggbb`
 */
export function readableOn(colour, ground, enough) {
  const from = rgbOf(colour);
  const back = rgbOf(ground);
  /** @type {Rgb} */
  const end = luminance(back) > 0.18 ? [0, 0, 0] : [255, 255, 255];
  for (let step = 0; step < STEPS; step += 1) {
    const tried = mix(from, end, step / STEPS);
    if (contrast(tried, back) >= enough) return hexOf(tried);
  }
  return hexOf(end);
}

/**
 * Contrast of two colours from 1 to 21, as WCAG 2.2 defines it.
 *
 * @param {Rgb} a
 * @param {Rgb} b
 * @returns {number}
 */
export function contrast(a, b) {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05);
}

/**
 * @param {string} colour `#rrggbb`
 * @returns {Rgb}
 */
export function rgbOf(colour) {
  const value = Number.parseInt(colour.slice(1), 16);
  return [(value >> 16) & 255, (value >> 8) & 255, value & 255];
}

/**
 * Relative luminance, WCAG 2.2.
 *
 * @param {Rgb} rgb
 * @returns {number} from 0 to 1
 */
function luminance([red, green, blue]) {
  return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
}

/** @param {number} channel */
function linear(channel) {
  const share = channel / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
}

/**
 * @param {Rgb} from
 * @param {Rgb} to
 * @param {number} share
 * @returns {Rgb}
 */
function mix(from, to, share) {
  /** @type {(index: 0 | 1 | 2) => number} */
  const channel = (index) => Math.round(from[index] + (to[index] - from[index]) * share);
  return [channel(0), channel(1), channel(2)];
}

/**
 * A colour between two.
 *
 * @param {string} from `#rrggbb`
 * @param {string} to `#rrggbb`
 * @param {number} share how far it lies from the first to the second, from 0 to 1
 * @returns {string} `#rrggbb`
 */
export function mixed(from, to, share) {
  return hexOf(mix(rgbOf(from), rgbOf(to), share));
}

/** @param {Rgb} rgb */
function hexOf(rgb) {
  return `#${rgb.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
}
