import { CardFront, type Subset } from '../../schema/index.js';
import { identityOf, type Card, type CardSet, type Content } from '../model/index.js';
import { sheetCardOf } from '../out/sheets/index.js';
import { validate } from '../read/index.js';
import { compare, editsOfNew, type Edit } from './compare.js';
import { CardFinder, textOf } from './match.js';
import { referenceCheck, type ReferenceCheck } from './references.js';
import type { CardRow, Rejected, RowPlace } from './rows.js';

/** A card that is to be written. Its id is given when it is. */
export interface NewCard extends RowPlace {
  readonly subset: Subset;
  readonly number: string;
  readonly front: CardFront;
  readonly body: string;
  readonly edits: readonly Edit[];
}

/** A card that a row is of, with what the row gives it and what is left alone. */
export interface CardChange extends RowPlace {
  readonly card: Card;
  /** Its front matter and body with the edits. */
  readonly front: CardFront;
  readonly body: string;
  readonly edits: readonly Edit[];
  readonly conflicts: readonly Edit[];
}

/** What rows would do to the cards of a set. Nothing of it is written here. */
export interface SheetPlan {
  readonly adds: readonly NewCard[];
  /** Those alone that have edits or conflicts. */
  readonly changes: readonly CardChange[];
  readonly rejected: readonly Rejected[];
  /** Rows that say what their card says. */
  readonly same: number;
}

export interface PlanGround {
  readonly content: Content;
  readonly set: CardSet;
  /** Whether a value that stands is replaced by what the sheet says. */
  readonly overwrite: boolean;
}

/** Works out what rows would do. Each row does all that it says, or nothing. */
export function planRows(
  rows: readonly CardRow[],
  { content, set, overwrite }: PlanGround,
): SheetPlan {
  const finder = new CardFinder(set);
  const references = referenceCheck(content, set);
  const outcomes = rows.map((row) => outcomeOf(row, finder, references, set, overwrite));
  const doubled = doubledPlaces(outcomes);
  const adds: NewCard[] = [];
  const changes: CardChange[] = [];
  const rejected: Rejected[] = [];
  let same = 0;
  for (const outcome of outcomes) {
    const { sheet, row } = outcome.row;
    const others = outcome.about === null ? undefined : doubled.get(outcome.about);
    if (others) rejected.push({ sheet, row, reasons: [twice(others, outcome.row)] });
    else if (outcome.kind === 'rejected') rejected.push({ sheet, row, reasons: outcome.reasons });
    else if (outcome.kind === 'new') adds.push(outcome.card);
    else if (outcome.change.edits.length + outcome.change.conflicts.length === 0) same += 1;
    else changes.push(outcome.change);
  }
  return { adds, changes, rejected, same };
}

/** What becomes of a row, and by which name its card goes among the others. */
type Outcome = { readonly row: CardRow; readonly about: string | null } & (
  | { readonly kind: 'rejected'; readonly reasons: readonly string[] }
  | { readonly kind: 'new'; readonly card: NewCard }
  | { readonly kind: 'change'; readonly change: CardChange }
);

function outcomeOf(
  row: CardRow,
  finder: CardFinder,
  references: ReferenceCheck,
  set: CardSet,
  overwrite: boolean,
): Outcome {
  const match = finder.find(row);
  if (match.kind === 'none') return { row, about: null, kind: 'rejected', reasons: [match.why] };
  if (match.kind === 'new') {
    const about = ['new', match.subset.id, match.number, textOf(row, 'variation.letter') ?? ''];
    const name = match.number === 'none' ? [textOf(row, 'name') ?? ''] : [];
    return { row, about: [...about, ...name].join('\n'), ...newCard(row, match, references, set) };
  }
  const about = identityOf(match.card);
  const { fills, clashes } = compare(row, match.card);
  const edits = overwrite ? [...fills, ...clashes] : fills;
  const made =
    edits.length === 0
      ? { front: match.card.front, reasons: [] }
      : frontOf(match.card.front, edits, references);
  const { front } = made;
  if (!front) return { row, about, kind: 'rejected', reasons: made.reasons };
  const conflicts = overwrite ? [] : clashes;
  const { sheet, row: number } = row;
  const body = bodyOf(match.card, edits);
  const change = { sheet, row: number, card: match.card, front, body, edits, conflicts };
  return { row, about, kind: 'change', change };
}

