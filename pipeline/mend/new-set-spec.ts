import { nearest } from '../text/index.js';

/** What a text of the form `id=crew;title=Crew` says, by key, and what of it cannot be understood. */
export interface Spec {
  readonly said: ReadonlyMap<string, string>;
  readonly why: readonly string[];
}

/**
 * Reads keys and values parted by `;`. A backslash takes the next sign as it is, so that a title may
 * have a semicolon in it.
 * @param keys those that it may have.
 */
export function readSpec(text: string, keys: readonly string[]): Spec {
  const said = new Map<string, string>();
  const why: string[] = [];
  for (const part of partsOf(text)) {
    const at = part.indexOf('=');
    const key = part.slice(0, Math.max(at, 0)).trim();
    if (at < 0) why.push(`\`${part.trim()}\` is no key=value; the parts are parted by ;`);
    else if (!keys.includes(key)) why.push(sayUnknown(key, keys));
    else if (said.has(key)) why.push(`${key} is said twice`);
    else said.set(key, part.slice(at + 1).trim());
  }
  return { said, why };
}

/** Writes what `readSpec` reads; what is empty is left out. */
export function writeSpec(said: Iterable<readonly [key: string, value: string]>): string {
  return [...said]
    .filter(([, value]) => value !== '')
    .map(([key, value]) => `${key}=${value.replace(/[\\;]/g, (sign) => `\\${sign}`)}`)
    .join(';');
}

/** Words parted by commas, each once trimmed; none of them empty. */
export function listOf(text: string): readonly string[] {
  return text
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '');
}

function sayUnknown(key: string, keys: readonly string[]): string {
  const near = nearest(key, keys);
  const known = near === null ? `it is one of ${keys.join(', ')}` : `did you mean ${near}?`;
  return `there is no key \`${key}\`: ${known}`;
}

function partsOf(text: string): readonly string[] {
  const parts: string[] = [];
  let part = '';
  let isTaken = false;
  for (const sign of text) {
    if (isTaken || (sign !== '\\' && sign !== ';')) {
      part += sign;
      isTaken = false;
    } else if (sign === '\\') {
      isTaken = true;
    } else {
      parts.push(part);
      part = '';
    }
  }
  return [...parts, part].filter((each) => each.trim() !== '');
}
