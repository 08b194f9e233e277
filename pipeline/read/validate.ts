import { Ajv2020, type ErrorObject, type ValidateFunction } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';
import type { Static, TSchema } from 'typebox';

import { isZone, readInstant, type YamlPath } from '../model/index.js';
import { sayFault } from './sentences.js';

/** One thing that the schema does not allow. */
export interface SchemaFault {
  readonly rule: 'schema' | 'unknown-key';
  readonly path: YamlPath;
  readonly what: 'key' | 'value';
  readonly message: string;
  readonly found?: string;
  readonly expected?: string;
  readonly fix?: string;
  readonly certain?: true;
}

export type Validation<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly SchemaFault[] };

const ajv = new Ajv2020({
  allErrors: true,
  verbose: true,
  strict: true,
  strictRequired: true,
  ownProperties: true,
  allowUnionTypes: false,
  // Making the functions shorter takes longer than running them as they are.
  code: { optimize: false },
});
formats.default(ajv, ['date']);
ajv.addFormat('instant', { type: 'string', validate: (text: string) => readInstant(text).ok });
ajv.addFormat('time-zone', { type: 'string', validate: isZone });

const compiled = new Map<TSchema, ValidateFunction>();

/** The only door from unknown data to a typed value: what passes its schema has its type. */
export function validate<S extends TSchema>(schema: S, data: unknown): Validation<Static<S>> {
  const check = compiled.get(schema) ?? ajv.compile(schema);
  compiled.set(schema, check);
  if (check(data)) return { ok: true, value: data as Static<S> };
  return { ok: false, faults: oncePerValue(withoutUnions(check.errors ?? [])).map(sayFault) };
}

/** A value of the wrong type is also none of the allowed ones: that is one fault, not two. */
function oncePerValue(errors: readonly ErrorObject[]): ErrorObject[] {
  const lists = errors.filter((error) => error.keyword === 'enum' || error.keyword === 'const');
  const told = new Set(lists.map((error) => error.instancePath));
  return errors.filter((error) => error.keyword !== 'type' || !told.has(error.instancePath));
}

/**
 * A union reports the faults of all its branches. Where the value's own kind or keys pick one
 * branch, only that branch's faults are kept; otherwise the union speaks as one.
 */
function withoutUnions(errors: readonly ErrorObject[]): ErrorObject[] {
  let kept = [...errors];
  const unions = errors
    .filter((error) => error.keyword === 'anyOf')
    .sort((a, b) => a.schemaPath.length - b.schemaPath.length);
  for (const union of unions) {
    if (!kept.includes(union)) continue;
    const branch = branchFor(union);
    kept = kept.filter((error) => {
      if (error === union) return branch === null;
      const inside = `${error.instancePath}/`.startsWith(`${union.instancePath}/`);
      if (!inside || !error.schemaPath.startsWith(`${union.schemaPath}/`)) return true;
      return (
        branch !== null && error.schemaPath.startsWith(`${union.schemaPath}/${String(branch)}/`)
      );
    });
  }
  return kept;
}

function branchFor(union: ErrorObject): number | null {
  const kind = Array.isArray(union.data) ? 'array' : typeof union.data;
  const options: unknown = union.schema;
  if (!Array.isArray(options)) return null;
  if (kind !== 'object' && kind !== 'array') return null;
  const fitting = options.flatMap((option: unknown, index) =>
    typeOf(option) === kind ? [index] : [],
  );
  if (fitting.length < 2) return fitting[0] ?? null;
  const known = fitting.filter((index) => sharesKey(options[index], union.data));
  return known.length === 1 ? (known[0] ?? null) : null;
}

/** Whether a value has a key that an object of this schema may have. */
function sharesKey(schema: unknown, data: unknown): boolean {
  const has = typeof schema === 'object' && schema !== null && 'properties' in schema;
  const keys = Object.keys((has ? schema.properties : null) ?? {});
  return keys.some((key) => Object.hasOwn(data ?? {}, key));
}

function typeOf(schema: unknown): unknown {
  return typeof schema === 'object' && schema !== null && 'type' in schema
    ? schema.type
    : undefined;
}
