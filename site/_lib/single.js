import { has } from './menu.js';

/** @typedef {import('./menu.js').Place} Place */
/** @typedef {import('./types.js').SiteData} SiteData */

/**
 * Data of a template whose page stands only where it would not be empty.
 *
 * @param {Place} place
 */
export function single(place) {
  return {
    pagination: {
      data: 'publicData.sets',
      size: 1,
      alias: 'it',
      /**
       * @param {unknown} _sets
       * @param {SiteData} site
       */
      before: (_sets, { publicData }) => (has(publicData, place) ? [place] : []),
    },
    permalink: `${place}/index.html`,
  };
}
