import { quotedAs } from '../edit/index.js';

/** A value of a file: text is quoted where it must be, numbers and truth stand as they are. */
export type Flow =
  string | number | boolean | readonly Flow[] | { readonly [key: string]: Flow | undefined };

/** A value on one line, as the files of a property are written: `{ id: crew, facts: [Berth] }`. */
export function flow(value: Flow): string {
  if (typeof value === 'string') return scalar(value);
  if (typeof value !== 'object') return String(value);
  if (isList(value)) return `[${value.map(flow).join(', ')}]`;
  const pairs = Object.entries(value).flatMap(([key, each]) =>
    each === undefined ? [] : [`${scalar(key)}: ${flow(each)}`],
  );
  return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
}

function isList(value: Flow): value is readonly Flow[] {
  return Array.isArray(value);
}

/** A text in quotes only where it needs them: what begins with a letter and has no sign of YAML. */
export function scalar(text: string): string {
  return quotedAs('', text);
}

/** A list with a line for each item; `[]` if there is none. */
export function block(key: string, items: readonly Flow[]): string {
  if (items.length === 0) return `${key}: []\n`;
  return `${key}:\n${items.map((item) => `  - ${flow(item)}\n`).join('')}`;
}

/** Lines of a file; what is null is left out. */
export function lines(...all: readonly (string | null)[]): string {
  return all.flatMap((line) => (line === null ? [] : [`${line}\n`])).join('');
}
