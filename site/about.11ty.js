import { HELD } from './_lib/bio.js';
import { markup } from './_lib/markup.js';
import { page } from './_lib/page.js';

/** @typedef {import('./_lib/types.js').SiteData} SiteData */

export const data = { permalink: 'about/index.html' };

/** @param {SiteData} site */
export function render(site) {
  const { title, legal } = site.publicData.property;
  const rights = markup`<section aria-labelledby="about--rights">
<h2 id="about--rights">Rights</h2>
<p>${legal}</p>
</section>`;
  return page(site, {
    root: '../',
    title: 'About and data',
    kind: 'about',
    here: 'about',
    main: markup`<h1>About this list</h1>
<section aria-labelledby="about--listed">
<h2 id="about--listed">What is listed</h2>
<p>The trading cards of ${title}, set by set and in the order of their numbers. A figure such as
<q>20 cards listed</q> counts what stands on the page. A card that was announced and then withdrawn
keeps its number and says <q>not issued</q>; it is not counted.</p>
</section>
<section aria-labelledby="about--held">
<h2 id="about--held">What is to be revealed</h2>
<p>Some cards, names and passages tell more than may be told yet. They read ${HELD}, with the day
where a day is announced. The mark is always the same, however much it stands for. When the day
comes, this list is made anew.</p>
</section>
<section aria-labelledby="about--changes">
<h2 id="about--changes">What may change</h2>
<p>The list may change, before the cards are in shops and after. Names, numbers, runs and days are
given in good faith and are no promise of what a pack, a box or a shop will hold. Where something
was printed or listed wrongly, the page of the set says so under <q>Corrections</q>.</p>
</section>
<section aria-labelledby="about--data">
<h2 id="about--data">Data</h2>
<ul class="files">
<li><a href="../data.json">data.json</a>
<span>everything that these pages say, for programs</span></li>
<li><a href="../release.json">release.json</a>
<span>the day for which the site was made, and the SHA-256 of each of its files</span></li>
</ul>
</section>
${legal !== null && rights}`,
  });
}
