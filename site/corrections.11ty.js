import { markup } from './_lib/markup.js';
import { page } from './_lib/page.js';
import { single } from './_lib/single.js';
import { telling } from './_lib/telling.js';
import { correctionTable } from './_lib/tables.js';
import { setTitle } from './_lib/titles.js';

/** @typedef {import('./_lib/types.js').SiteData} SiteData */
/** @typedef {import('./_lib/types.js').PublicData} PublicData */
/** @typedef {import('./_lib/types.js').PublicSet} PublicSet */

const ROOT = '../';

export const data = single('corrections');

/** @param {SiteData} site */
export function render(site) {
  const { publicData } = site;
  return page(site, {
    root: ROOT,
    path: 'corrections/',
    title: 'Corrections',
    kind: 'corrections-page',
    here: 'corrections',
    main: markup`<h1>Corrections</h1>
<p class="lede">What was printed or listed wrongly, and how it should read.</p>
${telling(publicData)}
${publicData.sets.map((set) => ofSet(set, publicData))}`,
  });
}

/**
 * @param {PublicSet} set
 * @param {PublicData} publicData
 */
function ofSet(set, publicData) {
  const table = correctionTable(set, ROOT, publicData);
  if (table === null) return null;
  return markup`<section class="subset" aria-labelledby="${set.id}--corrections">
<div class="side"><h2 id="${set.id}--corrections">${setTitle(set, publicData)}</h2></div>
<div class="body">${table}</div>
</section>
`;
}
