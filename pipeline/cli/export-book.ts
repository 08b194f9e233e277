import { extname, resolve } from 'node:path';

import { view, type View } from '../gate/index.js';
import { identityOf, undividedNames } from '../model/index.js';
import {
  BOOK_FORMATS,
  bookOf,
  cardsBy,
  sheetCardOf,
  type Book,
  type BookFormat,
  type BookOptions,
  type What,
} from '../out/sheets/index.js';
import type { Released } from '../select/index.js';
import { realDisk, writeWhole } from '../write/index.js';
import type { Cutting, Making } from './export-cut.js';
import { FINE, REFUSED, UsageError } from './io.js';
import { count } from './report-text.js';

export interface BookFlags {
  readonly set?: string;
  readonly what?: What;
}

/**
 * The format of a file of cards, by its name.
 * @throws UsageError for a name that says none.
 */
export function bookFormat(file: string): BookFormat {
  const ending = extname(file).slice(1).toLowerCase();
  const format = BOOK_FORMATS.find((known) => known === ending);
  if (format !== undefined) return format;
  throw new UsageError(
    `${file}: name it .xlsx or .csv; --merge makes rows for a page-layout program`,
  );
}

/** Writes the cards as a workbook or as one table. */
export async function exportBook(
  file: string,
  format: BookFormat,
  flags: BookFlags,
  { cutting, io, working }: Making,
): Promise<number> {
  const { what = 'copy' } = flags;
  working.progress('setting the copy');
  const book = await working.whole(() => bookFor(cutting, flags, what));
  if (!book) {
    io.err('nothing of this property is public by then\n');
    return REFUSED;
  }
  if (book.cards === 0) {
    io.err('there is no card to export\n');
    return REFUSED;
  }
  const bytes = await book.bytes(format);
  working.progress('writing the file');
  writeWhole(realDisk, resolve(io.cwd, file), bytes);
  const mark = book.mark === null ? '' : `: ${book.mark}`;
  io.out(`${what} of ${count(book.cards, 'card')} written to ${file}${mark}\n`);
  return FINE;
}

/** The cards as whoever it is for may see them; null if nothing is public. */
function bookFor(cutting: Cutting, { set }: BookFlags, what: What): Book | null {
  const { released, audience, fonts, preview } = cutting;
  const seen = view(released, audience);
  if (!seen) return null;
  if (set !== undefined && !seen.sets.some(({ id }) => id === set)) {
    throw new UsageError(`there is no set ${set} to export`);
  }
  const whose = seen.audience === 'house' ? houseOptions(released) : personOptions(cutting, what);
  const only = set === undefined ? {} : { set };
  return bookOf(seen, { what, fonts, preview, ...only, ...whose });
}

/** What stands in the files, for the house alone. */
function houseOptions({ sets, names }: Released): Pick<BookOptions, 'house' | 'undivided'> {
  const cards = sets.flatMap((set) => set.cards);
  const subsets = sets.flatMap((set) =>
    set.plan.value.subsets.map((subset) => ({ set: set.id, subset })),
  );
  return {
    undivided: undividedNames({ names: [...names] }),
    house: {
      names,
      cards: new Map(cards.map((card) => [`${card.set}/${identityOf(card)}`, sheetCardOf(card)])),
      facts: new Map(subsets.map(({ set, subset: { id, facts = [] } }) => [`${set}/${id}`, facts])),
    },
  };
}

/** A writer gets the cards that they write; anybody else all that they see. */
function personOptions(
  { released, audience }: Cutting,
  what: What,
): Pick<BookOptions, 'own' | 'anybody'> {
  if (audience.kind !== 'person') return {};
  const { person, at } = audience;
  const [first] = released.property.levels;
  const uncleared = { ...person, clearance: first?.id ?? '', knows: [] };
  const anybody: View | null = view(released, { kind: 'person', person: uncleared, at });
  const house = view(released, { kind: 'house' });
  const isOwn = what === 'copy' && person.role === 'writer' && house !== null;
  return { anybody, ...(isOwn ? { own: cardsBy(person.id, house) } : {}) };
}
