import { html } from './_lib/html.js';
import { page } from './_lib/page.js';
import { cardTable, correctionTable, parallelTable } from './_lib/tables.js';
import { setTitle, streetDays } from './_lib/titles.js';
import { foundWords, groupName, listed } from './_lib/words.js';

/** @typedef {import('./_lib/types.js').SiteData} SiteData */
/** @typedef {import('./_lib/types.js').PublicSet} PublicSet */
/** @typedef {import('./_lib/types.js').PublicSubset} PublicSubset */
/** @typedef {import('./_lib/types.js').PublicData} PublicData */
/** @typedef {import('./_lib/html.js').Markup} Markup */

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
  return page(site, {
    root: ROOT,
    title: set.short,
    kind: 'set',
    main: html`<div class="opening">
        <h1>${setTitle(set, publicData)}</h1>
        <p class="lede">
          ${set.street.length > 0 && html`In shops ${streetDays(set, publicData)}. `}${listed(set.listed)}.
        </p>
      </div>
      ${contents(set)} ${set.subsets.map((subset) => subsetSection(subset, zone))}
      ${sideSection('set--parallels', 'Parallels', parallelTable(set))}
      ${sideSection('set--corrections', 'Corrections', correctionTable(set))}`,
  });
}

/** @param {PublicSet} set */
function contents(set) {
  const further = [
    set.parallels.length > 0 && entry('set--parallels', 'Parallels', null),
    set.corrections.length > 0 && entry('set--corrections', 'Corrections', null),
  ];
  return html`<nav class="contents-of-set" aria-label="In this set">
    <ul class="contents">
      ${set.subsets.map(({ id, title, listed: count }) => entry(id, title, count))}${further}
    </ul>
  </nav>`;
}

/**
 * @param {string} id
 * @param {string} title
 * @param {number | null} count
 */
function entry(id, title, count) {
  return html`<li>
    <a href="#${id}"
      ><span class="what">${title}</span
      >${count !== null && html`<span class="leader" aria-hidden="true"></span><span class="count"><span class="unseen">, </span>${count}<span class="unseen"> listed</span></span>`}</a
    >
  </li> `;
}

/**
 * @param {PublicSubset} subset
 * @param {string} zone
 */
function subsetSection(subset, zone) {
  const about = [groupName(subset.group), subset.found !== null && foundWords(subset.found)];
  return html`<section class="subset" id="${subset.id}" aria-labelledby="${subset.id}--title">
    <div class="side">
      <h2 id="${subset.id}--title">${subset.title}</h2>
      <p>${about.filter((words) => words !== false).join(', ')}</p>
    </div>
    <div class="body">
      ${cardTable(subset, ROOT, zone)}
      ${subset.cards.length === 0 && html`<p class="tally">${listed(subset.listed)}</p>`}
      ${artists(subset)}
    </div>
  </section> `;
}

/** @param {PublicSubset} subset */
function artists(subset) {
  if (subset.artists.length === 0) return null;
  return html`<h3>Artists</h3>
    <ul class="artists">
      ${subset.artists.map((name) => html`<li>${name}</li> `)}
    </ul>`;
}

/**
 * @param {string} id
 * @param {string} title
 * @param {Markup | null} table
 */
function sideSection(id, title, table) {
  if (table === null) return null;
  return html`<section class="subset" id="${id}" aria-labelledby="${id}-title">
    <div class="side"><h2 id="${id}-title">${title}</h2></div>
    <div class="body">${table}</div>
  </section> `;
}
