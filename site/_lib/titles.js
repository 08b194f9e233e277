import { markup } from './markup.js';
import { day } from './dates.js';
import { regionName } from './words.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {import('./types.js').PublicData} PublicData */

/**
 * The title of a set. Where it opens with the title of the property, that part is set quieter.
 *
 * @param {PublicSet} set
 * @param {PublicData} data
 * @returns {Markup}
 */
export function setTitle(set, data) {
  const opening = `${data.property.title}: `;
  if (!set.title.startsWith(opening)) return markup`${set.title}`;
  return markup`<span class="of-property">${opening}</span>${set.title.slice(opening.length)}`;
}

/**
 * "In shops 16 April 2027 (UK), 17 April 2027 (AU)", without its first words.
 *
 * @param {PublicSet} set
 * @param {PublicData} data
 * @returns {readonly Markup[]}
 */
export function streetDays(set, data) {
  return set.street.map(({ region, at }, index) => {
    const place = region === null ? '' : ` (${regionName(region)})`;
    const more = index < set.street.length - 1;
    const words = markup`${day(at, data.property.zone)}${place}${more && ','}`;
    return markup`<span class="whole">${words}</span>${more && ' '}`;
  });
}
