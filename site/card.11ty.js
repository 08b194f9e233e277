import { bioOf } from './_lib/bio.js';
import { detailsOf } from './_lib/details.js';
import { html } from './_lib/html.js';
import { page } from './_lib/page.js';
import { numberOf } from './_lib/tables.js';
import { isNameless, opening, printed } from './_lib/words.js';

/** @typedef {import('./_lib/types.js').SiteData} SiteData */
/** @typedef {import('./_lib/types.js').PublicSet} PublicSet */
/** @typedef {import('./_lib/types.js').PublicSubset} PublicSubset */
/** @typedef {import('./_lib/types.js').PublicCard} PublicCard */
/** @typedef {{ set: PublicSet, subset: PublicSubset, card: PublicCard, at: number }} CardPage */

const ROOT = '../../../';
const BESIDE = 2;

export const data = {
  pagination: {
    data: 'publicData.sets',
    size: 1,
    alias: 'it',
    /** @param {readonly PublicSet[]} sets */
    before: (sets) => sets.flatMap(pagesOf),
  },
  /** @param {{ readonly it: CardPage }} item */
  permalink: ({ it }) => `${it.card.page ?? ''}index.html`,
};

/**
 * @param {PublicSet} set
 * @returns {readonly CardPage[]}
 */
function pagesOf(set) {
  return set.subsets.flatMap((subset) =>
    subset.cards.flatMap((card, at) => (card.page === null ? [] : [{ set, subset, card, at }])),
  );
}

/** @param {SiteData & { readonly it: CardPage }} site */
export function render(site) {
  const { card, set, subset } = site.it;
  const { zone } = site.publicData.property;
  const opens = opening(card, zone);
  return page(site, {
    root: ROOT,
    title: `${printed(card)} ${card.name} · ${set.short}`.trim(),
    kind: `card ${card.state.replace(' ', '-')}`,
    main: html`<nav class="way" aria-label="Where this card stands">
        <ol>
          <li><a href="../../">${set.short}</a></li>
          <li><a href="../../#${subset.id}">${subset.title}</a></li>
        </ol>
      </nav>
      <article>
        <header>
          <p class="number">
            ${card.number !== null && html`<span class="unseen">Number </span>${numberOf(card)}`}
          </p>
          <h1>${card.name}</h1>
          ${card.state === 'not issued' && html`<p class="standing">not issued</p>`}${opens !== null && html`<p class="standing">${isNameless(card) && html`<span class="unseen">to be revealed </span>`}${opens}</p>`}
        </header>
        ${front(card)}
        <div class="told">${bioOf(card)} ${detailsOf(card, set, site.publicData)}</div>
      </article>
      ${beside(site.it)}`,
  });
}

/** @param {PublicCard} card */
function front({ image }) {
  const sizes = [...(image?.files ?? [])].sort((a, b) => a.width - b.width);
  const largest = sizes.at(-1);
  if (image === null || largest === undefined) return null;
  const sources = sizes.map(({ file, width }) => `${ROOT}${file} ${String(width)}w`).join(', ');
  return html`<figure class="front">
    <img
      src="${ROOT}${largest.file}"
      srcset="${sources}"
      sizes="(min-width: 60rem) 20rem, (min-width: 30rem) 18rem, 80vw"
      width="${largest.width}"
      height="${largest.height}"
      alt="${image.alt}"
      decoding="async"
    />
  </figure>`;
}

/**
 * The cards that stand before and after this one, with this one among them.
 *
 * @param {CardPage} it
 */
function beside({ subset, card, at }) {
  const first = Math.max(0, Math.min(at - BESIDE, subset.cards.length - 2 * BESIDE - 1));
  const near = subset.cards.slice(first, first + 2 * BESIDE + 1);
  if (near.length < 2) return null;
  return html`<nav class="beside" aria-labelledby="card--beside">
    <h2 id="card--beside">In ${subset.title}</h2>
    <ol>
      ${near.map((other) => html`<li${other.state !== 'shown' && html` class="${other.state.replace(' ', '-')}"`}>${besideLine(other, other === card)}</li>\n`)}
    </ol>
  </nav>`;
}

/**
 * @param {PublicCard} card
 * @param {boolean} isThis
 */
function besideLine(card, isThis) {
  const words = html`<span class="number">${numberOf(card)}</span>
    <span class="name">${card.name}</span>`;
  if (card.page === null) return html`<span class="line">${words}</span>`;
  return html`<a class="line" href="${ROOT}${card.page}" ${isThis && html` aria-current="page"`}
    >${words}</a
  >`;
}
