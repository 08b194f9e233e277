import type { PublicData, PublicSet } from '../../../schema/index.js';
import { atomFeed } from './atom.js';
import { liftsCalendar } from './calendar.js';
import { checklistCsv } from './csv.js';
import { checklistFragment } from './fragment.js';
import { checklistJson } from './json.js';
import type { SiteList } from './site-list.js';
import { sitemaps } from './sitemap.js';
import { checklistText } from './text.js';

export { shareImage } from './share-image.js';
export type { SiteList } from './site-list.js';

const encoder = new TextEncoder();

/**
 * Everything for programs and for other people's pages, made of the public data alone: the lists of
 * each set in the order of the sets, then the lists of the site. There is a map of the site only
 * where it has an address, and none of a preview.
 * @throws RangeError for an instant that is not RFC 9557.
 */
export function siteLists(data: PublicData): readonly SiteList[] {
  return [...data.sets.flatMap((set) => listsOf(data, set)), ...listsOfSite(data)];
}

function listsOf(data: PublicData, set: PublicSet): SiteList[] {
  const list = (
    name: string,
    kind: SiteList['kind'],
    title: string,
    type: string,
    text: string,
  ): SiteList => ({
    path: `${set.id}/${name}`,
    set: set.id,
    kind,
    title: `${set.short}: ${title}`,
    type,
    bytes: encoder.encode(text),
  });
  return [
    list('checklist.csv', 'csv', 'checklist as CSV', 'text/csv', checklistCsv(data, set)),
    list('checklist.txt', 'text', 'checklist as text', 'text/plain', checklistText(data, set)),
    list(
      'checklist.json',
      'json',
      'checklist as JSON',
      'application/json',
      checklistJson(data, set),
    ),
    list(
      'fragment.html',
      'fragment',
      'checklist for another page',
      'text/html',
      checklistFragment(data, set),
    ),
  ];
}

function listsOfSite(data: PublicData): SiteList[] {
  const list = (
    path: string,
    kind: SiteList['kind'],
    title: string,
    type: string,
    text: string,
  ): SiteList => ({ path, set: null, kind, title, type, bytes: encoder.encode(text) });
  return [
    list('feed.atom', 'feed', 'What is new, as a feed', 'application/atom+xml', atomFeed(data)),
    list(
      'lifts.ics',
      'calendar',
      'When more is revealed, as a calendar',
      'text/calendar',
      liftsCalendar(data),
    ),
    ...sitemaps(data).map(({ path, text }) =>
      list(path, 'sitemap', 'Map of the site', 'application/xml', text),
    ),
  ];
}
