import {
  identityOf,
  runningNumber,
  type Card,
  type CardSet,
  type SourceFile,
} from '../model/index.js';
import { rowOfCard, sheetCardOf, type SheetCard } from '../out/sheets/index.js';
import { rereadCard, type Folder } from '../read/index.js';
import type { CardChange, NewCard, RowPlace } from '../sheet/index.js';
import { newCardText } from './import-card.js';
import { editedCard } from './import-edit.js';
import { usedIds } from './new-cards.js';
import { stubIds } from './stub-ids.js';
import { bytesOf, textOf } from './texts.js';
import type { FileChange } from './write.js';

/** The file that a row writes, or why it cannot be written. */
export interface RowFile extends RowPlace {
  readonly file: string;
  /** Subset and id. */
  readonly card: string;
  readonly change: FileChange | null;
  readonly why: readonly string[];
}

/** Where files lie, and which of them may be written. */
export interface FilesGround {
  readonly folder: Folder;
  readonly set: CardSet;
  readonly mayWrite: (file: string) => boolean;
}

/** The file of a card that is there, with the edits of its row. */
export function changedFile(change: CardChange, ground: FilesGround): RowFile {
  const { sheet, row, card, edits, front, body } = change;
  const { file } = card.source;
  const made = { sheet, row, file, card: identityOf(card), change: null };
  if (!ground.mayWrite(file))
    return { ...made, why: [`${file} is a link, which is not written to`] };
  const { source, isMarked } = textOf(ground.folder, file);
  const edited = editedCard(source, edits);
  if (!edited.ok) return { ...made, why: [`${file}: ${edited.why}`] };
  const why = misread(card, edited.source, { subset: card.subset, id: card.id, front, body });
  if (why.length > 0) return { ...made, why };
  const before = ground.folder.read(file);
  return { ...made, change: { before, after: bytesOf(edited.source, isMarked) }, why };
}

/** Files for new cards, called as `new cards` calls them. */
export function newFiles(
  adds: readonly NewCard[],
  { folder, set }: FilesGround,
): readonly RowFile[] {
  const bySubset = new Map<string, NewCard[]>();
  for (const add of adds) {
    bySubset.set(add.subset.id, [...(bySubset.get(add.subset.id) ?? []), add]);
  }
  const files = [...bySubset.values()].flatMap((own) => {
    const ids = idsFor(own, folder, set);
    return own.map((add, at) => newFile(add, set.id, ids[at] ?? ''));
  });
  const order = new Map(adds.map((add, at) => [`${add.sheet}\n${String(add.row)}`, at]));
  const placeOf = ({ sheet, row }: RowPlace): number => order.get(`${sheet}\n${String(row)}`) ?? 0;
  return [...files].sort((a, b) => placeOf(a) - placeOf(b));
}

function idsFor(adds: readonly NewCard[], folder: Folder, set: CardSet): readonly string[] {
  const [first] = adds;
  if (!first) return [];
  const { id, numbers } = first.subset;
  const prefix = numbers !== 'none' && 'from' in numbers ? (numbers.prefix ?? '') : null;
  const runningOf = (number: string): number | null =>
    prefix === null ? null : runningNumber(number, prefix);
  const known = set.cards
    .filter((card) => card.subset === id)
    .map((card) => [card.id, runningOf(card.front.number)] as const);
  // A variation has its parent's number, whose id is taken.
  const wanted = adds.map(({ number, front }) => (front.variation ? null : runningOf(number)));
  return stubIds(id, known, usedIds(folder, set.id, id), wanted);
}

function newFile(add: NewCard, set: string, id: string): RowFile {
  const { sheet, row, subset, front, body } = add;
  const file = `${set}/cards/${subset.id}/${id}.md`;
  const source = { file, text: newCardText(add) };
  const made = { sheet, row, file, card: `${subset.id}/${id}`, change: null };
  const card = { set, subset: subset.id, id, source, front, bio: [] };
  const why = misread(card, source, { subset: subset.id, id, front, body });
  return why.length > 0
    ? { ...made, why }
    : { ...made, change: { before: null, after: bytesOf(source) }, why };
}

/** Reads a card as it would be written: what does not read as it should is not written. */
function misread(card: Card, source: SourceFile, wanted: SheetCard): readonly string[] {
  const read = rereadCard(card, source);
  if ('source' in read) {
    const [cells, own] = [rowOfCard(wanted), rowOfCard(sheetCardOf(read))];
    const isSame =
      cells.size === own.size && [...cells].every(([heading, text]) => own.get(heading) === text);
    return isSame ? [] : ['the card would not read as the sheet says: change it by hand'];
  }
  // Markup in a bio is what `check` finds; anything else, and the card could not be read.
  return read
    .filter(({ rule }) => rule !== 'copy-markup')
    .map(({ message, found }) => `${message}${found === undefined ? '' : `, found ${found}`}`);
}
