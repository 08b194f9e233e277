import { contents } from './_lib/contents.js';
import { awaited } from './_lib/dates.js';
import { jsonLd } from './_lib/head.js';
import { markup } from './_lib/markup.js';
import { page } from './_lib/page.js';
import { setTitle, streetDays } from './_lib/titles.js';
import { findBox } from './_lib/tools.js';
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
    path: '',
    title: property.siteTitle,
    kind: 'home',
    here: 'home',
    script: 'home',
    head: jsonLd({ kind: 'home' }, site),
    main: markup`<h1>${property.siteTitle}</h1>
<p class="lede">${lede(sets)}</p>
${sets.length > 0 && findBox(publicData)}
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
  const subsets = set.subsets.map(({ id, title, listed: count, artists }) => {
    return { title, count: artists.length || count, address: `${set.id}/${id}/` };
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
function openings({ openings: instants, property, sets }) {
  if (instants.length === 0) return null;
  const cards = sets.flatMap(({ subsets }) => subsets.flatMap((subset) => subset.cards));
  /** @type {(at: string) => number} */
  const waiting = (at) => cards.filter(({ opens }) => opens === at).length;
  return markup`<section class="to-come" aria-labelledby="home--to-come">
<h2 id="home--to-come">To come</h2>
<ol class="openings">
${instants.map((at) => markup`<li>${awaited(at, property.zone)} ${cardsWaiting(waiting(at))}</li>\n`)}</ol>
</section>`;
}

/** @param {number} count */
function cardsWaiting(count) {
  return count === 1 ? 'One card is to be revealed.' : `${String(count)} cards are to be revealed.`;
}
