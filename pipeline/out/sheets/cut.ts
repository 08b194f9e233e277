import type { View, ViewCard } from '../../gate/index.js';
import { sayInstant } from '../../model/index.js';
import { listCards, type Listed, type Which } from '../card/index.js';
import { writeCell } from './cell-forms.js';
import { BIO, CUT, CUT_YES, IDENTITY, SUBSET, TOLD, factColumn, textColumn } from './columns.js';
import { bioText, roomCells, type RoomSetting } from './room.js';
import type { SheetRecord } from './table.js';
import { partHeadings } from './whole.js';

const STANDINGS = {
  shown: 'shown',
  placeholder: 'to be revealed',
  'not issued': 'not issued',
} as const;

/** What the checklist says of a card, to whoever may see it. */
export function listCells(
  { property }: View,
  { set, subset, card }: Listed,
): readonly (readonly [string, string | null])[] {
  const { number, letter, name, state, opens, shortPrint, run } = card;
  return [
    [IDENTITY, card.identity],
    [TOLD.setTitle, set.title],
    [TOLD.subset, subset.title],
    ['Number', number],
    ['Variation letter', letter],
    ['Name', name],
    [TOLD.standing, STANDINGS[state]],
    [TOLD.opens, opens === null ? null : sayInstant(opens, property.zone)],
    ['Short print', shortPrint],
    ['Run', run === null ? null : String(run)],
    ['Signers', records(card.signers.map(({ name: signer, as }) => ({ name: signer, as })))],
    ...(card.notes === null ? [] : [[TOLD.level, card.notes.level] as const]),
  ];
}

/** The headings of a checklist, those alone that say something besides the first. */
const LIST = [
  IDENTITY,
  'Number',
  'Variation letter',
  'Name',
  TOLD.subset,
  TOLD.setTitle,
  TOLD.standing,
  TOLD.opens,
  'Short print',
  'Run',
  'Signers',
  TOLD.level,
] as const;

/** The checklist of a view: a row for each card that it lists, in its order. */
export function listRecords(view: View, which: Which): readonly SheetRecord[] {
  return listCards(view, which).map((listed) => record(view, listed, listCells(view, listed)));
}

export function listHeadings(view: View, records: readonly SheetRecord[]): readonly string[] {
  return [...filled(LIST, records), ...(view.audience === 'house' ? [] : [CUT])];
}

/**
 * The copy of cards as the view has it, for whoever is not the house: `only` these, by
 * `set/subset/id`, if it is given. What is left out of a view leaves no trace here either, so no row
 * can say by itself whether it is whole: every row alike is marked as cut.
 */
export function cutRecords(
  view: View,
  which: Which,
  only: ReadonlySet<string> | null,
  setting: RoomSetting,
): readonly SheetRecord[] {
  return listCards(view, which)
    .filter(({ set, card }) => only === null || isOwn(set.id, card, only))
    .map((listed) =>
      record(view, listed, [
        [TOLD.set, listed.set.id],
        [SUBSET, listed.subset.id],
        ...listCells(view, listed),
        ...copyCells(view, listed),
        ...(view.audience === 'public' ? [] : roomCells(view, listed, setting)),
      ]),
    );
}

/** One's own card, as far as it is open to oneself. */
function isOwn(set: string, { identity, state }: ViewCard, only: ReadonlySet<string>): boolean {
  return state === 'shown' && identity !== null && only.has(`${set}/${identity}`);
}

function copyCells(
  { audience }: View,
  { card }: Listed,
): readonly (readonly [string, string | null])[] {
  const { image, review } = card;
  return [
    [BIO, bioText(card)],
    ...card.facts.map(({ name, value }) => [factColumn(name).heading, value] as const),
    ...card.texts.map(({ zone, value }) => [textColumn(zone).heading, value] as const),
    // Where art lies is for whoever fetches it.
    ['Image file', audience === 'public' ? null : (image?.source ?? null)],
    ['Image alt', image?.alt ?? null],
    ['Credits', records(card.credits)],
    ['Variation tell', card.tell],
    ['Back', card.layout],
    ...(review === null
      ? []
      : ([
          ['Public name', review.publicName],
          ['Image ref', review.ref],
          ['Image depicts', review.depicts.length === 0 ? null : writeCell(review.depicts)],
          ['Signers', records(review.signers)],
          [
            'Sources',
            records(review.sources.map(({ title, ref, for: what }) => ({ title, ref, for: what }))),
          ],
        ] as const)),
  ];
}

/** Before the columns of facts and texts, and after them. */
const COPY = [
  [
    IDENTITY,
    'Number',
    'Variation letter',
    'Name',
    TOLD.set,
    SUBSET,
    'Public name',
    TOLD.standing,
    TOLD.opens,
    BIO,
  ],
  [
    'Image file',
    'Image alt',
    'Image ref',
    'Image depicts',
    'Signers',
    'Credits',
    'Variation tell',
    'Short print',
    'Run',
    'Back',
    'Sources',
    TOLD.lines,
    TOLD.linesThere,
    TOLD.fit,
    TOLD.words,
    TOLD.wordsMin,
    TOLD.wordsMax,
  ],
] as const;

export function cutHeadings(records: readonly SheetRecord[]): readonly string[] {
  const [before, after] = COPY;
  return [...filled([...before, ...partHeadings(records), ...after], records), CUT];
}

const ALWAYS: ReadonlySet<string> = new Set([
  TOLD.set,
  TOLD.setTitle,
  TOLD.subset,
  'Number',
  'Name',
]);

function filled(headings: readonly string[], rows: readonly SheetRecord[]): readonly string[] {
  const used = new Set(rows.flatMap(({ cells }) => [...cells.keys()]));
  return headings.filter((heading) => ALWAYS.has(heading) || used.has(heading));
}

function record(
  { audience }: View,
  { set, subset, card }: Listed,
  cells: readonly (readonly [string, string | null])[],
): SheetRecord {
  const said = cells.flatMap(([heading, text]): [string, string][] =>
    text === null || text === '' ? [] : [[heading, text]],
  );
  return {
    label: `${set.id}/${card.identity ?? `${subset.id}, ${card.number ?? card.name}`}`,
    cells: new Map([...said, ...(audience === 'house' ? [] : [[CUT, CUT_YES] as const])]),
  };
}

/** Records in one cell, without what they do not say. */
function records(items: readonly Readonly<Record<string, string | null>>[]): string | null {
  if (items.length === 0) return null;
  const said = items.map((item) =>
    Object.fromEntries(
      Object.entries(item).flatMap(([key, text]) => (text === null ? [] : [[key, text]])),
    ),
  );
  return writeCell(said);
}
