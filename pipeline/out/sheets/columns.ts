import type { CardFront } from '../../../schema/index.js';
import type { CellForm } from './cell-forms.js';

/** A column of a sheet of cards: the one key that its cells stand for. */
export interface Column {
  readonly heading: string;
  /** Where its value stands in the front matter of a card, such as `image`, `alt`. */
  readonly path: readonly string[];
  readonly form: CellForm;
}

/** A card as a sheet carries it. */
export interface SheetCard {
  readonly subset: string;
  readonly id: string;
  readonly front: CardFront;
  /** The Markdown below the front matter, by `bodyForm`. */
  readonly body: string;
}

/** Headings of columns that stand for no key of the front matter. */
export const IDENTITY = 'Identity';
export const SUBSET = 'Subset';
/** The body of the card, or `none` for `bio: none`: see `bioCell`. */
export const BIO = 'Bio';
/** `yes` in every row of a file that shows less than the card: nothing is changed after it. */
export const CUT = 'Cut';
export const CUT_YES = 'yes';

/** Columns whose cells say something of the card that nobody types. A reader skips them. */
export const TOLD = {
  /** The id of the set. */
  set: 'Set',
  setTitle: 'Set title',
  subset: 'Subset title',
  level: 'Level',
  opens: 'To be revealed',
  /** Shown, to be revealed or not issued. */
  standing: 'On the checklist',
  lines: 'Lines used',
  linesThere: 'Lines there are',
  fit: 'Fit',
  words: 'Words used',
  wordsMin: 'Words at least',
  wordsMax: 'Words at most',
} as const;

const FACT = 'Fact: ';
const TEXT = 'Text: ';

/** How the keys of a card are spread over columns, in the order of the sheet. */
const KEYS = {
  number: [['Number', 'text']],
  name: [['Name', 'text']],
  publicName: [['Public name', 'text']],
  spoiler: [['Spoiler', 'text']],
  embargo: [['Embargo', 'list']],
  holds: [['Holds', 'map']],
  ships: [['Ships', 'text']],
  state: [['State', 'text']],
  // The body of the card, with `none` of the front matter: after these columns come facts and texts.
  bio: [],
  facts: [],
  texts: [],
  image: [
    ['Image file', 'text', 'file'],
    ['Image alt', 'text', 'alt'],
    ['Image ref', 'text', 'ref'],
    ['Image depicts', 'list', 'depicts'],
  ],
  signers: [['Signers', 'records']],
  credits: [['Credits', 'records']],
  story: [['Story', 'text']],
  variation: [
    ['Variation of', 'text', 'of'],
    ['Variation letter', 'text', 'letter'],
    ['Variation tell', 'text', 'tell'],
  ],
  shortPrint: [['Short print', 'text']],
  run: [['Run', 'whole']],
  relic: [
    ['Relic piece', 'text', 'piece'],
    ['Relic from', 'text', 'from'],
    ['Relic record', 'text', 'record'],
  ],
  issued: [['Issued', 'text']],
  why: [['Why', 'text']],
  back: [['Back', 'text']],
  writer: [['Writer', 'text']],
  sources: [['Sources', 'records']],
  checkedAgainst: [['Checked against', 'text']],
  accepted: [['Accepted', 'records']],
  remark: [['Remark', 'text']],
  format: [['Format', 'whole']],
} as const satisfies {
  readonly [K in keyof CardFront]-?: readonly (readonly [string, CellForm, string?])[];
};

/** The columns that every sheet of cards can have, in their order; facts and texts have their own. */
export const COLUMNS: readonly Column[] = Object.entries(KEYS).flatMap(([key, columns]) =>
  columns.map(([heading, form, part]) => ({
    heading,
    form,
    path: part === undefined ? [key] : [key, part],
  })),
);

const BY_HEADING: ReadonlyMap<string, Column> = new Map(
  COLUMNS.map((column) => [column.heading, column]),
);

/** The column of a fact, such as `Fact: Berth`. */
export function factColumn(name: string): Column {
  return { heading: `${FACT}${name}`, path: ['facts', name], form: 'text' };
}

/** The column of a text, such as `Text: caption`. */
export function textColumn(zone: string): Column {
  return { heading: `${TEXT}${zone}`, path: ['texts', zone], form: 'text' };
}

/** The column that a heading of ours stands for; null for any other heading. */
export function columnOf(heading: string): Column | null {
  if (heading.startsWith(FACT)) return factColumn(heading.slice(FACT.length));
  if (heading.startsWith(TEXT)) return textColumn(heading.slice(TEXT.length));
  return BY_HEADING.get(heading) ?? null;
}

/** Every heading that stands for something, facts and texts apart: for whoever looks for the nearest. */
export const HEADINGS: readonly string[] = [
  IDENTITY,
  SUBSET,
  ...COLUMNS.map(({ heading }) => heading),
  BIO,
  CUT,
];
