import { createPublicKey, verify } from 'node:crypto';

import type { AnswerFile, Decision, PacketRecord } from '../../schema/index.js';
import { instantOf, type Instant } from '../model/index.js';
import { canonicalText, sha256 } from './canonical.js';
import type { Ledger } from './ledger.js';

/** Why a decision file is refused, whole. */
export type RefusalReason =
  | 'other property'
  | 'other packet'
  | 'other person'
  | 'packet not submitted'
  | 'packet record changed'
  | 'packet withdrawn'
  | 'forged'
  | 'expired'
  | 'replayed'
  | 'not decidable'
  | 'other text'
  | 'decided twice'
  | 'remark missing'
  | 'holder missing'
  | 'changes missing'
  | 'changes without approval'
  | 'changes beside copy';

export interface AnswerRefusal {
  readonly why: RefusalReason;
  /** What was found, or the card and part that it is about. */
  readonly about?: string;
}

/** What a decision file is held against. */
export interface AnswerGround {
  readonly property: string;
  readonly record: PacketRecord;
  readonly ledger: Ledger;
  readonly now: Instant;
}

/** Everything for which a decision file must be refused; nothing if it may go into the ledger. */
export function answerRefusals(answer: AnswerFile, ground: AnswerGround): readonly AnswerRefusal[] {
  const { property, record, ledger, now } = ground;
  const isOfProperty = answer.property === property && record.property === property;
  const isKnown = ledger.entries.some(
    (entry) => entry.kind === 'decided' && entry.answer.signature === answer.signature,
  );
  return [
    ...refusedIf(!isOfProperty, 'other property', answer.property),
    ...refusedIf(answer.packet !== record.id, 'other packet', answer.packet),
    ...refusedIf(answer.person !== record.person, 'other person', answer.person),
    ...packetRefusals(ground),
    ...refusedIf(now > instantOf(record.expires), 'expired', record.expires),
    ...refusedIf(isKnown, 'replayed'),
    ...refusedIf(!isSigned(signedOctets(answer), answer.signature, record.publicKey), 'forged'),
    ...answer.decisions.flatMap((decision, at) =>
      decisionRefusals(decision, record, answer.decisions.slice(0, at)),
    ),
  ];
}

function refusedIf(isSo: boolean, why: RefusalReason, about?: string): AnswerRefusal[] {
  if (!isSo) return [];
  return [about === undefined ? { why } : { why, about }];
}

/** The submission must stand in the ledger, with the record as it was then. */
function packetRefusals({ record, ledger }: AnswerGround): AnswerRefusal[] {
  const about = ledger.entries.filter((entry) => 'packet' in entry && entry.packet === record.id);
  const submitted = about.find((entry) => entry.kind === 'submitted');
  if (submitted?.kind !== 'submitted') return [{ why: 'packet not submitted' }];
  const isChanged = submitted.record !== packetDigest(record) || submitted.person !== record.person;
  const isWithdrawn = about.some(({ kind }) => kind === 'withdrawn');
  return [
    ...refusedIf(isChanged, 'packet record changed'),
    ...refusedIf(isWithdrawn, 'packet withdrawn'),
  ];
}

function decisionRefusals(
  one: Decision,
  { decides }: PacketRecord,
  before: readonly Decision[],
): AnswerRefusal[] {
  const { card, part, decision, remark, with: holder, changes } = one;
  const isSame = (other: Pick<Decision, 'card' | 'part'>): boolean =>
    other.card === card && other.part === part;
  const shown = decides.find(isSame);
  const isChanged = decision === 'approved with changes';
  const about = `${card} ${part}`;
  return [
    ...refusedIf(!shown, 'not decidable', about),
    ...refusedIf(shown !== undefined && shown.digest !== one.digest, 'other text', about),
    ...refusedIf(before.some(isSame), 'decided twice', about),
    ...refusedIf(decision === 'revise and resubmit' && !remark, 'remark missing', about),
    ...refusedIf(decision === 'on hold' && !holder, 'holder missing', about),
    ...refusedIf(isChanged && !changes, 'changes missing', about),
    ...refusedIf(!isChanged && changes !== undefined, 'changes without approval', about),
    ...refusedIf(isChanged && part !== 'copy', 'changes beside copy', about),
  ];
}

/** The digest of a packet's record: its entry in the ledger holds it. */
export function packetDigest(record: PacketRecord): string {
  return sha256(canonicalText(record));
}

/** What stands before the octets that are signed, so that a signature is good for nothing else. */
const SIGNED_AS = 'Holdback decision file 1\n';

/** The octets that a decision file's signature is over: its canonical JSON without the signature. */
export function signedOctets(answer: Omit<AnswerFile, 'signature'>): Uint8Array {
  const { format, property, packet, person, decisions, remarks } = answer;
  const text = canonicalText({ format, property, packet, person, decisions, remarks });
  return new TextEncoder().encode(SIGNED_AS + text);
}

/**
 * Whether a signature of octets is Ed25519 (RFC 8032) by a key, both in base64url without spare
 * bits.
 */
export function isSigned(octets: Uint8Array, written: string, publicKey: string): boolean {
  const signature = Buffer.from(written, 'base64url');
  if (signature.toString('base64url') !== written) return false;
  try {
    const key = createPublicKey({
      key: { kty: 'OKP', crv: 'Ed25519', x: publicKey },
      format: 'jwk',
    });
    return verify(null, octets, key, signature);
  } catch {
    return false;
  }
}

/** The one text that a decision file may have: canonical JSON and a line break. */
export function answerText(answer: AnswerFile): string {
  return `${canonicalText(answer)}\n`;
}
