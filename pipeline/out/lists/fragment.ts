import type { PublicCard, PublicData, PublicSet, PublicSubset } from '../../../schema/index.js';
import {
  asOfWords,
  kindWords,
  listed,
  subsetCount,
  nameTells,
  notes,
  previewWords,
  printed,
  rightsLines,
  series,
  streetWords,
} from '../wording/index.js';
import { addressOf } from './addresses.js';
import { folded } from './folded.js';
import { fragmentStyle } from './fragment-style.js';
import { escaped } from './plain.js';

/** Of a site that states no accent. */
const ACCENT = '#0b6e69';

/**
 * A set as a piece of HTML for somebody else's page: one section with its own style, which asks for
 * nothing else and has no ids. What tells of the story is folded.
 */
export function checklistFragment(data: PublicData, set: PublicSet): string {
  const own = `holdback-checklist-${set.id.replace(/[^A-Za-z0-9-]/g, '-')}`;
  const { zone, look } = data.property;
  const preview = previewWords(data);
  const street = streetWords(set, zone);
  const small = [asOfWords(data), ...rightsLines(data)];
  return `<section class="${own}" lang="en" aria-label="${escaped(`Checklist: ${set.title}`)}">
<style>
${fragmentStyle(own, look.accent ?? ACCENT)}</style>
<h2>${linked(data, set.title, `${set.id}/`)}</h2>
${preview === null ? '' : `<p><strong>${escaped(preview)}</strong></p>\n`}<p>${street === '' ? '' : `In shops ${escaped(street)}. `}${listed(set.listed)}.</p>
${set.subsets.map((subset) => subsetPart(data, subset)).join('')}${small
    .map((line) => `<p class="holdback-small">${escaped(line)}</p>\n`)
    .join('')}</section>
`;
}

function subsetPart(data: PublicData, subset: PublicSubset): string {
  const kind = escaped(`${kindWords(subset)}, ${subsetCount(subset)}`);
  const artists =
    subset.artists.length === 0 ? '' : `<p>Artists: ${escaped(series(subset.artists))}.</p>\n`;
  if (subset.cards.length === 0) {
    return `<p><strong>${escaped(subset.title)}</strong> ${kind}</p>\n${artists}`;
  }
  const columns = columnsOf(subset, data.property.zone);
  const heads = [
    ...(columns.numbered ? ['<th scope="col" class="holdback-number">Number</th>'] : []),
    '<th scope="col">Name</th>',
    ...(columns.noted ? ['<th scope="col" class="holdback-notes">Notes</th>'] : []),
  ];
  return `<table>
<caption>${escaped(subset.title)} <span class="holdback-kind">${kind}</span></caption>
<thead><tr>${heads.join('')}</tr></thead>
<tbody>
${subset.cards.map((card) => rowOf(data, card, columns)).join('')}</tbody>
</table>
${artists}`;
}

/** A column that would stay empty is left out. */
interface Columns {
  readonly numbered: boolean;
  readonly noted: boolean;
}

function columnsOf({ cards }: PublicSubset, zone: string): Columns {
  return {
    numbered: cards.some(({ number }) => number !== null),
    noted: cards.some((card) => notes(card, zone).length > 0),
  };
}

function rowOf(data: PublicData, card: PublicCard, { numbered, noted }: Columns): string {
  const { levels, zone } = data.property;
  const kind = card.state === 'placeholder' ? ' class="holdback-to-come"' : '';
  const name = [{ html: linked(data, card.name, card.page), level: nameTells(card) }];
  const said = notes(card, zone).map(({ words, level }) => ({ html: escaped(words), level }));
  const cells = [
    ...(numbered ? [numberCell(printed(card))] : []),
    `<td class="holdback-name">${folded(name, levels)}</td>`,
    ...(noted ? [`<td class="holdback-notes">${folded(said, levels)}</td>`] : []),
  ];
  return `<tr${kind}>${cells.join('')}</tr>\n`;
}

/** The number heads the row: a name may be folded, which nothing that heads a row can be. */
function numberCell(number: string): string {
  if (number === '') return '<td class="holdback-number"></td>';
  return `<th scope="row" class="holdback-number">${escaped(number)}</th>`;
}

/** Words that lead to a page of the site, where another page can know its address. */
function linked(data: PublicData, words: string, page: string | null): string {
  if (page === null || data.property.address === null) return escaped(words);
  return `<a href="${escaped(addressOf(data, page))}">${escaped(words)}</a>`;
}
