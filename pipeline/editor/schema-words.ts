import type { TSchema } from 'typebox';

import { branches } from '../read/index.js';

/** What an editor says of a key: what it is for, and what may stand there. */
export interface SchemaWords {
  readonly description: string | null;
  readonly expected: string | null;
  /** The words that may stand there, if they are a few. */
  readonly choices: readonly string[];
}

export function wordsOf(schemas: readonly TSchema[]): SchemaWords {
  const all = [...schemas, ...branches(schemas)];
  return {
    description: firstText(all, 'description'),
    expected: firstText(all, 'title'),
    choices: [...new Set(branches(schemas).flatMap(choicesOf))],
  };
}

function firstText(schemas: readonly TSchema[], keyword: string): string | null {
  for (const schema of schemas) {
    const text: unknown = Object.entries(schema).find(([key]) => key === keyword)?.[1];
    if (typeof text === 'string') return text;
  }
  return null;
}

function choicesOf(schema: TSchema): readonly string[] {
  return Object.entries(schema).flatMap(
    ([keyword, value]: [string, unknown]): readonly string[] => {
      if (keyword === 'const') return wordFor(value);
      if (keyword === 'type' && value === 'boolean') return ['true', 'false'];
      if (keyword !== 'enum' || !Array.isArray(value)) return [];
      return value.flatMap(wordFor);
    },
  );
}

function wordFor(value: unknown): readonly string[] {
  return typeof value === 'string' || typeof value === 'number' ? [String(value)] : [];
}
