import type { View } from '../../gate/index.js';
import { fenceOf, type Card } from '../../model/index.js';
import { listCards, type Which } from '../card/index.js';
import { BIO, COLUMNS, IDENTITY, SUBSET, TOLD, type SheetCard } from './columns.js';
import { bodyForm, rowOfCard } from './rows.js';
import { roomCells, type RoomSetting } from './room.js';
import type { SheetRecord } from './table.js';

/** What a sheet of the house is made of besides its view: what stands in the files, whole. */
export interface HouseSource {
  /** By `set/subset/id`. */
  readonly cards: ReadonlyMap<string, SheetCard>;
  /** Names of the facts that the plan asks of the cards of a subset, by `set/subset`. */
  readonly facts: ReadonlyMap<string, readonly string[]>;
}

/** A card as its file has it. */
export function sheetCardOf({ subset, id, front, source }: Card): SheetCard {
  const body = source.text.slice(fenceOf(source.text)?.bodyFrom ?? source.text.length);
  return { subset, id, front, body: bodyForm(body) };
}

/**
 * A row for each card, with every key of its file: for the house alone. The view says which cards
 * there are and in which order, and that nobody else reads it.
 * @throws RangeError for a view of anybody else: that one has no whole cards.
 */
export function wholeRecords(
  view: View,
  which: Which,
  { cards }: HouseSource,
  setting: RoomSetting,
): readonly SheetRecord[] {
  if (view.audience !== 'house') throw new RangeError('whole cards are for the house alone');
  return listCards(view, which).flatMap((listed): SheetRecord[] => {
    const { set, card } = listed;
    const label = `${set.id}/${card.identity ?? ''}`;
    const file = cards.get(label);
    if (!file) return [];
    const told = [[TOLD.set, set.id] as const, ...roomCells(view, listed, setting)];
    return [{ label, cells: new Map([...told, ...rowOfCard(file)]) }];
  });
}

/** Number and name, which stay in sight; then what stands before the bio, facts and texts. */
const AFTER_NAME = COLUMNS.findIndex(({ path }) => path[0] === 'name') + 1;
const AFTER_STATE = COLUMNS.findIndex(({ path }) => path[0] === 'state') + 1;

/** The headings of such rows: every key that a card can have, so that one can fill it in. */
export function wholeHeadings(
  records: readonly SheetRecord[],
  asked: readonly string[],
): readonly string[] {
  const headings = COLUMNS.map(({ heading }) => heading);
  return [
    IDENTITY,
    ...headings.slice(0, AFTER_NAME),
    TOLD.set,
    SUBSET,
    ...headings.slice(AFTER_NAME, AFTER_STATE),
    BIO,
    ...new Set([...asked, ...partHeadings(records)]),
    ...headings.slice(AFTER_STATE),
    TOLD.lines,
    TOLD.linesThere,
    TOLD.fit,
    TOLD.words,
    TOLD.wordsMin,
    TOLD.wordsMax,
  ];
}

/** The columns of facts and then of texts that rows have, in the order in which they first come. */
export function partHeadings(records: readonly SheetRecord[]): readonly string[] {
  const all = new Set(records.flatMap(({ cells }) => [...cells.keys()].filter(isPart)));
  const isFact = (heading: string): boolean => heading.startsWith('Fact: ');
  return [...[...all].filter(isFact), ...[...all].filter((heading) => !isFact(heading))];
}

function isPart(heading: string): boolean {
  return heading.startsWith('Fact: ') || heading.startsWith('Text: ');
}
