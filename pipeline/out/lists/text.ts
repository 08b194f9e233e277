import type { PublicCard, PublicData, PublicSet, PublicSubset } from '../../../schema/index.js';
import {
  asOfWords,
  isNameless,
  kindWords,
  listed,
  subsetCount,
  notes,
  plainDayWords,
  previewWords,
  printed,
  rightsLines,
  runWords,
  series,
  streetWords,
} from '../wording/index.js';
import { addressOf } from './addresses.js';
import { plain } from './plain.js';
import { widthOf, wrapped } from './wrap.js';

/** What a card that can be had opens with, and one that cannot. */
const BOX = '[ ] ';
const NO_BOX = '    ';

/** Numbers that are wider do not make a column. */
const WIDEST_NUMBER = 16;

/** A set as plain text for forums and mail, to be ticked off by hand. */
export function checklistText(data: PublicData, set: PublicSet): string {
  const { zone } = data.property;
  const parts = [
    openingLines(data, set),
    ...set.subsets.map((subset) => subsetLines(subset, zone)),
    parallelLines(set),
    correctionLines(set),
    rightsLines(data).flatMap((line) => wrapped(plain(line))),
  ];
  return parts
    .filter((lines) => lines.length > 0)
    .map((lines) => `${lines.join('\n')}\n`)
    .join('\n');
}

function openingLines(data: PublicData, set: PublicSet): string[] {
  const preview = previewWords(data);
  const street = streetWords(set, data.property.zone);
  const lines = [
    ...(preview === null ? [] : [preview]),
    set.title,
    asOfWords(data),
    `${street === '' ? '' : `In shops ${street}. `}${listed(set.listed)}.`,
    ...(data.property.address === null ? [] : [addressOf(data, `${set.id}/`)]),
  ];
  return lines.flatMap((line) => wrapped(plain(line)));
}

function subsetLines(subset: PublicSubset, zone: string): string[] {
  const widths = subset.cards.map((card) => widthOf(plain(printed(card))));
  const column = Math.max(0, ...widths.filter((width) => width <= WIDEST_NUMBER));
  return [
    ...wrapped(plain(subset.title)),
    ...wrapped(plain(`${kindWords(subset)}. ${subsetCount(subset)}.`)),
    ...subset.cards.flatMap((card) => cardLines(card, column, zone)),
    ...(subset.artists.length === 0
      ? []
      : wrapped(plain(`${series(subset.artists)}.`), 'Artists: ')),
  ];
}

function cardLines(card: PublicCard, column: number, zone: string): string[] {
  const box = card.state === 'not issued' ? NO_BOX : BOX;
  const number = plain(printed(card));
  const words = plain(cardWords(card, zone));
  const free = column - widthOf(number);
  if (column === 0) return wrapped(words, box);
  if (free < 0) return wrapped(`${number} ${words}`, box);
  return wrapped(words, `${box}${number}${' '.repeat(free)}  `);
}

/** "The voice in the lock – to be revealed on 14 May 2027", "To be revealed on 14 May 2027". */
function cardWords(card: PublicCard, zone: string): string {
  const said = notes(card, zone)
    .map(({ words }) => words)
    .join('; ');
  if (said === '') return card.name;
  return isNameless(card) && card.opens !== null
    ? `${card.name} ${said}`
    : `${card.name} – ${said}`;
}

function parallelLines({ parallels, subsets }: PublicSet): string[] {
  if (parallels.length === 0) return [];
  const titles = new Map(subsets.map(({ id, title }) => [id, title]));
  const lines = parallels.flatMap(({ title, of, run, tell }) => {
    const copies = run === null ? null : `${runWords(run)}${run === 1 ? '' : ' of each'}`;
    const said = [copies, tell].filter((words) => words !== null).join('; ');
    const subsetTitles = series(of.map((id) => titles.get(id) ?? id));
    return wrapped(plain(`${title}, of ${subsetTitles}${said === '' ? '' : `: ${said}`}`), '  ');
  });
  return ['Parallels: the same cards in other finishes', ...lines];
}

function correctionLines({ corrections }: PublicSet): string[] {
  if (corrections.length === 0) return [];
  const lines = corrections.flatMap(({ number, letter, at, was, now, note }) => {
    const card = number === null ? 'the set' : `${number}${letter ?? ''}`;
    const change = `was “${was}”, is “${now}”${note === null ? '' : ` (${note})`}`;
    return wrapped(plain(`${plainDayWords(at)}, ${card}: ${change}`), '  ');
  });
  return ['Corrections: printed or listed wrongly before', ...lines];
}
