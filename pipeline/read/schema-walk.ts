import { IsSchema, type TSchema } from 'typebox';

/**
 * Steps through a JSON Schema beside a value. A union allows several schemas at one place, so the
 * walk carries a list.
 */

/** Steps that were taken before: thousands of cards walk the same few. */
const taken = new WeakMap<readonly TSchema[], Map<string | number, readonly TSchema[]>>();
const ANY_POSITION = 0;

const tops = new WeakMap<TSchema, readonly TSchema[]>();

/** Where a walk of a schema begins: the same list each time, so that steps are remembered. */
export function topOf(schema: TSchema): readonly TSchema[] {
  const top = tops.get(schema) ?? [schema];
  tops.set(schema, top);
  return top;
}

/** The schemas that the value under a key, or at a position of a list, may have. */
export function optionsAt(schemas: readonly TSchema[], step: string | number): readonly TSchema[] {
  const place = typeof step === 'number' ? ANY_POSITION : step;
  const steps = taken.get(schemas) ?? new Map<string | number, readonly TSchema[]>();
  taken.set(schemas, steps);
  const options = steps.get(place) ?? stepInto(schemas, place);
  steps.set(place, options);
  return options;
}

function stepInto(schemas: readonly TSchema[], step: string | number): TSchema[] {
  return branches(schemas).flatMap((schema) =>
    typeof step === 'number' ? schemaList(keyword(schema, 'items')) : propertySchemas(schema, step),
  );
}

/** Whether a number is allowed here. */
export function wantsNumber(schemas: readonly TSchema[]): boolean {
  return wants(schemas).number;
}

/** Whether true or false is allowed here. */
export function wantsBoolean(schemas: readonly TSchema[]): boolean {
  return wants(schemas).boolean;
}

interface Wants {
  readonly number: boolean;
  readonly boolean: boolean;
}

const wanted = new WeakMap<readonly TSchema[], Wants>();

function wants(schemas: readonly TSchema[]): Wants {
  const known = wanted.get(schemas);
  if (known) return known;
  const types = branches(schemas).map((schema) => keyword(schema, 'type') ?? typeOfConst(schema));
  const found = {
    number: types.includes('integer') || types.includes('number'),
    boolean: types.includes('boolean'),
  };
  wanted.set(schemas, found);
  return found;
}

function typeOfConst(schema: TSchema): string {
  return typeof keyword(schema, 'const');
}

/** The keys that an object may have here; empty where any key is allowed. */
export function keysAt(schemas: readonly TSchema[]): string[] {
  return branches(schemas).flatMap((schema) =>
    Object.keys(asRecord(keyword(schema, 'properties'))),
  );
}

/** The schemas, and of a union the schemas that it is of. */
export function branches(schemas: readonly TSchema[]): TSchema[] {
  return schemas.flatMap((schema) => {
    const options = schemaList(keyword(schema, 'anyOf'));
    return options.length > 0 ? branches(options) : [schema];
  });
}

function propertySchemas(schema: TSchema, key: string): TSchema[] {
  const properties = asRecord(keyword(schema, 'properties'));
  if (Object.hasOwn(properties, key)) return schemaList(properties[key]);
  return Object.entries(asRecord(keyword(schema, 'patternProperties')))
    .filter(([pattern]) => new RegExp(pattern, 'u').test(key))
    .flatMap(([, value]) => schemaList(value));
}

function keyword(schema: TSchema, name: string): unknown {
  return asRecord(schema)[name];
}

function schemaList(value: unknown): TSchema[] {
  return (Array.isArray(value) ? value : [value]).filter((item) => IsSchema(item));
}

function asRecord(value: unknown): Record<string, unknown> {
  return isRecord(value) ? value : {};
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
