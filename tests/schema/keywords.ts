import type { TSchema } from 'typebox';

import * as schemas from '../../schema/index.js';

/** The schemas of everything that a person writes. */
export const FILE_SCHEMAS: Readonly<Record<string, TSchema>> = {
  PropertyFile: schemas.PropertyFile,
  NamesFile: schemas.NamesFile,
  PeopleFile: schemas.PeopleFile,
  BackFile: schemas.BackFile,
  PlanFile: schemas.PlanFile,
  CardFront: schemas.CardFront,
  SalesFront: schemas.SalesFront,
  RosterFile: schemas.RosterFile,
  CorrectionsFile: schemas.CorrectionsFile,
};

/** Keywords under which other schemas lie, by how. */
const WITHIN: Readonly<Record<string, 'one' | 'list' | 'named'>> = {
  items: 'one',
  anyOf: 'list',
  properties: 'named',
  patternProperties: 'named',
};

/** Keywords that say something to people and nothing to a validator. */
const ANNOTATIONS = new Set(['title', 'description', '$schema', '$id']);

/** A schema and all that lie in it. */
export function schemasIn(schema: unknown): Record<string, unknown>[] {
  if (typeof schema !== 'object' || schema === null) return [];
  const record: Record<string, unknown> = { ...schema };
  const inner = Object.entries(WITHIN).flatMap(([keyword, how]): unknown[] => {
    const value = record[keyword];
    if (value === undefined) return [];
    return how === 'one' ? [value] : Object.values(value ?? {});
  });
  return [record, ...inner.flatMap(schemasIn)];
}

/** The keywords by which a value can fail a schema. */
export function failingKeywords(schema: unknown): string[] {
  const keywords = schemasIn(schema).flatMap((each) => Object.keys(each));
  const silent = new Set([...ANNOTATIONS, 'items', 'properties', 'patternProperties']);
  return [...new Set(keywords)].filter((keyword) => !silent.has(keyword)).sort();
}
