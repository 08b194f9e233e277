import { day, hour } from './_lib/dates.js';
import { markup } from './_lib/markup.js';
import { page } from './_lib/page.js';
import { single } from './_lib/single.js';
import { numberOf } from './_lib/tables.js';
import { telling } from './_lib/telling.js';
import { folded } from './_lib/told.js';
import { setTitle } from './_lib/titles.js';
import { series } from './_lib/words.js';

/** @typedef {import('./_lib/markup.js').Markup} Markup */
/** @typedef {import('./_lib/types.js').SiteData} SiteData */
/** @typedef {import('./_lib/types.js').PublicData} PublicData */
/** @typedef {import('./_lib/types.js').PublicSet} PublicSet */
/** @typedef {PublicData['news'][number]} News */
/** @typedef {News['cards'][number]} NewsCard */

const ROOT = '../';

/** @type {Readonly<Record<NewsCard['fields'][number], string>>} */
const FIELDS = {
  name: 'the name',
  bio: 'the words',
  facts: 'facts',
  texts: 'what else is printed',
  image: 'the picture',
  signers: 'signers',
  credits: 'credits',
};

export const data = single('new');

/** @param {SiteData} site */
export function render(site) {
  const { publicData } = site;
  return page(site, {
    root: ROOT,
    path: 'new/',
    title: 'What is new',
    kind: 'new',
    here: 'new',
    main: markup`<h1>What is new</h1>
<p class="lede">What was revealed at each step, the newest first.</p>
${telling(publicData)}
${publicData.news.map((news, index) => step(news, index, publicData))}`,
  });
}

/**
 * @param {News} news
 * @param {number} index
 * @param {PublicData} publicData
 */
function step(news, index, publicData) {
  const id = `new--${String(index + 1)}`;
  const sets = publicData.sets.flatMap((set) => ofSet(set, news, publicData) ?? []);
  return markup`<section class="subset step" aria-labelledby="${id}">
<div class="side"><h2 id="${id}">${day(news.at, publicData.property.zone)}</h2>
<p>${hour(news.at, publicData.property.zone)}</p></div>
<div class="body">${sets}</div>
</section>
`;
}

/**
 * @param {PublicSet} set
 * @param {News} news
 * @param {PublicData} publicData
 * @returns {Markup | null}
 */
function ofSet(set, news, publicData) {
  const subsets = set.subsets.flatMap((subset) => {
    const lines = news.cards
      .filter((each) => each.set === set.id && each.subset === subset.id)
      .map((each) => line(each, subset, publicData));
    if (lines.length === 0) return [];
    return [
      markup`<h4><a href="${ROOT}${set.id}/${subset.id}/">${subset.title}</a></h4>\n<ul class="rows">\n${lines}</ul>\n`,
    ];
  });
  const parallels = set.parallels.filter(({ id }) =>
    news.parallels.some((each) => each.set === set.id && each.id === id),
  );
  if (subsets.length + parallels.length === 0) return null;
  const more = markup`<p>Parallels: ${series(parallels.map(({ title }) => title))}.</p>\n`;
  return markup`<h3>${setTitle(set, publicData)}</h3>\n${subsets}${parallels.length > 0 && more}`;
}

/**
 * @param {NewsCard} news
 * @param {PublicSet['subsets'][number]} subset
 * @param {PublicData} publicData
 */
function line({ at, what, fields }, subset, publicData) {
  const card = subset.cards[at];
  if (!card) return null;
  const number = markup`<span class="number">${numberOf(card)}</span>`;
  const linked = card.page === null ? number : markup`<a href="${ROOT}${card.page}">${number}</a>`;
  const name = folded(markup`<span class="name">${card.name}</span>`, card.nameLevel, publicData);
  const more = series(fields.map((field) => FIELDS[field]));
  return markup`<li>${linked}<div class="what">${name}${what === 'more' && markup` <span class="more">more of it: ${more}</span>`}</div></li>\n`;
}
