import { createHash } from 'node:crypto';

import canonicalize from 'canonicalize';

/**
 * The one text of a value as JSON (RFC 8785).
 * @throws TypeError for what JSON cannot hold.
 */
export function canonicalText(value: object | string | number | boolean | null): string {
  const text = attempted(value);
  if (text === undefined) throw new TypeError('JSON cannot hold this value');
  return text;
}

function attempted(value: unknown): string | undefined {
  try {
    return canonicalize(value);
  } catch (error) {
    throw new TypeError('JSON cannot hold this value', { cause: error });
  }
}

/** SHA-256 (FIPS 180-4) in hexadecimal, of octets or of a text in UTF-8. */
export function sha256(octets: Uint8Array | string): string {
  return createHash('sha256').update(octets).digest('hex');
}
