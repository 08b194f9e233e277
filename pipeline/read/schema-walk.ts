import { IsSchema, type TSchema } from 'typebox';

/**
 * Steps through a JSON Schema beside a value. A union allows several schemas at one place, so the
 * walk carries a list.
 */

/** The schemas that the value under a key, or at a position of a list, may have. */
export function optionsAt(schemas: readonly TSchema[], step: string | number): TSchema[] {
  return branches(schemas).flatMap((schema) =>
    typeof step === 'number' ? schemaList(keyword(schema, 'items')) : propertySchemas(schema, step),
  );
}

/** Whether a number is allowed here. */
export function wantsNumber(schemas: readonly TSchema[]): boolean {
  return branches(schemas).some((schema) => {
    const type = keyword(schema, 'type');
    return type === 'integer' || type === 'number' || typeof keyword(schema, 'const') === 'number';
  });
}

/** Whether true or false is allowed here. */
export function wantsBoolean(schemas: readonly TSchema[]): boolean {
  return branches(schemas).some((schema) => keyword(schema, 'type') === 'boolean');
}

/** The keys that an object may have here; empty where any key is allowed. */
export function keysAt(schemas: readonly TSchema[]): string[] {
  return branches(schemas).flatMap((schema) =>
    Object.keys(asRecord(keyword(schema, 'properties'))),
  );
}

function branches(schemas: readonly TSchema[]): TSchema[] {
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
  return typeof value === 'object' && value !== null ? { ...value } : {};
}
