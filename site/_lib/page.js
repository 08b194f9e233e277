import { assetsOf, isFirst } from './assets.js';
import { moment } from './dates.js';
import { markup } from './markup.js';
import { menuOf } from './menu.js';
import { scriptFiles } from './scripts.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./menu.js').Place} Place */
/** @typedef {import('./scripts.js').Script} Script */
/** @typedef {import('./types.js').SiteData} SiteData */

const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self'",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'self'",
].join('; ');

/**
 * What a page is.
 *
 * @typedef {object} Page
 * @property {string} root The way up to the top of the site: "./", "../" and so on.
 * @property {string | null} path Its address below the site; null for the page that is missing.
 * @property {string} title
 * @property {string} kind The class of the body.
 * @property {Place | null} [here] Which of the pages of the menu this is.
 * @property {Script} [script] The script of its own, besides that of every page.
 * @property {Markup} [head] More for its head.
 * @property {Markup} main
 */

/**
 * A whole page.
 *
 * @param {SiteData} data
 * @param {Page} page
 * @returns {string}
 */
export function page(data, { root, path, title, kind, here = null, script, head, main }) {
  const { property, preview } = data.publicData;
  const { styles, mark } = assetsOf(data);
  const whole = title === property.siteTitle ? title : `${title} · ${property.siteTitle}`;
  return markup`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
${preview && markup`<meta name="robots" content="noindex">\n`}<title>${whole}</title>
${firstFonts(data, root)}<link rel="stylesheet" href="${root}${styles.file}">
<link rel="icon" type="image/svg+xml" href="${root}${mark.file}">
${elsewhere(data, root)}${path !== null && sharing(data, path, title)}${head}${scripts(root, 'reader')}${script && scripts(root, script)}</head>
<body class="${kind}" data-root="${root}">
<a class="skip" href="#main--content">Skip to the content</a>
${preview && previewNotice(data)}${masthead(data, root, here)}
<main id="main--content" tabindex="-1">
${main}
</main>
${colophon(data)}
</body>
</html>
`.text;
}

/**
 * @param {SiteData} data
 * @param {string} root
 */
function firstFonts({ fonts }, root) {
  const kind = markup`rel="preload" as="font" type="font/woff2" crossorigin`;
  return fonts.filter(isFirst).map(({ file }) => markup`<link ${kind} href="${root}${file}">\n`);
}

/**
 * The same in other forms: data, feed and calendar.
 *
 * @param {SiteData} data
 * @param {string} root
 */
function elsewhere({ downloads }, root) {
  const known = downloads.filter(({ path }) =>
    ['data.json', 'feed.atom', 'lifts.ics'].includes(path),
  );
  return known.map(
    ({ path, title, type }) =>
      markup`<link rel="alternate" type="${type}" title="${title}" href="${root}${path}">\n`,
  );
}

/**
 * Where the page stands, and what is shown when somebody passes it on: the site's picture, and no
 * name of a card, since it is shown unasked.
 *
 * @param {SiteData} data
 * @param {string} path
 * @param {string} title
 */
function sharing({ publicData: { property }, downloads }, path, title) {
  const { address, siteTitle } = property;
  if (address === null) return null;
  const share = downloads.find(({ kind }) => kind === 'share image');
  const image =
    share &&
    markup`<meta property="og:image" content="${address}${share.path}">
<meta property="og:image:width" content="1200">
<meta property="og:image:height" content="630">
<meta property="og:image:alt" content="${siteTitle}">\n`;
  return markup`<link rel="canonical" href="${address}${path}">
<meta property="og:type" content="website">
<meta property="og:title" content="${title}">
<meta property="og:site_name" content="${siteTitle}">
<meta property="og:url" content="${address}${path}">
${image}`;
}

/**
 * @param {string} root
 * @param {Script} name
 */
function scripts(root, name) {
  const { file, imports } = scriptFiles(name);
  const early = imports.map(
    (imported) => markup`<link rel="modulepreload" href="${root}${imported}">\n`,
  );
  return markup`${early}<script type="module" src="${root}${file}"></script>\n`;
}

/** @param {SiteData} data */
function previewNotice({ publicData }) {
  const when = moment(publicData.asOf, publicData.property.zone);
  return markup`<aside class="preview" aria-label="Preview">
<p><strong>Preview.</strong> This is the list as it will stand on ${when}.
It is not to be passed on before then.</p>
</aside>
`;
}

/**
 * @param {SiteData} data
 * @param {string} root
 * @param {Place | null} here
 */
function masthead({ publicData }, root, here) {
  return markup`<header class="masthead">
<p class="property">${publicData.property.siteTitle}</p>
<nav aria-label="Site"><ul>
${menuOf(publicData).map(({ place, words, address }) => {
  const current = place === here && markup` aria-current="page"`;
  return markup`<li><a href="${root}${address}"${current}>${words}</a></li>\n`;
})}</ul></nav>
${waterline()}
</header>`;
}

/** The line of the water, drawn as wide as the page. */
function waterline() {
  const wave = markup`<path d="M-9 5q9-5 18 0t18 0 18 0" fill="none" stroke="currentColor" stroke-width="1.4"/>`;
  return markup`<svg class="waterline" aria-hidden="true" focusable="false" width="100%" height="10">
<defs><pattern id="water--line" width="36" height="10" patternUnits="userSpaceOnUse">${wave}</pattern></defs>
<rect width="100%" height="10" fill="url(#water--line)"/></svg>`;
}

/** @param {SiteData} data */
function colophon({ publicData }) {
  const { legal, zone } = publicData.property;
  return markup`<footer class="colophon">
<p>As of ${moment(publicData.asOf, zone)}. The list may change.</p>
<p class="offline" hidden>You are offline. This is the list of that day.</p>
${legal !== null && markup`<p class="legal">${legal}</p>`}
</footer>`;
}
