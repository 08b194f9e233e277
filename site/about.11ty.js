import { HELD } from './_lib/bio.js';
import { downloadList } from './_lib/downloads.js';
import { markup } from './_lib/markup.js';
import { page } from './_lib/page.js';
import { folds } from './_lib/told.js';

/** @typedef {import('./_lib/markup.js').Markup} Markup */
/** @typedef {import('./_lib/types.js').SiteData} SiteData */

export const data = { permalink: 'about/index.html' };

/** @param {SiteData} site */
export function render(site) {
  const { publicData } = site;
  const { title, legal } = publicData.property;
  return page(site, {
    root: '../',
    path: 'about/',
    title: 'About and data',
    kind: 'about',
    here: 'about',
    main: markup`<h1>About this list</h1>
${section(
  'listed',
  'What is listed',
  markup`<p>The trading cards of ${title}, set by set and in the
order of their numbers. A figure such as <q>20 cards listed</q> counts what stands on the page. A card
that was announced and then withdrawn keeps its number and says <q>not issued</q>; it is not
counted.</p>`,
)}
${section(
  'held',
  'What is to be revealed',
  markup`<p>Some cards, names and passages tell more than may
be told yet. They read ${HELD}, with the day where a day is announced. The mark is always the same,
however much it stands for. Nothing of what it stands for is in these pages or in the files behind
them. When the day comes, this list is made anew.</p>`,
)}
${
  folds(publicData) &&
  section(
    'folded',
    'What is folded',
    markup`<p>What is revealed may still be more
than you want to know today. Choose on any list how much of the story you want to be told: whatever
tells more stays folded until you open it. This device remembers the choice. Folding is a courtesy of
these pages and no lock: the words stand in the page, in the files below and with whoever has copied
them.</p>`,
  )
}
${section(
  'ticked',
  'What you tick off',
  markup`<p>Your ticks and your choice stay on this device and
are sent to nobody: there is no account and no counting of visitors. Whoever uses this browser can see
them, and they go when its data are cleared, so keep a copy: every list can write them to a file and
read them back. After one visit the lists work without a connection, and say of which day they
are.</p>`,
)}
${section(
  'changes',
  'What may change',
  markup`<p>The list may change, before the cards are in shops and
after. Names, numbers, runs and days are given in good faith and are no promise of what a pack, a box or
a shop will hold. Where something was printed or listed wrongly, the page of the set says so under
<q>Corrections</q>.</p>`,
)}
${section('data', 'Data', dataFiles(site))}
${legal !== null && section('rights', 'Rights', markup`<p>${legal}</p>`)}`,
  });
}

/**
 * @param {string} id
 * @param {string} title
 * @param {Markup} words
 */
function section(id, title, words) {
  return markup`<section aria-labelledby="about--${id}">
<h2 id="about--${id}">${title}</h2>
${words}
</section>`;
}

/** @param {SiteData} site */
function dataFiles({ downloads, publicData }) {
  const { dataTerms } = publicData.property;
  const own = downloads.filter(({ set, kind }) => set === null && kind !== 'share image');
  const terms = dataTerms !== null && markup`<p>${dataTerms}</p>`;
  return markup`${terms}
${downloadList(own, '../')}
<p>Every set has files of its own, on its page. <a href="../release.json">release.json</a> tells the day
for which the site was made, and the SHA-256 of each of its files.</p>`;
}
