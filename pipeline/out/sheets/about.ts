import type { View } from '../../gate/index.js';
import type { What } from './book.js';
import { ABOUT_SHEET } from './sheet-names.js';
import type { Table } from './table.js';

/** What a file holds, for its first sheet. */
export interface About {
  readonly what: What;
  /** It lists somebody's own cards alone. */
  readonly own: boolean;
  readonly mark: string | null;
}

/** The first sheet: what the file is, whom it is for, and how its cells are written. */
export function aboutTable(view: View, { what, own, mark }: About): Table {
  const lines = [
    view.property.title,
    ...(mark === null ? [] : [mark]),
    kindLine(view, what, own),
    ...(view.audience === 'house' ? HOUSE : CUT_LINES),
    ...CELLS,
  ];
  return {
    name: ABOUT_SHEET,
    columns: [
      { heading: ABOUT_SHEET, kind: 'long', width: 100 },
      ...(mark === null ? [] : [{ heading: mark, kind: 'line' as const, width: 24 }]),
    ],
    rows: lines.map((line) => ({
      label: ABOUT_SHEET,
      cells: mark === null ? [line] : [line, ''],
    })),
    frozen: 0,
  };
}

function kindLine({ audience }: View, what: What, own: boolean): string {
  if (what === 'checklist') return 'The checklist: a row for each card that is listed.';
  if (audience === 'house') return 'The copy: a row for each card, with every key of its file.';
  return own
    ? 'The copy of your own cards, as far as they are open to you, with the room that each bio has.'
    : 'The copy of the cards, as far as it is open.';
}

/** The words with which the first sheet of the house's file says that the file is whole. */
const WHOLE = 'holdback import reads this file again.';

/** Whether a line of a first sheet says that the file is whole: any other file of ours is cut. */
export function saysWhole(line: string): boolean {
  return line.startsWith(WHOLE);
}

const HOUSE = [
  `${WHOLE} It goes by Identity, which never changes, and leaves alone what is empty.`,
  'Set, Lines used, Lines there are, Fit, and the counts of words are there to be read: import skips them.',
];

const CUT_LINES = [
  'What is held is not in this file, and nothing says where it was taken out, but for the mark [to be revealed]. So every row says yes under Cut, and holdback import changes no card by it.',
];

const CELLS = [
  'A card’s number is text, as it is printed. Run, lines and words are numbers. Dates and times are text: a date of a spreadsheet has no time zone.',
  'A cell with several things has a semicolon between them; one with several parts says “key: value”, and each further record stands on its own line. A backslash before a sign takes away its meaning. (none) is an empty list; an empty cell is a key that is not there.',
  'A cell that would begin with = + - @, a tab or a line end has an apostrophe before it, so that no program takes it for a formula. Import takes the apostrophe off.',
];
