import type { Subset } from '../../schema/index.js';

/** More than any subset has: a slip of the hand must not make a file of them all. */
const MOST = 100_000;

type Reading =
  | { readonly ok: true; readonly numbers: Subset['numbers'] }
  | { readonly ok: false; readonly why: string };

const FORMS = 'write them like 1-48, LC-1-LC-8, SG-1,SG-2 or none';

/** Reads how a subset is numbered: `1-48` (48 is the same), `LC-1-LC-8`, `SG-1,SG-2`, `none`. */
export function readNumbers(text: string, prefix = ''): Reading {
  if (text === 'none') return { ok: true, numbers: 'none' };
  const parts = text.split(',').map((part) => part.trim());
  if (parts.some((part) => part === '')) return { ok: false, why: `a number is missing: ${FORMS}` };
  const [first = '', ...others] = parts;
  if (others.length === 0) {
    const range = rangeIn(/^\d{1,9}$/.test(first) ? `1-${first}` : first, prefix);
    if (range !== null) return backwards(range) ?? { ok: true, numbers: range };
  }
  const codes: string[] = [];
  for (const part of parts) {
    const range = rangeIn(part, prefix);
    if (range === null) {
      codes.push(`${prefix}${part}`);
      continue;
    }
    const fault = backwards(range);
    if (fault) return fault;
    for (let at = range.from; at <= range.to; at += 1) {
      codes.push(`${range.prefix ?? ''}${String(at)}`);
    }
  }
  return { ok: true, numbers: { codes } };
}

interface NumberRange {
  readonly prefix?: string;
  readonly from: number;
  readonly to: number;
}

/** The last number may have the letters of the first before it, or none. */
function rangeIn(text: string, stated: string): NumberRange | null {
  for (const { index } of text.matchAll(/[-–]/g)) {
    const head = numbered(text.slice(0, index).trim());
    const tail = numbered(text.slice(index + 1).trim());
    if (!head || !tail || (tail.before !== '' && tail.before !== head.before)) continue;
    const prefix = `${stated}${head.before}`;
    const ends = { from: head.number, to: tail.number };
    return prefix === '' ? ends : { prefix, ...ends };
  }
  return null;
}

/** The number that a text ends with, and what stands before it. */
function numbered(text: string): { readonly before: string; readonly number: number } | null {
  const digits = /\d+$/.exec(text)?.[0];
  if (digits === undefined || digits.length > 9) return null;
  return { before: text.slice(0, -digits.length), number: Number(digits) };
}

function backwards({ from, to }: NumberRange): Reading | null {
  if (to < from) {
    return { ok: false, why: `${String(from)} to ${String(to)} runs backwards: ${FORMS}` };
  }
  if (to - from < MOST) return null;
  return { ok: false, why: `a subset has at most ${String(MOST)} numbers: ${FORMS}` };
}
