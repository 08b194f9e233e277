import type { LedgerEntry } from '../../schema/index.js';
import { canonicalText, sha256 } from './canonical.js';

/** What an entry says, without its place in the chain. */
export type LedgerWords = LedgerEntry extends infer Entry
  ? Entry extends LedgerEntry
    ? Omit<Entry, 'previous'>
    : never
  : never;

/** A ledger: its entries, each holding the digest of the line before. */
export interface Ledger {
  readonly entries: readonly LedgerEntry[];
  /** The digest of each line, in the same order. */
  readonly digests: readonly string[];
}

export const EMPTY_LEDGER: Ledger = { entries: [], digests: [] };

/** The digest of the last line, which stands for the whole ledger; `none` for an empty one. */
export function headOf({ digests }: Ledger): string {
  return digests.at(-1) ?? 'none';
}

/** Something wrong with a ledger: the line, from 1, and what is wrong with it. */
export interface LedgerFault {
  readonly line: number;
  readonly message: string;
}

export type LedgerReading =
  | { readonly ok: true; readonly ledger: Ledger }
  | { readonly ok: false; readonly faults: readonly LedgerFault[] };

/**
 * Reads `ledger.jsonl`: each line must be an entry and hold the digest of the line before it.
 * @param readEntry makes an entry of a value, or says why it is none.
 */
export function readLedger(
  text: string,
  readEntry: (value: unknown) => LedgerEntry | { readonly why: string },
): LedgerReading {
  if (text === '') return { ok: true, ledger: EMPTY_LEDGER };
  const faults: LedgerFault[] = [];
  if (!text.endsWith('\n')) {
    const line = text.split('\n').length;
    faults.push({ line, message: 'the last line is cut off: it does not end in a line break' });
  }
  const lines = text.replace(/\n$/, '').split('\n');
  const entries = lines.flatMap((line, at): LedgerEntry[] => {
    const entry = entryOf(line, readEntry);
    if ('why' in entry && !('kind' in entry)) {
      faults.push({ line: at + 1, message: entry.why });
      return [];
    }
    const before = at === 0 ? 'none' : digestOfLine(lines[at - 1] ?? '');
    if (entry.previous !== before) faults.push({ line: at + 1, message: brokenChain(at) });
    return [entry];
  });
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, ledger: { entries, digests: lines.map(digestOfLine) } };
}

function entryOf(
  line: string,
  readEntry: (value: unknown) => LedgerEntry | { readonly why: string },
): LedgerEntry | { readonly why: string } {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return { why: 'this line is no JSON' };
  }
  return readEntry(value);
}

function brokenChain(at: number): string {
  return at === 0
    ? 'the first entry says that something stood before it: the beginning was cut off'
    : 'it does not hold the digest of the line before: one of the two was changed, or one is missing';
}

/** The ledger with entries at its end. */
export function appended(ledger: Ledger, words: readonly LedgerWords[]): Ledger {
  return words.reduce<Ledger>((sum, one) => {
    const entry: LedgerEntry = { ...one, previous: headOf(sum) };
    return {
      entries: [...sum.entries, entry],
      digests: [...sum.digests, digestOfLine(lineOf(entry))],
    };
  }, ledger);
}

/** The text of `ledger.jsonl`. */
export function ledgerText({ entries }: Ledger): string {
  return entries.map((entry) => `${lineOf(entry)}\n`).join('');
}

/** Heads that somebody kept and that no entry has: the ledger was cut or changed since. */
export function lostHeads(ledger: Ledger, kept: readonly string[]): readonly string[] {
  const known = new Set(['none', ...ledger.digests]);
  return [...new Set(kept)].filter((head) => !known.has(head));
}

/**
 * One ledger of two that began as one: what the other has after the parting is chained to the end
 * of the first. No entry is changed but for the digest it holds, and none is there twice.
 */
export function merged(ours: Ledger, theirs: Ledger): Ledger {
  const known = new Set(ours.entries.map(wordsKey));
  const added = theirs.entries.filter((entry) => !known.has(wordsKey(entry)));
  return appended(ours, added);
}

function wordsKey(entry: LedgerEntry): string {
  return lineOf({ ...entry, previous: 'none' });
}

/** An entry as canonical JSON (RFC 8785). */
function lineOf(entry: LedgerEntry): string {
  return canonicalText(entry);
}

function digestOfLine(line: string): string {
  return sha256(line);
}