function newCard(
  row: CardRow,
  { subset, number }: { readonly subset: Subset; readonly number: string },
  references: ReferenceCheck,
  set: CardSet,
):
  | { readonly kind: 'new'; readonly card: NewCard }
  | { readonly kind: 'rejected'; readonly reasons: readonly string[] } {
  const edits = editsOfNew(row);
  const spoiler = subset.spoiler ?? set.plan.value.spoiler;
  const { front, reasons } = frontOf({ number, spoiler, state: 'draft' }, edits, references);
  if (!front) return { kind: 'rejected', reasons };
  const { sheet, row: place } = row;
  const body = row.bio?.body ?? '';
  return { kind: 'new', card: { sheet, row: place, subset, number, front, body, edits } };
}

function bodyOf(card: Card, edits: readonly Edit[]): string {
  const bios = edits.flatMap(({ what }) => (what.kind === 'bio' ? [what.body] : []));
  return bios[0] ?? sheetCardOf(card).body;
}

/** Front matter with edits made, or every reason why a card cannot have it. */
function frontOf(
  base: Partial<CardFront>,
  edits: readonly Edit[],
  references: ReferenceCheck,
): { readonly front: CardFront | null; readonly reasons: readonly string[] } {
  const doubts = edits.flatMap(({ doubt }) => doubt ?? []);
  if (doubts.length > 0) return { front: null, reasons: doubts };
  let value: Named = base;
  for (const { what } of edits) {
    if (what.kind === 'key') value = valueAt(value, what.path, what.value);
    else if (what.none) value = { ...value, bio: 'none' };
    else value = without(value, 'bio');
  }
  const validation = validate(CardFront, value);
  if (!validation.ok) {
    const reasons = validation.faults.map(({ path, message, found, expected }) =>
      [
        path.length === 0 ? '' : `${path.join('.')}: `,
        message,
        found === undefined ? '' : `, found ${found}`,
        expected === undefined ? '' : `, expected ${expected}`,
      ].join(''),
    );
    return { front: null, reasons };
  }
  const reasons = references(validation.value);
  return { front: reasons.length > 0 ? null : validation.value, reasons };
}

type Named = Readonly<Record<string, unknown>>;

function isNamed(value: unknown): value is Named {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function valueAt(whole: Named, [key = '', ...rest]: readonly string[], value: unknown): Named {
  const inner = Object.hasOwn(whole, key) ? whole[key] : undefined;
  const next = rest.length === 0 ? value : valueAt(isNamed(inner) ? inner : {}, rest, value);
  return Object.fromEntries([
    ...Object.entries(whole).filter(([other]) => other !== key),
    [key, next],
  ]);
}

function without(whole: Named, key: string): Named {
  return Object.fromEntries(Object.entries(whole).filter(([other]) => other !== key));
}

/** Rows of one card, by what it is called: nobody knows which is meant. */
function doubledPlaces(outcomes: readonly Outcome[]): ReadonlyMap<string, readonly RowPlace[]> {
  const places = new Map<string, RowPlace[]>();
  for (const { about, row } of outcomes) {
    if (about === null) continue;
    const own = places.get(about);
    if (own) own.push(row);
    else places.set(about, [row]);
  }
  return new Map([...places].filter(([, own]) => own.length > 1));
}

function twice(places: readonly RowPlace[], { sheet, row }: RowPlace): string {
  const others = places
    .filter((place) => place.row !== row || place.sheet !== sheet)
    .map((place) => `${place.sheet === sheet ? '' : `${place.sheet}, `}row ${String(place.row)}`);
  return `the same card stands in ${others.slice(0, 5).join(', ')} too: leave one`;
}
