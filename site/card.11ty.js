import { bioOf } from './_lib/bio.js';
import { detailsOf } from './_lib/details.js';
import { jsonLd } from './_lib/head.js';
import { markup } from './_lib/markup.js';
import { page } from './_lib/page.js';
import { numberOf } from './_lib/tables.js';
import { telling } from './_lib/telling.js';
import { folded, tellsMore } from './_lib/told.js';
import { isNameless, opening, printed } from './_lib/words.js';

/** @typedef {import('./_lib/types.js').SiteData} SiteData */
/** @typedef {import('./_lib/types.js').PublicData} PublicData */
/** @typedef {import('./_lib/types.js').PublicSet} PublicSet */
/** @typedef {import('./_lib/types.js').PublicSubset} PublicSubset */
/** @typedef {import('./_lib/types.js').PublicCard} PublicCard */
/** @typedef {{ set: PublicSet, subset: PublicSubset, card: PublicCard, at: number }} CardPage */

const ROOT = '../../../';

/** How many cards are named before and after the one that a page is about. */
const BESIDE = 2;

/** How wide the picture stands: beside the words, above them, across a telephone. */
const PICTURE_WIDTHS = '(min-width: 60rem) 20rem, (min-width: 30rem) 18rem, 80vw';

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
  const { publicData } = site;
  const { card, set, subset } = site.it;
  return page(site, {
    root: ROOT,
    path: card.page,
    title: titleOf(site.it),
    kind: `card ${kindOf(card)}`,
    head: jsonLd({ kind: 'card', set, subset, card }, site),
    main: markup`<nav class="way" aria-label="Where this card stands">
<ol>
<li><a href="../../">${set.short}</a></li>
<li><a href="../">${subset.title}</a></li>
</ol>
</nav>
<article>
<header>
<p class="number"><span class="unseen">Number </span>${numberOf(card)}</p>
${heading(site.it, publicData)}
${standing(card, publicData.property.zone)}</header>
${front(card, publicData)}
<div class="told-of">
${bioOf(card, publicData)}
${detailsOf(card, set, publicData)}
</div>
</article>
${tellsMore(card) && telling(publicData)}
${beside(site.it, publicData)}`,
  });
}

/**
 * A title stands in tabs and histories, where nothing can be folded.
 *
 * @param {CardPage} it
 */
function titleOf({ set, subset, card }) {
  const name = card.nameLevel === 0 ? card.name : subset.title;
  return `${printed(card)} ${name} · ${set.short}`.trim();
}

/**
 * @param {CardPage} it
 * @param {PublicData} publicData
 */
function heading({ subset, card }, publicData) {
  if (card.nameLevel === 0) return markup`<h1>${card.name}</h1>`;
  const name = folded(markup`<p class="name">${card.name}</p>`, card.nameLevel, publicData);
  return markup`<div class="heading"><h1 class="unseen">${subset.title} ${printed(card)}</h1>${name}</div>`;
}

/** @param {PublicCard} card */
function kindOf({ state }) {
  return state.replace(' ', '-');
}

/**
 * What is to be known of a card that is not shown.
 *
 * @param {PublicCard} card
 * @param {string} zone
 */
function standing(card, zone) {
  if (card.state === 'not issued') return markup`<p class="standing">not issued</p>\n`;
  const opens = opening(card, zone);
  if (opens === null) return null;
  const before = isNameless(card) && markup`<span class="unseen">to be revealed </span>`;
  return markup`<p class="standing">${before}${opens}</p>\n`;
}

/**
 * @param {PublicCard} card
 * @param {PublicData} publicData
 */
function front({ image }, publicData) {
  const sizes = [...(image?.files ?? [])].sort((a, b) => a.width - b.width);
  const largest = sizes.at(-1);
  if (image === null || largest === undefined) return null;
  const { file, width, height } = largest;
  const sources = sizes.map((size) => `${ROOT}${size.file} ${String(size.width)}w`).join(', ');
  const choice = markup`srcset="${sources}" sizes="${PICTURE_WIDTHS}"`;
  const place = markup`width="${width}" height="${height}"`;
  const picture = markup`<img src="${ROOT}${file}" ${choice} ${place} alt="${image.alt}" decoding="async">`;
  return markup`<figure class="front">${folded(picture, image.level, publicData)}</figure>`;
}

/**
 * The cards that stand before and after this one, with this one among them.
 *
 * @param {CardPage} it
 * @param {PublicData} publicData
 */
function beside({ subset, card, at }, publicData) {
  const first = Math.max(0, Math.min(at - BESIDE, subset.cards.length - 2 * BESIDE - 1));
  const near = subset.cards.slice(first, first + 2 * BESIDE + 1);
  if (near.length < 2) return null;
  return markup`<nav class="beside" aria-labelledby="card--beside">
<h2 id="card--beside">In ${subset.title}</h2>
<ol>
${near.map((other) => besideLine(other, other === card, publicData))}</ol>
</nav>`;
}

/**
 * A link in which nothing can be folded: what tells of the story goes without its name.
 *
 * @param {PublicCard} card
 * @param {boolean} isThis
 * @param {PublicData} publicData
 */
function besideLine(card, isThis, { property: { levels } }) {
  const kind = card.state !== 'shown' && markup` class="${kindOf(card)}"`;
  const number = markup`<span class="number">${numberOf(card)}</span>`;
  const name = card.nameLevel === 0 ? card.name : `Tells of ${levels[card.nameLevel] ?? ''}`;
  const words = markup`${number} <span class="name">${name}</span>`;
  if (card.page === null) return markup`<li${kind}><span class="line">${words}</span></li>\n`;
  const current = isThis && markup` aria-current="page"`;
  const link = markup`<a class="line" href="${ROOT}${card.page}"${current}>${words}</a>`;
  return markup`<li${kind}>${link}</li>\n`;
}
