import { canonicalText, sha256 } from './canonical.js';

/** Plain data: what JSON can hold. */
export type Json =
  null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/**
 * SHA-256 (FIPS 180-4) in hexadecimal over the canonical JSON (RFC 8785) of a value, its texts in
 * Unicode form NFC.
 * @throws TypeError for a number that JSON cannot hold or a lone surrogate.
 */
export function digestOf(value: Json): string {
  return sha256(canonicalText(normalised(value)));
}

function normalised(value: Json): Json {
  if (typeof value === 'string') {
    if (/\p{Cs}/u.test(value)) throw new TypeError('a text has half a character in it');
    return value.normalize('NFC');
  }
  if (value === null || typeof value !== 'object') return value;
  if (isList(value)) return value.map(normalised);
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [key.normalize('NFC'), normalised(inner)]),
  );
}

function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}
