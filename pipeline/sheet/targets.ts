import {
  BIO,
  COLUMNS,
  CUT,
  IDENTITY,
  SUBSET,
  TOLD,
  columnOf,
  factColumn,
  textColumn,
  type Column,
} from '../out/sheets/index.js';
import { folded } from './tidy.js';

/** What the cells of a column are. `told` says something that nobody types, and is passed over. */
export type Target =
  | { readonly kind: 'identity' | 'subset' | 'bio' | 'cut' | 'set' | 'told' }
  | { readonly kind: 'key'; readonly column: Column };

const SPECIAL: Readonly<Record<string, Target>> = {
  identity: { kind: 'identity' },
  subset: { kind: 'subset' },
  bio: { kind: 'bio' },
  cut: { kind: 'cut' },
  set: { kind: 'set' },
};

const BY_KEY: ReadonlyMap<string, Target> = new Map([
  ...Object.entries(SPECIAL),
  ...COLUMNS.map((column): [string, Target] => [keyOf(column), { kind: 'key', column }]),
]);

/** The key of a column as a mapping has it, such as `image.alt`. */
export function keyOf({ path }: Pick<Column, 'path'>): string {
  return path.join('.');
}

/** Every key that a mapping may name, facts and texts apart. */
export const KEYS: readonly string[] = [...BY_KEY.keys()];

/** What a key of a mapping stands for; null for one that no card has. */
export function targetOfKey(key: string): Target | null {
  const named = BY_KEY.get(key);
  if (named) return named;
  const [, part = '', name = ''] = /^(facts|texts)\.([^]+)$/.exec(key) ?? [];
  if (part === '') return null;
  return { kind: 'key', column: part === 'facts' ? factColumn(name) : textColumn(name) };
}

/** The reverse of `targetOfKey`; null for what is passed over. */
export function keyOfTarget(target: Target): string | null {
  if (target.kind === 'key') return keyOf(target.column);
  return target.kind === 'told' ? null : target.kind;
}

/** Our own headings, as they are compared. */
const OWN: ReadonlyMap<string, Target> = new Map([
  ...Object.values(TOLD).map((heading): [string, Target] => [folded(heading), { kind: 'told' }]),
  ...COLUMNS.map((column): [string, Target] => [folded(column.heading), { kind: 'key', column }]),
  [folded(IDENTITY), { kind: 'identity' }],
  [folded(SUBSET), { kind: 'subset' }],
  [folded(BIO), { kind: 'bio' }],
  [folded(CUT), { kind: 'cut' }],
  [folded(TOLD.set), { kind: 'set' }],
]);

/** What the trade calls these columns in its own sheets. */
const CUSTOMARY: Readonly<Record<string, readonly string[]>> = {
  identity: ['id', 'card id'],
  number: ['#', 'no', 'nr', 'card #', 'card no', 'card nr', 'card number', 'number on card'],
  name: ['title', 'card title', 'card name', 'subject'],
  bio: ['copy', 'card copy', 'back copy', 'card back', 'card back copy', 'back text', 'biography'],
  subset: ['insert', 'insert set', 'subset id'],
  remark: ['remarks', 'note', 'notes', 'comment', 'comments'],
  writer: ['author', 'written by'],
  run: ['print run'],
  'image.file': ['image', 'picture', 'art', 'art file'],
  'image.alt': ['alt', 'alt text'],
  state: ['status'],
  story: ['scene', 'episode/scene'],
};

const BY_CUSTOM: ReadonlyMap<string, Target> = new Map(
  Object.entries(CUSTOMARY).flatMap(([key, headings]) =>
    headings.flatMap((heading): [string, Target][] => {
      const target = BY_KEY.get(key);
      return target ? [[heading, target]] : [];
    }),
  ),
);

/** What one of our own headings stands for, whatever its capitals and spaces; null for any other. */
export function ownTarget(heading: string): Target | null {
  const known = OWN.get(folded(heading));
  if (known) return known;
  // The name of a fact or a zone is a key: its capitals count.
  const [, part = '', name = ''] = /^(fact|text): ?(.+)$/isu.exec(heading.trim()) ?? [];
  if (part === '') return null;
  const column = columnOf(`${part.toLowerCase() === 'fact' ? 'Fact' : 'Text'}: ${name}`);
  return column && { kind: 'key', column };
}

/**
 * What a heading may stand for, by what the trade calls it or because a subset's cards carry such a
 * fact; null if nobody can tell.
 * @param facts the names of facts in the plan.
 */
export function guessedTarget(heading: string, facts: readonly string[]): Target | null {
  const own = ownTarget(heading);
  if (own) return own;
  const plain = folded(heading);
  const customary = BY_CUSTOM.get(plain) ?? BY_KEY.get(heading.trim());
  if (customary) return customary;
  const fact = facts.find((name) => folded(name) === plain);
  return fact === undefined ? null : { kind: 'key', column: factColumn(fact) };
}
