import { fenceOf } from '../model/index.js';

/** A link of a bio: what it names, and where it stands in the file. */
export interface Link {
  readonly kind: 'held' | 'count';
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

/** Where the body of a file begins; null for a file without one. */
export function bodyFrom(path: string, text: string): number | null {
  return path.endsWith('.md') ? (fenceOf(text)?.bodyFrom ?? null) : null;
}

/** The link at an offset of a file, be it on its words or on its target. */
export function linkAt(path: string, text: string, offset: number): Link | null {
  const start = bodyFrom(path, text);
  if (start === null || offset < start) return null;
  for (const found of text.slice(start).matchAll(/\[[^[\]]*\]\((held|count):([a-z0-9-]+)\)/g)) {
    const from = start + found.index;
    const to = from + found[0].length;
    if (from > offset || offset >= to) continue;
    const [, kind, id = ''] = found;
    return { kind: kind === 'held' ? 'held' : 'count', id, from, to };
  }
  return null;
}

const EMPTY_LINE = /(?:\r\n|\n|\r)[ \t]*(?:\r\n|\n|\r)/g;

/** The paragraph at an offset of a body: lines without an empty one between them. */
export function paragraphAt(
  text: string,
  start: number,
  offset: number,
): { readonly from: number; readonly text: string } {
  const gap = [...text.slice(start, offset).matchAll(EMPTY_LINE)].at(-1);
  const from = start + (gap ? gap.index + gap[0].length : 0);
  const [rest] = text.slice(offset).matchAll(EMPTY_LINE);
  return { from, text: text.slice(from, rest ? offset + rest.index : text.length) };
}
