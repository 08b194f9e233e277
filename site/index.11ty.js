import { moment } from './_lib/dates.js';
import { html } from './_lib/html.js';
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
  return page(site, {
    root: './',
    title: property.title,
    kind: 'home',
    here: 'home',
    main: html`<h1>${property.title}</h1>
      <p class="lede">${lede(sets)}</p>
      <ol class="staff">
        ${sets.map((set) => setEntry(set, publicData))}
      </ol>
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
  const subsets = set.subsets.map(
    (subset) =>
      html`<li>
        <a href="${set.id}/#${subset.id}"
          ><span class="what">${subset.title}</span><span class="leader" aria-hidden="true"></span
          ><span class="count"
            ><span class="unseen">, </span>${subset.listed}<span class="unseen"> listed</span></span
          ></a
        >
      </li> `,
  );
  return html`<li>
    <p class="when">${set.street.length > 0 && html`In shops ${streetDays(set, publicData)}`}</p>
    <div class="entry">
      <h2><a href="${set.id}/">${setTitle(set, publicData)}</a></h2>
      <p class="tally">${listed(set.listed)}</p>
      ${
        subsets.length > 0 &&
        html`<ul class="contents">
          ${subsets}
        </ul>`
      }
    </div>
  </li> `;
}

/** @param {PublicData} publicData */
function openings({ openings: instants, property }) {
  if (instants.length === 0) return null;
  return html`<section class="to-come" aria-labelledby="home--to-come">
    <h2 id="home--to-come">To come</h2>
    <p>More of the list is to be revealed on these days.</p>
    <ol class="openings">
      ${instants.map((at) => html`<li>${moment(at, property.zone)}</li> `)}
    </ol>
  </section>`;
}
