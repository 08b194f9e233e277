import { contents } from './_lib/contents.js';
import { moment } from './_lib/dates.js';
import { markup } from './_lib/markup.js';
import { page } from './_lib/page.js';
import { setTitle, streetDays } from './_lib/titles.js';
import { listed } from './_lib/words.js';

/** @typedef {import('./_lib/types.js').SiteData} SiteData */
/** @typedef {import('./_lib/types.js').PublicSet} PublicSet */
/** @typedef {import('./_lib/types.js').PublicData} PublicData */

export const data = { permalink: 'index.html' };

/** @param {SiteData} site */
export function render(site) {
  const { publicData } = site;
  const { property, sets } = publicData;
  const staff = markup`<ol class="staff">
${sets.map((set) => setEntry(set, publicData))}</ol>`;
  return page(site, {
    root: './',
    title: property.title,
    kind: 'home',
    here: 'home',
    main: markup`<h1>${property.title}</h1>
<p class="lede">${lede(sets)}</p>
${sets.length > 0 && staff}
${openings(publicData)}`,
  });
}

/** @param {readonly PublicSet[]} sets */
function lede(sets) {
  if (sets.length === 0) return 'No cards are listed yet.';
  const count = sets.reduce((sum, set) => sum + set.listed, 0);
  const where = sets.length === 1 ? 'in one set' : `in ${String(sets.length)} sets`;
  return `The checklist: ${listed(count)} ${where}.`;
}

/**
 * @param {PublicSet} set
 * @param {PublicData} publicData
 */
function setEntry(set, publicData) {
  const subsets = set.subsets.map(({ id, title, listed: count }) => {
    return { title, count, address: `${set.id}/#${id}` };
  });
  return markup`<li>
<p class="when">${set.street.length > 0 && markup`In shops ${streetDays(set, publicData)}`}</p>
<div class="entry">
<h2><a href="${set.id}/">${setTitle(set, publicData)}</a></h2>
<p class="tally">${listed(set.listed)}</p>
${contents(subsets)}
</div>
</li>
`;
}

/** @param {PublicData} publicData */
function openings({ openings: instants, property }) {
  if (instants.length === 0) return null;
  return markup`<section class="to-come" aria-labelledby="home--to-come">
<h2 id="home--to-come">To come</h2>
<p>More of the list is to be revealed on these days.</p>
<ol class="openings">
${instants.map((at) => markup`<li>${moment(at, property.zone)}</li>\n`)}</ol>
</section>`;
}
