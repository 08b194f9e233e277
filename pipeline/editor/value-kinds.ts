import type { YamlPath } from '../model/index.js';
import type { FileKind } from './file-shapes.js';

/** What a value, or a key that is no word of the schema, names. */
export type ValueKind =
  | 'level'
  | 'embargo'
  | 'hold'
  | 'subset'
  | 'group'
  | 'countable'
  | 'document'
  | 'cut'
  | 'person'
  | 'role'
  | 'layout'
  | 'font'
  | 'card'
  | 'rule'
  | 'name'
  | 'public name'
  | 'art'
  | 'roster'
  | 'fact'
  | 'zone'
  | 'field';

/** Keys whose values name one kind of thing wherever they stand. */
const BY_KEY: Readonly<Record<string, ValueKind>> = {
  spoiler: 'level',
  level: 'level',
  clearance: 'level',
  embargo: 'embargo',
  knows: 'embargo',
  depicts: 'name',
  as: 'name',
  use: 'name',
  names: 'name',
  allOf: 'name',
  publicName: 'public name',
  doc: 'document',
  checkedAgainst: 'cut',
  writer: 'person',
  by: 'person',
  role: 'role',
  roles: 'role',
  back: 'layout',
  rule: 'rule',
  subset: 'subset',
  group: 'group',
  roster: 'roster',
  holds: 'hold',
  font: 'font',
};

/** Values that are understood by where they stand: kind of file, and keys joined with dots. */
const BY_PLACE: Readonly<Record<string, ValueKind>> = {
  'card name': 'name',
  'card image.file': 'art',
  'card variation.of': 'card',
  'card sources.for': 'fact',
  'card relic.from': 'name',
  'corrections corrections.card': 'card',
  'property legal.depicts.name': 'name',
  'plan subsets.facts': 'fact',
  'plan parallels.of': 'subset',
};

/** What a value at a path names; null for free words, numbers and dates. */
export function kindOfValue(kind: FileKind, path: YamlPath): ValueKind | null {
  const keys = path.filter((step) => typeof step === 'string');
  const placed = BY_PLACE[`${kind} ${keys.join('.')}`];
  if (placed) return placed;
  const [first = '', second = '', third = ''] = keys;
  if (kind === 'card' && first === 'holds') return 'hold';
  if (kind === 'plan' && first === 'totals' && third === 'of') return 'countable';
  const last = keys.at(-1) ?? '';
  // Of these keys others than the ones that are meant here are free words.
  if (last === 'role' && (first === 'credits' || kind === 'card')) return null;
  if (kind === 'names' && last === 'names') return null;
  if (last === 'depicts' && typeof path.at(-1) === 'string') return null;
  if (kind === 'back' && last === 'font' && second === '') return null;
  return Object.hasOwn(BY_KEY, last) ? (BY_KEY[last] ?? null) : null;
}

/** What the keys of a map are named after, where the schema leaves them open; null if after nothing. */
export function kindOfKeys(kind: FileKind, map: YamlPath): ValueKind | null {
  const keys = map.filter((step) => typeof step === 'string').join('.');
  if (kind !== 'card') return null;
  if (keys === 'holds') return 'field';
  if (keys === 'facts') return 'fact';
  return keys === 'texts' ? 'zone' : null;
}
