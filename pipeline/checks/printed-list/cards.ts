import type { Zone } from '../../../schema/index.js';
import { compareNumbers, isIssued, undividedNames, type Card } from '../../model/index.js';
import { fitText, type Faces } from '../../typeset/index.js';
import { folded, type ListEntry } from './entries.js';
import type { Subject, SubsetView } from '../subject.js';

/** A card whose layout has a zone for the printed list. */
export interface ListCard {
  readonly card: Card;
  readonly zone: Zone;
  /** Null where the fonts of the layout could not be read. */
  readonly faces: Faces | null;
  /** The lines of its list; null if it has none. */
  readonly lines: readonly string[] | null;
}

/** The cards of a set that print a list, in the order of their numbers. */
export function listCards(
  views: readonly SubsetView[],
  { content, fonts }: Subject,
): readonly ListCard[] {
  const found = views.flatMap(({ plan, cards }) =>
    cards.filter(isIssued).flatMap((card): ListCard[] => {
      const id = card.front.back ?? plan.back ?? '';
      const layout = content.layouts.get(id)?.value;
      const back = layout?.blank === true ? undefined : layout?.zones['list'];
      const zone = back ?? layout?.front?.['list'];
      const text = card.front.texts?.['list'];
      if (!zone || (text === undefined && layout?.shared?.['list'] !== undefined)) return [];
      const lines = text === undefined ? null : linesOf(text);
      return [{ card, zone, faces: fonts.get(id)?.get(zone.font) ?? null, lines }];
    }),
  );
  return found.sort((a, b) => compareNumbers(a.card.front.number, b.card.front.number));
}

function linesOf(text: string): readonly string[] {
  return text
    .split(/[\r\n]/)
    .map(folded)
    .filter((line) => line !== '');
}

/** Whether a line is about the subset of an entry. */
export function speaksOf(line: string, { title }: Pick<ListEntry, 'title'>): boolean {
  return line === title || line.startsWith(`${title}:`);
}

/**
 * Which card of several lists which subset: the one that has a line for it, else the one that lists
 * what stands above it in the plan.
 */
export function listedOn(
  views: readonly SubsetView[],
  cards: readonly ListCard[],
): ReadonlyMap<string, ListCard> {
  const owners = new Map<string, ListCard>();
  let last = cards[0];
  for (const { plan } of views) {
    const title = folded(plan.title);
    last = cards.find(({ lines }) => lines?.some((line) => speaksOf(line, { title }))) ?? last;
    if (last) owners.set(plan.id, last);
  }
  return owners;
}

/** Whether lines fit the zone of a card. */
export function fitsOn(
  { zone, faces }: ListCard,
  lines: readonly string[],
  subject: Subject,
): boolean {
  if (!faces) return false;
  const undivided = undividedNames(subject.content.names?.value ?? null);
  const runs = lines.flatMap((line, at) => (at === 0 ? [plain(line)] : [plain('\n'), plain(line)]));
  return fitText([runs], zone, faces, { undivided }).fits;
}

function plain(text: string): { text: string; italic: boolean; bold: boolean } {
  return { text, italic: false, bold: false };
}
