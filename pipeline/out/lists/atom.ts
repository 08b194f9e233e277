import type { PublicData, PublicNews } from '../../../schema/index.js';
import { cardCount, dayWords, previewWords, rfc3339, rightsLines } from '../wording/index.js';
import { addressOf } from './addresses.js';
import { entryContent } from './atom-content.js';
import { siteUuid, stepId } from './identity.js';
import { newCards, newParallels } from './news.js';
import { escaped } from './plain.js';

/**
 * What the last steps of time told, as a feed (Atom, RFC 4287): an entry for each step. Readers of
 * feeds show entries to people who did not ask, so that no name that tells anything stands in it.
 */
export function atomFeed(data: PublicData): string {
  const { siteTitle, zone } = data.property;
  const rights = rightsLines(data).join(' · ');
  const lines = [
    `<id>urn:uuid:${siteUuid(data, 'feed')}</id>`,
    `<title>${escaped(feedTitle(data))}</title>`,
    `<updated>${rfc3339(data.asOf, zone)}</updated>`,
    `<author><name>${escaped(siteTitle)}</name></author>`,
    ...(rights === '' ? [] : [`<rights>${escaped(rights)}</rights>`]),
    `<link rel="self" type="application/atom+xml" href="${escaped(addressOf(data, 'feed.atom'))}"/>`,
    `<link rel="alternate" type="text/html" href="${escaped(addressOf(data, ''))}"/>`,
    ...data.news.map((news) => entryOf(data, news)),
  ];
  return `<?xml version="1.0" encoding="utf-8"?>
<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en">
${lines.join('\n')}
</feed>
`;
}

function feedTitle(data: PublicData): string {
  const preview = previewWords(data);
  const { siteTitle } = data.property;
  return preview === null ? siteTitle : `${preview} ${siteTitle}`;
}

function entryOf(data: PublicData, news: PublicNews): string {
  const page = escaped(addressOf(data, 'new/'));
  return `<entry>
<id>${escaped(stepId(data, news.at))}</id>
<title>${escaped(entryTitle(data, news))}</title>
<updated>${rfc3339(news.at, data.property.zone)}</updated>
<link rel="alternate" type="text/html" href="${page}"/>
<content type="xhtml"><div xmlns="http://www.w3.org/1999/xhtml">
${entryContent(data, news)}</div></content>
</entry>`;
}

/** "Revealed on 16 April 2027: 38 cards", "Revealed on 16 April 2027: 1 parallel; more told: 2 cards". */
function entryTitle(data: PublicData, news: PublicNews): string {
  const cards = newCards(data, news);
  const revealed = cards.filter(({ what }) => what === 'revealed').length;
  const parallels = newParallels(data, news).length;
  const more = cards.length - revealed;
  const first = [
    ...(revealed > 0 ? [cardCount(revealed)] : []),
    ...(parallels > 0 ? [parallels === 1 ? '1 parallel' : `${String(parallels)} parallels`] : []),
  ];
  const day = dayWords(news.at, data.property.zone);
  if (first.length === 0) return `More told on ${day}: ${cardCount(more)}`;
  const opening = `Revealed on ${day}: ${first.join(' and ')}`;
  return more === 0 ? opening : `${opening}; more told: ${cardCount(more)}`;
}
