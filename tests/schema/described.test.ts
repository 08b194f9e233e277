import type { TSchema } from 'typebox';
import { describe, expect, test } from 'vitest';

import { branches, keysAt, optionsAt, topOf } from '../../pipeline/read/index.js';
import { wordsOf } from '../../pipeline/editor/index.js';
import * as schemas from '../../schema/index.js';
import { FILE_SCHEMAS, schemasIn } from './keywords.js';

/** Everything that people write, and the kept texts that they may come to read. */
const WRITTEN: Readonly<Record<string, TSchema>> = {
  ...FILE_SCHEMAS,
  MappingFile: schemas.MappingFile,
  HandFile: schemas.HandFile,
  ApprovedText: schemas.ApprovedText,
};

/** A description as it stands at a key of a shape. */
interface Described {
  readonly key: string;
  readonly description: unknown;
}

/** The keys of each shape in a schema. */
function shapesIn(schema: unknown): readonly (readonly Described[])[] {
  return schemasIn(schema).map(({ properties }) =>
    Object.entries(properties ?? {}).map(([key, value]: [string, unknown]) => ({
      key,
      description: textOf(value),
    })),
  );
}

function textOf(schema: unknown): unknown {
  return Object.entries(schema ?? {}).find(([keyword]) => keyword === 'description')?.[1];
}

/** What is wrong with the descriptions of the keys of one shape. */
function faultsIn(keys: readonly Described[]): readonly string[] {
  return keys.flatMap(({ key, description }, at) => {
    if (typeof description !== 'string') return [`${key} says nothing`];
    const { length } = description;
    return [
      ...(length < 10 || length > 140 ? [`${key} has ${String(length)} characters`] : []),
      ...(description.endsWith('.') ? [] : [`${key} has no stop at its end`]),
      ...(description === description.trim() && !/\s{2}|[\r\n\t]/u.test(description)
        ? []
        : [`${key} has odd spaces`]),
      ...keys
        .slice(0, at)
        .flatMap((other) =>
          other.description === description ? [`${key} says what ${other.key} says`] : [],
        ),
    ];
  });
}

describe('every key of what people write says what it is', () => {
  test.each(Object.entries(WRITTEN))('%s', (_name, schema) => {
    const shapes = shapesIn(schema).filter((keys) => keys.length > 0);
    expect(shapes.length).toBeGreaterThan(0);
    expect(shapes.flatMap(faultsIn)).toEqual([]);
  });

  test('a key that says nothing, too little, too much, the same or no sentence is found', () => {
    const text = (description?: string) => ({ type: 'string', description });
    const properties = {
      a: text('The first of two.'),
      b: text(),
      c: text('Short.'),
      d: text(`${'Long '.repeat(30)}.`),
      e: text('Something without a stop'),
      f: text('The first of two.'),
      g: text('The  third of two.'),
    };
    const nested = { type: 'array', description: 'A list of them.', items: { properties } };
    const found = shapesIn({ properties: { list: nested } }).flatMap(faultsIn);
    expect(found).toEqual([
      'b says nothing',
      'c has 6 characters',
      'd has 151 characters',
      'e has no stop at its end',
      'f says what a says',
      'g has odd spaces',
    ]);
  });
});

test('what an editor reads at a key is what stands at the key itself', () => {
  const isTold = (all: readonly TSchema[]): readonly string[] =>
    keysAt(all).flatMap((key) => {
      const own = optionsAt(all, key);
      const { description } = wordsOf(own);
      return description === textOf(own[0]) ? [] : [key];
    });
  for (const [name, schema] of Object.entries(WRITTEN)) {
    expect(isTold(branches(topOf(schema))), name).toEqual([]);
  }
});

describe('a value with a description of its own', () => {
  const own = schemas.common.said(schemas.common.InstantOrUnset, 'When it goes out.');

  test('says that first, and expects what the shared one does', () => {
    expect(wordsOf([own])).toEqual({
      ...wordsOf([schemas.common.InstantOrUnset]),
      description: 'When it goes out.',
    });
  });

  test('is the shared one but for that, which stays as it was', () => {
    const shared = { ...schemas.common.InstantOrUnset };
    expect({ ...own }).toEqual({ ...shared, description: 'When it goes out.' });
    expect(textOf(shared)).toBeUndefined();
  });
});
