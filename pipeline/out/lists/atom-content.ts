import type { PublicData, PublicNews } from '../../../schema/index.js';
import { isNameless, nameTells, printed, series } from '../wording/index.js';
import { addressOf } from './addresses.js';
import { newCards, newParallels, type NewCard } from './news.js';
import { escaped } from './plain.js';

const FIELDS = {
  name: 'name',
  bio: 'bio',
  facts: 'facts',
  texts: 'texts of its back',
  image: 'picture',
  signers: 'signers',
  credits: 'credits',
} as const satisfies Record<NewCard['fields'][number], string>;

/** What a step told, set by set, as XHTML: numbers with links, and such names as tell nothing. */
export function entryContent(data: PublicData, news: PublicNews): string {
  const cards = newCards(data, news);
  const parallels = newParallels(data, news);
  return data.sets
    .map((set) => {
      const lines = [
        ...cards.filter((each) => each.set === set).map((each) => cardLine(data, each)),
        ...parallels
          .filter((each) => each.set === set)
          .map(({ parallel }) => `The parallel ${escaped(parallel.title)} is revealed`),
      ];
      if (lines.length === 0) return '';
      const items = lines.map((line) => `<li>${line}</li>\n`).join('');
      return `<p>${escaped(set.title)}</p>\n<ul>\n${items}</ul>\n`;
    })
    .join('');
}

/** "Lake Charts LC-4 is revealed"; a name that tells nothing stands after the number. */
function cardLine(data: PublicData, { subset, card, what, fields }: NewCard): string {
  const number = printed(card);
  const place = escaped(number === '' ? `A card of ${subset.title}` : `${subset.title} ${number}`);
  const address = card.page === null ? null : escaped(addressOf(data, card.page));
  const linked = address === null ? place : `<a href="${address}">${place}</a>`;
  const isOpen = nameTells(card) === 0 && !isNameless(card);
  const name = isOpen ? `, ${escaped(card.name)},` : '';
  return `${linked}${name} ${happened(card.state, what, fields)}`;
}

function happened(
  state: NewCard['card']['state'],
  what: NewCard['what'],
  fields: NewCard['fields'],
): string {
  if (state === 'not issued') return 'is listed as not issued';
  if (what === 'revealed') return 'is revealed';
  const told = series(fields.map((field) => FIELDS[field]));
  return told === '' ? 'tells more' : `tells more: ${told}`;
}
