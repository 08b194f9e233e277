import { assetsOf } from './_lib/assets.js';

/** @typedef {import('./_lib/types.js').SiteData} SiteData */
/** @typedef {import('./_lib/types.js').PublicData} PublicData */
/** @typedef {import('./_lib/assets.js').Asset} Asset */

export const data = {
  pagination: {
    data: 'fonts',
    size: 1,
    alias: 'asset',
    /**
     * @param {unknown} _fonts
     * @param {SiteData} site
     */
    before: (_fonts, site) => {
      const { styles, mark, scripts } = assetsOf(site);
      return [styles, mark, ...scripts];
    },
  },
  /** @param {{ readonly asset: Asset }} item */
  permalink: ({ asset }) => asset.file,
};

/** @param {{ readonly asset: Asset }} item */
export function render({ asset }) {
  return asset.text;
}
