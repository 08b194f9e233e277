import type { Copy } from '../model/index.js';
import type { Json } from './digest.js';

/**
 * Values of what an approval covers, as it was kept. Whatever is not there or is of another kind is
 * as if it were empty: what is made of it must give the digest that was approved, or it is not used.
 */

/** The value of a key; null where there is none. */
export function valueOf(from: Json, key: string): Json {
  if (from === null || typeof from !== 'object' || isList(from)) return null;
  return Object.hasOwn(from, key) ? (from[key] ?? null) : null;
}

export function textOf(from: Json, key: string): string | null {
  const value = valueOf(from, key);
  return typeof value === 'string' ? value : null;
}

export function numberOf(from: Json, key: string): number | null {
  const value = valueOf(from, key);
  return typeof value === 'number' ? value : null;
}

export function listOf(from: Json, key: string): readonly Json[] {
  const value = valueOf(from, key);
  return isList(value) ? value : [];
}

/** The texts of a list. */
export function textsOf(from: Json, key: string): readonly string[] {
  return listOf(from, key).flatMap((value) => (typeof value === 'string' ? [value] : []));
}

/** Texts by their keys. */
export function mapOf(from: Json, key: string): Record<string, string> {
  const value = valueOf(from, key);
  if (value === null || typeof value !== 'object' || isList(value)) return {};
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, text]) =>
      typeof text === 'string' ? [[name, text] as const] : [],
    ),
  );
}

/** Pairs of texts, in their order. */
export function pairsOf(from: Json, key: string): readonly (readonly [string, string])[] {
  return listOf(from, key).flatMap((pair): (readonly [string, string])[] => {
    if (!isList(pair)) return [];
    const [name, text] = pair;
    return typeof name === 'string' && typeof text === 'string' ? [[name, text]] : [];
  });
}

/** The words of a bio or a sales text, held by nothing and counting nothing; they stand in no file. */
export function wordsIn(from: Json, key: 'bio' | 'words' = 'bio'): Copy {
  return listOf(from, key).flatMap((paragraph) =>
    isList(paragraph)
      ? [
          paragraph.map((run) => ({
            text: textOf(run, 'text') ?? '',
            italic: valueOf(run, 'italic') === true,
            bold: valueOf(run, 'bold') === true,
            hold: null,
            count: null,
            from: 0,
            to: 0,
          })),
        ]
      : [],
  );
}

function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}
