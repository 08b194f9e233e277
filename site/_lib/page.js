import { assetsOf, isFirst } from './assets.js';
import { moment } from './dates.js';
import { markup } from './markup.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./types.js').SiteData} SiteData */

const POLICY = [
  "default-src 'none'",
  "style-src 'self'",
  "img-src 'self'",
  "font-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/**
 * A whole page.
 *
 * @param {SiteData} data
 * @param {object} page
 * @param {string} page.root The way up to the top of the site: "./", "../" and so on.
 * @param {string} page.title
 * @param {string} page.kind The class of the body.
 * @param {'home' | 'about' | null} [page.here] Which of the pages of the menu this is.
 * @param {Markup} page.main
 * @returns {string}
 */
export function page(data, { root, title, kind, here = null, main }) {
  const { property, preview } = data.publicData;
  const { styles, mark } = assetsOf(data);
  const whole = title === property.title ? title : `${title} · ${property.title}`;
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
<link rel="alternate" type="application/json" href="${root}data.json">
</head>
<body class="${kind}">
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
 * @param {'home' | 'about' | null} here
 */
function masthead({ publicData }, root, here) {
  /** @type {(name: string, words: string, address: string) => Markup} */
  const link = (name, words, address) => {
    const current = name === here && markup` aria-current="page"`;
    return markup`<li><a href="${address}"${current}>${words}</a></li>\n`;
  };
  return markup`<header class="masthead">
<p class="property">${publicData.property.title}</p>
<nav aria-label="Site"><ul>
${link('home', 'Checklists', root)}${link('about', 'About and data', `${root}about/`)}</ul></nav>
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
${legal !== null && markup`<p class="legal">${legal}</p>`}
</footer>`;
}
