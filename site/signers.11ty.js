import { markup } from './_lib/markup.js';
import { page } from './_lib/page.js';
import { single } from './_lib/single.js';
import { signersOf } from './_lib/signers.js';
import { numberOf } from './_lib/tables.js';
import { telling } from './_lib/telling.js';
import { folded } from './_lib/told.js';
import { series } from './_lib/words.js';

/** @typedef {import('./_lib/types.js').SiteData} SiteData */
/** @typedef {import('./_lib/types.js').PublicData} PublicData */
/** @typedef {import('./_lib/signers.js').Signer} Signer */
/** @typedef {import('./_lib/signers.js').Signing} Signing */

const ROOT = '../';

export const data = single('signers');

/** @param {SiteData} site */
export function render(site) {
  const { publicData } = site;
  const signers = signersOf(publicData);
  const many = signers.length === 1 ? 'One signer' : `${String(signers.length)} signers`;
  return page(site, {
    root: ROOT,
    path: 'signers/',
    title: 'Signers',
    kind: 'signers',
    here: 'signers',
    main: markup`<h1>Signers</h1>
<p class="lede">${many}, with the cards that they sign. A card that several sign stands under each.
Who signs a redemption card signs it later.</p>
${telling(publicData)}
<ul class="signers-list">
${signers.map((signer) => entry(signer, publicData))}</ul>`,
  });
}

/**
 * @param {Signer} signer
 * @param {PublicData} publicData
 */
function entry({ name, level, signings }, publicData) {
  const head = folded(markup`<span class="name">${name}</span>`, level, publicData);
  const heading = level === 0 ? markup`${name}` : markup`<span class="unseen">A signer</span>`;
  return markup`<li><h2>${heading}</h2>
${level > 0 && head}
<ul class="rows">
${signings.map((signing) => line(signing, publicData))}</ul></li>
`;
}

/**
 * @param {Signing} signing
 * @param {PublicData} publicData
 */
function line({ set, subset, card, as, redemption, others }, publicData) {
  const number = markup`<span class="number">${numberOf(card)}</span>`;
  const linked = card.page === null ? number : markup`<a href="${ROOT}${card.page}">${number}</a>`;
  const said = [as !== null && `as ${as}`, others.length > 0 && `with ${series(others)}`];
  const told = said.filter((words) => words !== false).join(', ');
  const place = `${set.short}: ${subset.title}${redemption ? ' (redemption)' : ''}`;
  const more = folded(told, card.signersLevel, publicData);
  return markup`<li>${linked}<div class="what">${place}${told !== '' && markup` <div class="more">${more}</div>`}</div></li>\n`;
}
