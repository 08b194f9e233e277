import { isMap, isScalar, isSeq } from 'yaml';

import { keyOf } from '../model/index.js';
import { quotedAs } from './scalar.js';

/** A value of YAML with every scalar as the text that was typed. */
export type YamlValue = string | readonly YamlValue[] | { readonly [key: string]: YamlValue };

export type Record = { readonly [key: string]: YamlValue };

/** What a node says. */
export function valueOf(node: unknown): YamlValue {
  if (isMap(node)) {
    return Object.fromEntries(node.items.map(({ key, value }) => [keyOf(key), valueOf(value)]));
  }
  if (isSeq(node)) return node.items.map(valueOf);
  return isScalar(node) && typeof node.value === 'string' ? node.value : '';
}

export function isList(value: YamlValue): value is readonly YamlValue[] {
  return Array.isArray(value);
}

export function isMapping(value: YamlValue | null): value is Record {
  return value !== null && typeof value !== 'string' && !isList(value);
}

export function isSame(a: YamlValue | null, b: YamlValue | null): boolean {
  if (a === null || b === null || typeof a === 'string' || typeof b === 'string') return a === b;
  if (isList(a) || isList(b)) {
    return (
      isList(a) && isList(b) && a.length === b.length && a.every((v, i) => isSame(v, b[i] ?? null))
    );
  }
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => Object.hasOwn(b, key) && isSame(a[key] ?? null, b[key] ?? null))
  );
}

/** A value on one line. */
export function flow(value: YamlValue): string {
  if (typeof value === 'string') return quotedAs('', value);
  if (isList(value)) return `[${value.map(flow).join(', ')}]`;
  const pairs = Object.entries(value).map(([key, each]) => `${keyText(key)}: ${flow(each)}`);
  return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
}

export function keyText(key: string): string {
  return /^\p{L}[\p{L}\p{M}\p{N}._-]*(?: [\p{L}\p{M}\p{N}._-]+)*$/u.test(key)
    ? key
    : quotedAs('"', key);
}
