import type { AnswerFile, Decision, LedgerEntry, PacketRecord } from '../../schema/index.js';
import { packetDigest } from './answer.js';
import type { Standing } from './approval.js';
import type { Ledger } from './ledger.js';
import { readSeen } from './seen.js';

/**
 * Every decision of a ledger, in its order, with what its person saw. A decision counts only with
 * the record of its packet as it was when it was submitted: a record that is missing or was changed
 * since proves nothing.
 * @param packets the records below `review/packets/`, by id.
 */
export function decisionsOf(
  { entries }: Ledger,
  packets: ReadonlyMap<string, PacketRecord>,
): readonly Standing[] {
  const sent = new Map<string, PacketRecord>();
  return entries.flatMap((entry): readonly Standing[] => {
    if (entry.kind === 'submitted') {
      const record = packets.get(entry.packet);
      if (record && packetDigest(record) === entry.record) sent.set(entry.packet, record);
      return [];
    }
    if (entry.kind === 'decided') {
      const record = sent.get(entry.answer.packet);
      return record ? ofAnswer(entry.answer, entry.approves, record) : [];
    }
    return entry.kind === 'by-hand' ? ofHand(entry) : [];
  });
}

type Approves = Extract<LedgerEntry, { kind: 'decided' }>['approves'];

function ofAnswer(
  { person, decisions }: AnswerFile,
  approves: Approves,
  { decides }: PacketRecord,
): readonly Standing[] {
  return decisions.flatMap((decision): Standing[] => {
    const { card, part } = decision;
    const isSame = (other: { readonly card: string; readonly part: string }): boolean =>
      other.card === card && other.part === part;
    const shown = decides.find(isSame);
    if (!shown) return [];
    return [
      {
        person,
        card,
        part,
        verdict: decision.decision,
        digest: approves.find(isSame)?.digest ?? withoutChanges(decision),
        seen: readSeen(shown.seen),
        remark: decision.remark ?? null,
        with: decision.with ?? null,
      },
    ];
  });
}

/** Changes that were never made approve no text: not the one without them either. */
function withoutChanges({ decision, digest }: Decision): string {
  return decision === 'approved with changes' ? '' : digest;
}

function ofHand({
  person,
  decisions,
}: Extract<LedgerEntry, { kind: 'by-hand' }>): readonly Standing[] {
  return decisions.map((decision) => ({
    person,
    card: decision.card,
    part: decision.part,
    verdict: decision.decision,
    digest: decision.digest,
    seen: readSeen(decision.seen),
    remark: decision.remark ?? null,
    with: decision.with ?? null,
  }));
}
