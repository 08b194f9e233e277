import { html } from './html.js';
import { day } from './dates.js';
import { regionName } from './words.js';

/** @typedef {import('./html.js').Markup} Markup */
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
  if (!set.title.startsWith(opening)) return html`${set.title}`;
  return html`<span class="of-property">${opening}</span>${set.title.slice(opening.length)}`;
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
    return html`<span class="whole">${day(at, data.property.zone)}${place}${more && ','}</span
      >${more && ' '}`;
  });
}
