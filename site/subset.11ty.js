import { jsonLd } from './_lib/head.js';
import { markup } from './_lib/markup.js';
import { page } from './_lib/page.js';
import { rowsOf } from './_lib/rows.js';
import { kindOf, subsetBody } from './_lib/set-parts.js';
import { listHeads, tools } from './_lib/tools.js';

/** @typedef {import('./_lib/types.js').SiteData} SiteData */
/** @typedef {import('./_lib/types.js').PublicSet} PublicSet */
/** @typedef {import('./_lib/types.js').PublicSubset} PublicSubset */
/** @typedef {{ readonly set: PublicSet, readonly subset: PublicSubset }} SubsetPage */

const ROOT = '../../';

export const data = {
  pagination: {
    data: 'publicData.sets',
    size: 1,
    alias: 'it',
    /** @param {readonly PublicSet[]} sets */
    before: (sets) => sets.flatMap((set) => set.subsets.map((subset) => ({ set, subset }))),
  },
  /** @param {{ readonly it: SubsetPage }} item */
  permalink: ({ it }) => `${it.set.id}/${it.subset.id}/index.html`,
};

/** @param {SiteData & { readonly it: SubsetPage }} site */
export function render(site) {
  const { publicData } = site;
  const { set, subset } = site.it;
  const head = listHeads(set).get(subset) ?? set.short;
  return page(site, {
    root: ROOT,
    path: `${set.id}/${subset.id}/`,
    title: `${subset.title} · ${set.short}`,
    kind: 'set one-subset',
    script: 'checklist',
    head: jsonLd({ kind: 'subset', set, subset }, site),
    main: markup`<div class="opening">
<nav class="way" aria-label="Where these cards stand">
<ol>
<li><a href="../">${set.short}</a></li>
</ol>
</nav>
<h1>${subset.title}</h1>
<p class="lede">${kindOf(subset)}.</p>
</div>
${tools({ set, subsets: [subset], head, way: '../' }, publicData)}
<section class="subset" id="${subset.id}" aria-labelledby="${subset.id}--title">
<div class="side"><h2 class="unseen" id="${subset.id}--title">The list</h2></div>
<div class="body">${subsetBody(subset, set, head, rowsOf(set, ROOT, publicData))}</div>
</section>`,
  });
}
