import { contents } from './_lib/contents.js';
import { markup } from './_lib/markup.js';
import { page } from './_lib/page.js';
import { cardTable, correctionTable, parallelTable } from './_lib/tables.js';
import { setTitle, streetDays } from './_lib/titles.js';
import { foundWords, groupName, listed } from './_lib/words.js';

/** @typedef {import('./_lib/types.js').SiteData} SiteData */
/** @typedef {import('./_lib/types.js').PublicSet} PublicSet */
/** @typedef {import('./_lib/types.js').PublicSubset} PublicSubset */
/** @typedef {import('./_lib/types.js').PublicData} PublicData */
/** @typedef {import('./_lib/markup.js').Markup} Markup */

const ROOT = '../';

export const data = {
  pagination: { data: 'publicData.sets', size: 1, alias: 'set' },
  /** @param {{ readonly set: PublicSet }} item */
  permalink: ({ set }) => `${set.id}/index.html`,
};

/** @param {SiteData & { readonly set: PublicSet }} site */
export function render(site) {
  const { set, publicData } = site;
  const { zone } = publicData.property;
  const street = set.street.length > 0 && markup`In shops ${streetDays(set, publicData)}. `;
  return page(site, {
    root: ROOT,
    title: set.short,
    kind: 'set',
    main: markup`<div class="opening">
<h1>${setTitle(set, publicData)}</h1>
<p class="lede">${street}${listed(set.listed)}.</p>
</div>
<nav class="contents-of-set" aria-label="In this set">
${contents(entriesOf(set))}
</nav>
${set.subsets.map((subset) => subsetSection(subset, zone))}
${sideSection('set--parallels', 'Parallels', parallelTable(set))}
${sideSection('set--corrections', 'Corrections', correctionTable(set))}`,
  });
}

/** @param {PublicSet} set */
function entriesOf({ subsets, parallels, corrections }) {
  /** @type {(title: string, id: string, count: number | null) => import('./_lib/contents.js').Entry} */
  const entry = (title, id, count) => ({ title, address: `#${id}`, count });
  return [
    ...subsets.map(({ id, title, listed: count }) => entry(title, id, count)),
    ...(parallels.length > 0 ? [entry('Parallels', 'set--parallels', null)] : []),
    ...(corrections.length > 0 ? [entry('Corrections', 'set--corrections', null)] : []),
  ];
}

/**
 * @param {PublicSubset} subset
 * @param {string} zone
 */
function subsetSection(subset, zone) {
  const { id, title, group, found } = subset;
  const kind = `${groupName(group)}${found === null ? '' : `, ${foundWords(found)}`}`;
  const tally = subset.cards.length === 0 && markup`<p class="tally">${listed(subset.listed)}</p>`;
  return markup`<section class="subset" id="${id}" aria-labelledby="${id}--title">
<div class="side"><h2 id="${id}--title">${title}</h2>
<p>${kind}</p></div>
<div class="body">${cardTable(subset, ROOT, zone)}${tally}
${artists(subset)}</div>
</section>
`;
}

/** @param {PublicSubset} subset */
function artists(subset) {
  if (subset.artists.length === 0) return null;
  return markup`<h3>Artists</h3>
<ul class="artists">
${subset.artists.map((name) => markup`<li>${name}</li>\n`)}</ul>`;
}

/**
 * @param {string} id
 * @param {string} title
 * @param {Markup | null} table
 */
function sideSection(id, title, table) {
  if (table === null) return null;
  return markup`<section class="subset" id="${id}" aria-labelledby="${id}-title">
<div class="side"><h2 id="${id}-title">${title}</h2></div>
<div class="body">${table}</div>
</section>
`;
}
