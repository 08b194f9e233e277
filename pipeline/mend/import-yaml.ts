import type { CellValue } from '../out/sheets/index.js';

/**
 * Text of a front matter's value that reads back exactly, whatever it looks like: bare where nobody
 * could take it for anything but words, else in double quotes. Lists and maps stand in one line.
 */
export function yamlOf(value: CellValue): string {
  if (typeof value === 'number') return String(value);
  if (typeof value === 'string') return yamlText(value);
  if (isList(value)) return `[${value.map(yamlOf).join(', ')}]`;
  return mapOf(Object.entries(value));
}

/** A map in one line. */
export function mapOf(pairs: readonly (readonly [string, CellValue])[]): string {
  if (pairs.length === 0) return '{}';
  return `{ ${pairs.map(([key, value]) => `${yamlText(key)}: ${yamlOf(value)}`).join(', ')} }`;
}

function isList(
  value: Exclude<CellValue, string | number>,
): value is Exclude<CellValue, string | number | Readonly<Record<string, string>>> {
  return Array.isArray(value);
}

/** Words that YAML 1.1 or 1.2 takes for something else (YAML 1.1, types bool and null; 1.2.2, 10.2). */
const TAKEN = /^(?:y|n|yes|no|true|false|on|off|null|nan|inf)$/i;
const BARE = /^\p{L}[\p{L}\p{M}\p{N} .;’()!?/-]*$/u;

/** A text as a key or a value, within brackets too. */
export function yamlText(text: string): string {
  const isBare =
    BARE.test(text) && text.trim() === text && !TAKEN.test(text) && !text.includes('---');
  return isBare ? text : inDoubleQuotes(text);
}

/** JSON is YAML in double quotes but for signs that no file should have as they are. */
function inDoubleQuotes(text: string): string {
  return JSON.stringify(text).replace(
    /[\u007f-\u00a0\u00ad\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufffe\uffff]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
