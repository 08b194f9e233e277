import { markup } from './_lib/markup.js';
import { page } from './_lib/page.js';

/** @typedef {import('./_lib/types.js').SiteData} SiteData */

export const data = { permalink: '404.html' };

/**
 * A server shows this page at any address, so its links start at the top of the site.
 *
 * @param {SiteData} site
 */
export function render(site) {
  return page(site, {
    root: '/',
    path: null,
    title: 'No such page',
    kind: 'missing',
    main: markup`<h1>No page stands here</h1>
<p class="lede">It may not be revealed yet, or the address may be wrong.</p>
<p><a class="onward" href="/">All checklists</a></p>`,
  });
}
