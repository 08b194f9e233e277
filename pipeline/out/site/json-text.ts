import canonicalize from 'canonicalize';

/** Canonical JSON with a line break at its end. */
export function jsonText(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('this value cannot be written as JSON');
  return `${text}\n`;
}
