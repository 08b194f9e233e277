import { CardFront } from '../../schema/index.js';
import type { CellValue } from '../out/sheets/index.js';
import type { NewCard } from '../sheet/index.js';
import { mapOf, yamlOf, yamlText } from './import-yaml.js';

/** The order in which a new card has its keys. */
const ORDER: readonly string[] = [
  'number',
  'name',
  'spoiler',
  'embargo',
  'ships',
  'state',
  ...Object.keys(CardFront.properties),
];

/** The text of a new card: the keys that its row gives it, then the bio. */
export function newCardText({ front, body, edits, number }: NewCard): string {
  const given = new Map<string, CellValue | Map<string, CellValue>>([
    ['number', number],
    ['spoiler', front.spoiler],
    ...(front.state === undefined ? [] : [['state', front.state] as const]),
    ...(front.bio === undefined ? [] : [['bio', front.bio] as const]),
  ]);
  for (const { what } of edits) {
    if (what.kind !== 'key') continue;
    const [key = '', part] = what.path;
    if (part === undefined) given.set(key, what.value);
    else {
      const before = given.get(key);
      const parts = before instanceof Map ? before : new Map<string, CellValue>();
      given.set(key, parts.set(part, what.value));
    }
  }
  const keys = [...new Set(ORDER)].filter((key) => given.has(key));
  const lines = keys.map((key) => `${yamlText(key)}: ${lineOf(key, given.get(key) ?? '')}`);
  return ['---', ...lines, '---', ...(body === '' ? [] : [body]), ''].join('\n');
}

function lineOf(key: string, value: CellValue | Map<string, CellValue>): string {
  if (value instanceof Map) return mapOf([...value]);
  // A number is a text, as it is printed: quotes say so to whoever reads the file.
  return key === 'number' && typeof value === 'string' ? JSON.stringify(value) : yamlOf(value);
}
