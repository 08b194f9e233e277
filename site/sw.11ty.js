import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { assetsOf } from './_lib/assets.js';

/** @typedef {import('./_lib/types.js').SiteData} SiteData */

export const data = { permalink: 'sw.js' };

/**
 * The service worker: what it keeps of this release, then what it does.
 *
 * @param {SiteData} site
 */
export function render(site) {
  const kept = keptBy(site);
  const release = createHash('sha256')
    .update(JSON.stringify([site.publicData, kept]))
    .digest('hex')
    .slice(0, 16);
  const worker = readFileSync(new URL('./scripts/worker/worker.js', import.meta.url), 'utf8');
  return `const RELEASE = '${release}';
const KEPT = ${JSON.stringify(kept)};
const worker = self;
${worker}`;
}

/**
 * The addresses of what is kept from the first visit on: lists, and what they are shown with. The
 * page of a card is kept once somebody has looked at it.
 *
 * @param {SiteData} site
 * @returns {readonly string[]}
 */
function keptBy(site) {
  const { styles, mark, scripts } = assetsOf(site);
  const lists = site.publicData.sets.flatMap(({ id, subsets }) => [
    `${id}/`,
    ...subsets.map((subset) => `${id}/${subset.id}/`),
  ]);
  const fonts = site.fonts.filter(({ script }) => script === 'latin').map(({ file }) => file);
  const files = [styles, mark, ...scripts].map(({ file }) => file);
  return ['./', ...lists, ...files, ...fonts];
}
