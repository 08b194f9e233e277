import { jsonLdOf, jsonLdText } from './json-ld.js';
import { Markup, markup } from './markup.js';

/** @typedef {import('./types.js').SiteData} SiteData */

/**
 * What the page is about, for programs: JSON-LD in the terms of schema.org. It is data and no
 * script, so that the policy of the page lets it stand.
 *
 * @param {Parameters<typeof jsonLdOf>[0]} about
 * @param {SiteData} site
 */
export function jsonLd(about, site) {
  const text = new Markup(jsonLdText(jsonLdOf(about, site)));
  return markup`<script type="application/ld+json">${text}</script>\n`;
}
