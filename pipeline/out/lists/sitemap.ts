import type { PublicData } from '../../../schema/index.js';
import { isoDay } from '../wording/index.js';
import { newCards, newParallels } from './news.js';
import { escaped } from './plain.js';

/** sitemaps.org, protocol 0.9: at most so many addresses a file. */
const MOST = 50_000;

const NAME_SPACE = 'http://www.sitemaps.org/schemas/sitemap/0.9';

/** A file of the map of the site. */
export interface Sitemap {
  readonly path: string;
  readonly text: string;
}

/**
 * A map of the site for search engines (sitemaps.org, 0.9); none of a preview, and none of a site
 * without an address. Above 50,000 pages it is an index of several maps. The pages that the newest
 * news changed have its day.
 */
export function sitemaps(data: PublicData): readonly Sitemap[] {
  const { address } = data.property;
  if (address === null || data.preview) return [];
  const changed = changedPages(data);
  const dayOfChange = dayOfNews(data);
  const entries = pagesOf(data).map((page) => {
    const day = changed.has(page) ? dayOfChange : '';
    return `<url><loc>${escaped(`${address}${page}`)}</loc>${day}</url>\n`;
  });
  const path = 'sitemap.xml';
  if (entries.length <= MOST) return [{ path, text: wrappedIn('urlset', entries) }];
  const parts = Array.from({ length: Math.ceil(entries.length / MOST) }, (_, part) => ({
    path: `sitemap-${String(part + 1)}.xml`,
    text: wrappedIn('urlset', entries.slice(part * MOST, (part + 1) * MOST)),
  }));
  const index = parts.map(
    (part) => `<sitemap><loc>${escaped(`${address}${part.path}`)}</loc></sitemap>\n`,
  );
  return [{ path, text: wrappedIn('sitemapindex', index) }, ...parts];
}

function wrappedIn(element: string, entries: readonly string[]): string {
  return `<?xml version="1.0" encoding="UTF-8"?>
<${element} xmlns="${NAME_SPACE}">
${entries.join('')}</${element}>
`;
}

/** The pages of the site, as addresses below its top. */
function pagesOf(data: PublicData): string[] {
  return [
    ...besideSets(data),
    ...data.sets.flatMap(({ id, subsets }) => [
      `${id}/`,
      ...subsets.flatMap((subset) => [
        `${id}/${subset.id}/`,
        ...subset.cards.flatMap(({ page }) => page ?? []),
      ]),
    ]),
  ];
}

/** The pages beside the sets: one that would be empty is not there. */
function besideSets({ news, sets }: PublicData): string[] {
  const cards = sets.flatMap(({ subsets }) => subsets.flatMap((subset) => subset.cards));
  return [
    '',
    ...(news.length > 0 ? ['new/'] : []),
    ...(cards.some(({ signers }) => signers.length > 0) ? ['signers/'] : []),
    ...(sets.some(({ corrections }) => corrections.length > 0) ? ['corrections/'] : []),
    'about/',
  ];
}

/** The pages that the newest news changed. */
function changedPages(data: PublicData): ReadonlySet<string> {
  const [newest] = data.news;
  if (!newest) return new Set();
  const cards = newCards(data, newest).flatMap(({ set, subset, card, what, fields }) => [
    ...[`${set.id}/`, `${set.id}/${subset.id}/`, card.page ?? ''],
    ...(card.signers.length > 0 && (what !== 'more' || fields.includes('signers'))
      ? ['signers/']
      : []),
  ]);
  const parallels = newParallels(data, newest).flatMap(({ set, parallel }) => [
    `${set.id}/`,
    ...parallel.of.map((subset) => `${set.id}/${subset}/`),
  ]);
  return new Set(['', 'new/', ...cards, ...parallels]);
}

function dayOfNews({ news, property }: PublicData): string {
  const [newest] = news;
  return newest ? `<lastmod>${isoDay(newest.at, property.zone)}</lastmod>` : '';
}
