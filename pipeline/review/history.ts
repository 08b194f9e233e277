import type { Decision, LedgerEntry } from '../../schema/index.js';
import type { Ledger } from './ledger.js';

/** One thing that happened to a card, in the ledger's order. */
export interface HistoryLine {
  readonly at: string;
  readonly what: string;
  readonly who: string;
  /** Remarks and changes, a line each. */
  readonly more: readonly string[];
}

/**
 * The approval history of a card: everything in the ledger that names it.
 * @param key set, subset and card, such as `high-water/crew/c017`.
 * @param packetsOf the packets in which the card was submitted, by id.
 */
export function historyOf(
  { entries }: Ledger,
  key: string,
  packetsOf: ReadonlyMap<string, readonly string[]>,
): readonly HistoryLine[] {
  return entries.flatMap((entry) => linesOf(entry, key, packetsOf));
}

function linesOf(
  entry: LedgerEntry,
  key: string,
  packetsOf: ReadonlyMap<string, readonly string[]>,
): readonly HistoryLine[] {
  const { at } = entry;
  switch (entry.kind) {
    case 'submitted': {
      const parts = packetsOf.get(entry.packet) ?? [];
      if (parts.length === 0) return [];
      const what = `submitted ${parts.join(', ')} in ${entry.packet}`;
      return [{ at, what, who: entry.person, more: [] }];
    }
    case 'decided':
      return decided(at, entry.answer.person, entry.answer.decisions, key, '');
    case 'by-hand':
      return decided(at, entry.person, entry.decisions, key, `, entered by ${entry.by}`);
    case 'withdrawn': {
      if ((packetsOf.get(entry.packet) ?? []).length === 0) return [];
      return [{ at, what: `withdrawn ${entry.packet}`, who: entry.by, more: [entry.why] }];
    }
    case 'checked':
      if (entry.card !== key) return [];
      return [{ at, what: `read against ${entry.cut}`, who: entry.by, more: [] }];
    case 'released':
      return [];
  }
}

function decided(
  at: string,
  who: string,
  decisions: readonly Decision[],
  key: string,
  how: string,
): readonly HistoryLine[] {
  return decisions
    .filter(({ card }) => card === key)
    .map(({ part, decision, digest, remark, with: holder, changes }) => ({
      at,
      what: `${part} ${digest.slice(0, 6)}: ${decision}${how}`,
      who,
      more: [
        ...(remark === undefined ? [] : [remark]),
        ...(holder === undefined ? [] : [`with ${holder}`]),
        ...(changes ?? []).map(({ field, text }) => `${field}: ${text}`),
      ],
    }));
}
