import type { ErrorObject } from 'ajv/dist/2020.js';

import { readInstant, type YamlPath } from '../model/index.js';
import { nearest, surelyMeant } from '../text/index.js';
import type { SchemaFault } from './validate.js';

/** What each keyword of our schemas says when it is not met. Every keyword in use is here. */
const SENTENCES: Readonly<Record<string, (error: ErrorObject) => Wording>> = {
  type: (error) => wrongValue(error),
  anyOf: (error) => wrongValue(error),
  const: (error) => wrongValue(error),
  pattern: (error) => wrongValue(error),
  minimum: (error) => wrongValue(error),
  maximum: (error) => wrongValue(error),
  exclusiveMinimum: (error) => wrongValue(error),
  enum: (error) => {
    const allowed = words(error.params['allowedValues']);
    return { ...wrongValue(error), expected: oneOf(allowed), ...fixTo(error.data, allowed) };
  },
  format: (error) => ({ ...wrongValue(error), ...whyNoInstant(error) }),
  minLength: (error) => ({ message: `\`${lastKey(error)}\` is empty`, expected: title(error) }),
  maxLength: (error) => ({
    message: `\`${lastKey(error)}\` is too long`,
    expected: `at most ${String(error.params['limit'])} characters`,
  }),
  minItems: (error) => ({
    message: `\`${lastKey(error)}\` is an empty list`,
    expected: 'at least one entry, or no such key',
  }),
  minProperties: (error) => ({
    message: `\`${lastKey(error)}\` is empty`,
    expected: 'at least one key in it',
  }),
  uniqueItems: (error) => ({
    message: `\`${lastKey(error)}\` names the same thing twice`,
    expected: 'each thing once',
  }),
  required: (error) => ({
    message: `the key \`${text(error.params['missingProperty'])}\` is missing${inWhat(error)}`,
    expected: missingTitle(error),
  }),
  additionalProperties: (error) => {
    const key = text(error.params['additionalProperty']);
    const allowed = Object.keys(record(record(error.parentSchema)['properties']));
    const sure = surelyMeant(key, allowed);
    const near = sure ?? nearest(key, allowed);
    const isCertain = sure !== null && !Object.hasOwn(record(error.data), sure);
    return {
      message: `there is no key \`${key}\`${inWhat(error)}`,
      found: key,
      expected: near === null ? allowedKeys(allowed, error) : `\`${near}\``,
      ...(near === null ? {} : { fix: near }),
      ...(isCertain ? { certain: true } : {}),
    };
  },
};

interface Wording {
  readonly message: string;
  readonly found?: string;
  readonly expected?: string;
  readonly fix?: string;
  readonly certain?: true;
}

/** A schema error in a writer's words. */
export function sayFault(error: ErrorObject): SchemaFault {
  const say = SENTENCES[error.keyword] ?? wrongValue;
  const path = pathOf(error.instancePath);
  const unknown = error.keyword === 'additionalProperties';
  return {
    rule: unknown ? 'unknown-key' : 'schema',
    path: unknown ? [...path, text(error.params['additionalProperty'])] : path,
    what: unknown ? 'key' : 'value',
    ...say(error),
  };
}

/** The keywords that have a sentence. */
export const SAID_KEYWORDS: readonly string[] = Object.keys(SENTENCES);

function wrongValue(error: ErrorObject): Wording {
  return {
    message: `\`${lastKey(error)}\` has a value that is not allowed`,
    found: shown(error.data),
    expected: title(error),
  };
}

function whyNoInstant(error: ErrorObject): Partial<Wording> {
  if (error.params['format'] !== 'instant' || typeof error.data !== 'string') return {};
  const reading = readInstant(error.data);
  return reading.ok ? {} : { message: `\`${lastKey(error)}\` is no instant: ${reading.why}` };
}

function title(error: ErrorObject): string {
  const schema = record(error.parentSchema);
  if (typeof schema['title'] === 'string') return schema['title'];
  return typeof schema['type'] === 'string'
    ? (KINDS[schema['type']] ?? schema['type'])
    : 'another value';
}

const KINDS: Readonly<Record<string, string>> = {
  string: 'text',
  integer: 'a whole number',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list',
  object: 'keys with values',
};

function missingTitle(error: ErrorObject): string {
  const key = text(error.params['missingProperty']);
  const schema = record(record(record(error.parentSchema)['properties'])[key]);
  if (typeof schema['title'] === 'string') return schema['title'];
  if (Array.isArray(schema['enum'])) return oneOf(words(schema['enum']));
  return `a value for \`${key}\``;
}

function fixTo(data: unknown, allowed: readonly string[]): { fix?: string; certain?: true } {
  if (typeof data !== 'string') return {};
  const sure = surelyMeant(data, allowed);
  if (sure !== null) return { fix: sure, certain: true };
  const near = nearest(data, allowed);
  return near === null ? {} : { fix: near };
}

function oneOf(allowed: readonly string[]): string {
  const quoted = allowed.map((word) => `\`${word}\``);
  const last = quoted.at(-1) ?? '';
  return quoted.length < 2 ? last : `${quoted.slice(0, -1).join(', ')} or ${last}`;
}

function allowedKeys(allowed: readonly string[], error: ErrorObject): string {
  if (allowed.length > 0) return oneOf(allowed);
  const patterns = Object.keys(record(record(error.parentSchema)['patternProperties']));
  return patterns.length > 0 ? 'a key of small letters, digits and hyphens' : 'no key at all';
}

function inWhat(error: ErrorObject): string {
  const path = pathOf(error.instancePath);
  return path.length === 0 ? '' : ` in \`${path.join('.')}\``;
}

function lastKey(error: ErrorObject): string {
  const path = pathOf(error.instancePath);
  return path.length === 0 ? 'this file' : path.join('.');
}

function pathOf(pointer: string): YamlPath {
  return pointer
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}

function shown(data: unknown): string {
  const json = typeof data === 'string' ? data : JSON.stringify(data);
  if (json === '') return 'nothing';
  return json.length > 60 ? `${json.slice(0, 57)}…` : json;
}

function text(value: unknown): string {
  return typeof value === 'string' ? value : '';
}

function words(value: unknown): string[] {
  return Array.isArray(value) ? value.map(String) : [];
}

function record(value: unknown): Record<string, unknown> {
  return typeof value === 'object' && value !== null ? { ...value } : {};
}
