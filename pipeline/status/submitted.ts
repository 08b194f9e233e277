import type { PacketRecord } from '../../schema/index.js';
import { instantOf, type Instant } from '../model/index.js';
import { packetDigest, type Ledger } from '../review/index.js';

/** A part of a card that was submitted to a person who has not decided on it since. */
export interface Pending {
  readonly packet: string;
  readonly person: string;
  readonly round: number;
  readonly at: Instant;
  /** `set/subset/card`. */
  readonly card: string;
  readonly part: string;
  readonly digest: string;
}

/**
 * What lies with reviewers at an instant. A packet that was withdrawn, that has expired, or whose
 * record is not as it was submitted, lies with nobody: no decision can come of it.
 */
export function pendingAt(
  { entries }: Ledger,
  packets: ReadonlyMap<string, PacketRecord>,
  now: Instant,
): readonly Pending[] {
  const pending = new Map<string, Pending>();
  const settle = (person: string, decisions: readonly Pick<Pending, 'card' | 'part'>[]): void => {
    for (const { card, part } of decisions) pending.delete(keyOf({ person, card, part }));
  };
  for (const entry of entries) {
    if (entry.kind === 'submitted') {
      const record = packets.get(entry.packet);
      const isSame = record !== undefined && packetDigest(record) === entry.record;
      if (!isSame || instantOf(record.expires) < now) continue;
      for (const one of submitted(record, instantOf(entry.at))) pending.set(keyOf(one), one);
    } else if (entry.kind === 'decided') settle(entry.answer.person, entry.answer.decisions);
    else if (entry.kind === 'by-hand') settle(entry.person, entry.decisions);
    else if (entry.kind === 'withdrawn') {
      for (const [key, { packet }] of pending) if (packet === entry.packet) pending.delete(key);
    }
  }
  return [...pending.values()];
}

function submitted(record: PacketRecord, at: Instant): readonly Pending[] {
  const { id: packet, person, round, decides } = record;
  return decides.map(({ card, part, digest }) => {
    return { packet, person, round, at, card, part, digest };
  });
}

function keyOf({ person, card, part }: Pick<Pending, 'person' | 'card' | 'part'>): string {
  return `${person} ${card} ${part}`;
}
