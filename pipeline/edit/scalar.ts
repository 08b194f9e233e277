import { spotOf, type SourceFile, type YamlPath } from '../model/index.js';
import type { Change } from './splice.js';

/**
 * The change that gives a value of front matter another text. It stays in its way of quoting where
 * the new text can be written so; else it is put in double quotes, where any text can.
 * @param path must lead to a plain value that is there.
 */
export function rewriteScalar(source: SourceFile, path: YamlPath, text: string): Change {
  const spot = spotOf(source, path);
  const was = source.text.slice(spot.from, spot.to);
  const end = /^[|>]/.test(was) ? (/(?:\r\n|\n|\r)$/.exec(was)?.[0] ?? '') : '';
  return { spot, text: quotedAs(was, text) + end };
}

/** A text quoted as what it stands in for, where it can be. */
export function quotedAs(was: string, text: string): string {
  const isOneLine = !/[\r\n\t\u0000-\u001f\u007f-\u009f\u2028\u2029\ufeff]/.test(text);
  if (was.startsWith("'") && isOneLine) return `'${text.replaceAll("'", "''")}'`;
  if (/^["|>]/.test(was) || !isOneLine || !isPlain(text)) return inDoubleQuotes(text);
  return text;
}

/** Words that mean themselves without quotes, within brackets too. */
function isPlain(text: string): boolean {
  return /^\p{L}[\p{L}\p{M}\p{N} .;’'()!?&/-]*$/u.test(text) && text.trim() === text;
}

/** JSON is YAML in double quotes but for signs that no file should have as they are. */
function inDoubleQuotes(text: string): string {
  return JSON.stringify(text).replace(
    /[\u007f-\u009f\u2028\u2029\ufeff]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
