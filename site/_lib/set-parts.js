import { downloadList } from './downloads.js';
import { markup } from './markup.js';
import { cardTable } from './tables.js';
import { foundWords, groupName, listed } from './words.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./rows.js').RowsOf} RowsOf */
/** @typedef {import('./types.js').SiteData} SiteData */
/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {import('./types.js').PublicSubset} PublicSubset */
/** @typedef {PublicSet['products'][number]} Product */

/**
 * What a shop sells of the set, and what is in it.
 *
 * @param {PublicSet} set
 * @returns {Markup | null}
 */
export function productsOf({ products }) {
  if (products.length === 0) return null;
  return markup`<dl class="products">
${products.map((product) => markup`<div><dt>${product.title}</dt><dd>${contentsOf(product)}</dd></div>\n`)}</dl>`;
}

/**
 * "6 cards a pack, 24 packs a box".
 *
 * @param {Product} product
 */
function contentsOf({ pack, box }) {
  const facts = [
    pack !== null && `${String(pack)} ${pack === 1 ? 'card' : 'cards'} a pack`,
    box !== null && `${String(box)} ${box === 1 ? 'pack' : 'packs'} a box`,
  ];
  return facts.filter((fact) => fact !== false).join(', ');
}

/** @param {PublicSubset} subset */
export function isRoster({ cards, artists }) {
  return cards.length === 0 && artists.length > 0;
}

/**
 * "38 cards listed"; of a roster "21 artists".
 *
 * @param {PublicSubset} subset
 */
export function tallyOf(subset) {
  if (!isRoster(subset)) return listed(subset.listed);
  return subset.artists.length === 1 ? '1 artist' : `${String(subset.artists.length)} artists`;
}

/**
 * "Box toppers, found in boxes".
 *
 * @param {PublicSubset} subset
 */
export function kindOf({ group, found }) {
  return `${groupName(group)}${found === null ? '' : `, ${foundWords(found)}`}`;
}

/**
 * The cards of a subset, or whoever draws them.
 *
 * @param {PublicSubset} subset
 * @param {PublicSet} set
 * @param {string} head
 * @param {RowsOf} page
 */
export function subsetBody(subset, set, head, page) {
  const tally = subset.cards.length === 0 && markup`<p class="tally">${tallyOf(subset)}</p>`;
  return markup`${cardTable(subset, set, head, page)}${tally}
${artists(subset)}`;
}

/** @param {PublicSubset} subset */
function artists({ artists: names }) {
  if (names.length === 0) return null;
  return markup`<h3>Artists</h3>
<ul class="artists">
${names.map((name) => markup`<li>${name}</li>\n`)}</ul>`;
}

/**
 * A section beside the subsets.
 *
 * @param {string} id
 * @param {string} title
 * @param {Markup | null} body
 */
export function sideSection(id, title, body) {
  if (body === null) return null;
  return markup`<section class="subset aside" id="${id}" aria-labelledby="${id}-title">
<div class="side"><h2 id="${id}-title">${title}</h2></div>
<div class="body">${body}</div>
</section>
`;
}

/**
 * The files of a set, with the terms of their use.
 *
 * @param {PublicSet} set
 * @param {string} root
 * @param {SiteData} site
 */
export function filesOf(set, root, { downloads, publicData }) {
  const files = downloads.filter((file) => file.set === set.id);
  const { dataTerms } = publicData.property;
  if (files.length === 0) return null;
  return markup`${downloadList(files, root)}${dataTerms !== null && markup`<p class="terms">${dataTerms}</p>`}`;
}
