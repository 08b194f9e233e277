import { contents } from './_lib/contents.js';
import { jsonLd } from './_lib/head.js';
import { runsMade } from './_lib/made.js';
import { markup } from './_lib/markup.js';
import { oddsOf } from './_lib/odds.js';
import { page } from './_lib/page.js';
import { rowsOf } from './_lib/rows.js';
import {
  filesOf,
  kindOf,
  isRoster,
  productsOf,
  sideSection,
  subsetBody,
} from './_lib/set-parts.js';
import { correctionTable, parallelTable } from './_lib/tables.js';
import { setTitle, streetDays } from './_lib/titles.js';
import { listHeads, tools } from './_lib/tools.js';
import { listed } from './_lib/words.js';

/** @typedef {import('./_lib/types.js').SiteData} SiteData */
/** @typedef {import('./_lib/types.js').PublicSet} PublicSet */
/** @typedef {import('./_lib/types.js').PublicSubset} PublicSubset */
/** @typedef {import('./_lib/markup.js').Markup} Markup */

const ROOT = '../';

export const data = {
  pagination: { data: 'publicData.sets', size: 1, alias: 'set' },
  /** @param {{ readonly set: PublicSet }} item */
  permalink: ({ set }) => `${set.id}/index.html`,
};

/** @param {SiteData & { readonly set: PublicSet }} site */
export function render(site) {
  const { set, publicData } = site;
  const street = set.street.length > 0 && markup`In shops ${streetDays(set, publicData)}. `;
  const sides = {
    parallels: parallelTable(set),
    odds: oddsOf(set),
    runs: runsMade(set),
    corrections: correctionTable(set, ROOT, publicData),
    files: filesOf(set, ROOT, site),
  };
  return page(site, {
    root: ROOT,
    path: `${set.id}/`,
    title: set.short,
    kind: 'set',
    script: 'checklist',
    head: jsonLd({ kind: 'set', set }, site),
    main: markup`<div class="opening">
<h1>${setTitle(set, publicData)}</h1>
<p class="lede">${street}${listed(set.listed)}.</p>
${productsOf(set)}
</div>
${tools({ set, subsets: set.subsets, head: set.short, way: './' }, publicData)}
<nav class="contents-of-set" aria-label="In this set">
${contents(entriesOf(set, sides))}
</nav>
${sections(set, site)}
${sideSection('set--parallels', 'Parallels', sides.parallels)}
${sideSection('set--odds', 'Odds', sides.odds)}
${sideSection('set--runs', 'Runs', sides.runs)}
${sideSection('set--corrections', 'Corrections', sides.corrections)}
${sideSection('set--files', 'Files', sides.files)}`,
  });
}

/**
 * @param {PublicSet} set
 * @param {Readonly<Record<'parallels' | 'odds' | 'runs' | 'corrections' | 'files', Markup | null>>} sides
 */
function entriesOf({ subsets }, { parallels, odds, runs, corrections, files }) {
  /** @type {(title: string, id: string, count: number | null) => import('./_lib/contents.js').Entry} */
  const entry = (title, id, count) => ({ title, address: `#${id}`, count });
  return [
    ...subsets.map((subset) => entry(subset.title, subset.id, countOf(subset))),
    ...(parallels ? [entry('Parallels', 'set--parallels', null)] : []),
    ...(odds ? [entry('Odds', 'set--odds', null)] : []),
    ...(runs ? [entry('Runs', 'set--runs', null)] : []),
    ...(corrections ? [entry('Corrections', 'set--corrections', null)] : []),
    ...(files ? [entry('Files', 'set--files', null)] : []),
  ];
}

/** @param {PublicSubset} subset */
function countOf(subset) {
  return isRoster(subset) ? subset.artists.length : subset.listed;
}

/**
 * @param {PublicSet} set
 * @param {SiteData} site
 */
function sections(set, { publicData }) {
  const heads = listHeads(set);
  const rows = rowsOf(set, ROOT, publicData);
  return set.subsets.map((subset) => {
    const { id, title } = subset;
    return markup`<section class="subset" id="${id}" aria-labelledby="${id}--title">
<div class="side"><h2 id="${id}--title"><a href="${id}/">${title}</a></h2>
<p>${kindOf(subset)}</p></div>
<div class="body">${subsetBody(subset, set, heads.get(subset) ?? '', rows)}</div>
</section>
`;
  });
}
