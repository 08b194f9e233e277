import { NAME_TO_COME, type Card } from '../model/index.js';
import {
  BIO,
  bioCell,
  bodyForm,
  rowOfCard,
  sheetCardOf,
  writeCell,
  type CellValue,
} from '../out/sheets/index.js';
import type { BioEntry, CardRow, Entry } from './rows.js';
import { tidy, tidyLine } from './tidy.js';

/** A key of a card that a sheet gives a value. */
export interface Edit {
  readonly key: string;
  /** What stands in the card, as a cell has it; null for a key that it does not have. */
  readonly stands: string | null;
  readonly says: string;
  /** Why it must not be written. */
  readonly doubt: string | null;
  readonly what:
    | { readonly kind: 'key'; readonly path: readonly string[]; readonly value: CellValue }
    | { readonly kind: 'bio'; readonly none: boolean; readonly body: string };
}

/** What a row says of a card that the card does not say. */
export interface Difference {
  /** Keys that are empty in the card. */
  readonly fills: readonly Edit[];
  /** Keys that say something else in the card. */
  readonly clashes: readonly Edit[];
}

/** Compares a row with its card. An empty cell says nothing. */
export function compare(row: CardRow, card: Card): Difference {
  const sheetCard = sheetCardOf(card);
  const cells = rowOfCard(sheetCard);
  const edits = [...row.entries.values()].flatMap((entry): Edit[] => {
    const stands = cells.get(entry.column.heading) ?? null;
    if (stands !== null && saysSame(entry, stands)) return [];
    return isOwnLetter(entry, card) ? [] : [editOf(entry, stands)];
  });
  const bio = row.bio && bioEdit(row.bio, card.front.bio === 'none', sheetCard.body, cells);
  const all = bio ? [...edits, bio] : edits;
  return { fills: all.filter(isFill), clashes: all.filter((edit) => !isFill(edit)) };
}

/** What a row gives to a card that is new. */
export function editsOfNew(row: CardRow): readonly Edit[] {
  const keys = [...row.entries.values()].map((entry) => editOf(entry, null));
  const { bio } = row;
  if (!bio) return keys;
  const what = { kind: 'bio', none: bio.none, body: bio.body } as const;
  const says = bioCell(bio.none, bio.body);
  return [...keys, { key: 'bio', stands: null, says, doubt: bio.doubt, what }];
}

function editOf({ key, column, value, doubt }: Entry, stands: string | null): Edit {
  const what = { kind: 'key', path: column.path, value } as const;
  return { key, stands, says: writeCell(value), doubt, what };
}

/** `17 b` in the column of numbers is number 17 with the letter b. */
function isOwnLetter({ key, text }: Entry, { front }: Card): boolean {
  if (key !== 'number' || front.variation === undefined) return false;
  return text.replace(/\s(?=[a-z]$)/u, '') === `${front.number}${front.variation.letter}`;
}

/** A name that nobody has given yet stands for none. */
function isFill({ key, stands }: Edit): boolean {
  return stands === null || (key === 'name' && stands === NAME_TO_COME);
}

/** Also a cell from which spaces were trimmed says what stands in the card, spaces and all. */
function saysSame({ raw, text, value, column }: Entry, stands: string): boolean {
  if (stands === raw || stands === text || stands === writeCell(value)) return true;
  if (column.form !== 'text') return false;
  const plain = text.includes('\n') ? tidy(stands) : tidyLine(stands);
  return plain === text;
}

function bioEdit(
  { none, body, raw, doubt }: BioEntry,
  standsNone: boolean,
  standsBody: string,
  cells: ReadonlyMap<string, string>,
): Edit | null {
  const bodies = [body, raw.body];
  const isSame = [standsBody, bodyForm(tidy(standsBody))].some((words) => bodies.includes(words));
  if (isSame && none === standsNone) return null;
  const stands = cells.get(BIO) ?? null;
  return {
    key: 'bio',
    stands,
    says: bioCell(none, body),
    doubt,
    what: { kind: 'bio', none, body },
  };
}
