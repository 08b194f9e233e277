import type { PacketRecord } from '../../schema/index.js';
import type { View } from '../gate/index.js';
import { instantOf, writeInstant, type Instant } from '../model/index.js';
import type { Submission, SubmittedText } from '../out/packet/index.js';
import {
  appended,
  canonicalText,
  headOf,
  ledgerText,
  packetDigest,
  writeSeen,
} from '../review/index.js';
import { select } from '../select/index.js';
import { writeAll } from '../write/index.js';
import { choose, type Chosen, type Person, type Selection } from './choose.js';
import { isClearedForAll } from './clearance.js';
import { earlierOf } from './earlier.js';
import { findingsFor } from './findings.js';
import { coversNow, readGround, type Ground } from './ground.js';
import { keptText, octetsOf, type Files } from './kept-files.js';
import { keyPairFrom } from './keys.js';
import { fieldsWere, lastDecisions, scheduleNow, submittedPart } from './last.js';
import { LEDGER, locked, refused, type Place, type Refused } from './lock.js';

/** A submission to be made. */
export interface SendOrder extends Place, Selection {
  /** To whom, by id. */
  readonly person: string;
  /** 32 octets of chance that nobody can foretell: the key that signs the decisions is made of it. */
  readonly seed: Uint8Array;
  /** Until when decisions are taken; without it, the usual time. */
  readonly expires?: Instant;
  /** Makes the file that is sent, and writes it. It is in its place before the ledger says so. */
  readonly deliver: (made: Sending) => Promise<void>;
  /** Does what has no pause in it, and writes nothing: whoever may stop it wraps it. */
  readonly whole?: <T>(job: () => T | Promise<T>) => Promise<T>;
}

/** What the file that is sent is made of. */
export interface Sending {
  readonly view: View;
  readonly submission: Submission;
  readonly ground: Ground;
}

export interface Sent {
  readonly done: true;
  readonly record: PacketRecord;
}

/** Makes a submission to a person, has it delivered, and puts it into the ledger. */
export function sendPacket(order: SendOrder): Promise<Sent | Refused> {
  return locked(order, async (disk) => {
    const made = await (order.whole ? order.whole(() => prepare(order)) : prepare(order));
    if ('done' in made) return made;
    await order.deliver(made.sending);
    writeAll(disk, order.contentPath, made.files);
    return { done: true, record: made.record };
  });
}

interface Prepared {
  readonly sending: Sending;
  readonly record: PacketRecord;
  readonly files: Files;
}

const NOBODY_ASKED =
  'the property asks nobody to approve anything: say in `approvals` of property.yaml who approves which parts';

function prepare(order: SendOrder): Prepared | Refused {
  const ground = readGround(order.contentPath);
  if ('done' in ground) return ground;
  const person = ground.content.people?.value.people.find(({ id }) => id === order.person);
  if (!person) return refused(`people.yaml knows no ${order.person}`);
  if (ground.property.approvals === 'none') return refused(NOBODY_ASKED);
  const id = packetId(ground, person);
  if (ground.review.packets.has(id)) return refused(recordLeft(id));
  const released = select(ground.content);
  const choice = released && choose(released, { kind: 'person', person, at: order.now }, order);
  if (!choice || choice.chosen.length === 0) return refused(nothingFor(person));
  const expires = order.expires ?? usualExpiry(order.now, ground);
  if (expires <= order.now) return refused('--expires is past: name a day to come');
  return prepared(ground, person, choice.view, choice.chosen, { ...order, expires });
}

/** Counts what was submitted to a person, from 1. */
function roundOf({ review }: Ground, { id }: Person): number {
  const sent = review.ledger.entries.filter(
    (entry) => entry.kind === 'submitted' && entry.person === id,
  );
  return sent.length + 1;
}

function packetId(ground: Ground, person: Person): string {
  return `${person.id}-${String(roundOf(ground, person))}`;
}

function recordLeft(id: string): string {
  return `review/packets/${id}.json is there, and the ledger has no such packet: bring the ledger back, with \`holdback ledger merge FILE\`, or move the record away`;
}

function nothingFor({ id, role }: Person): string {
  return (
    `there is nothing that ${id} can decide on: no card or sales text of what was asked for is handed in, ` +
    `shown whole to ${id}, and asks for the approval of a ${role}`
  );
}

/** Days in milliseconds. */
const DAY = 86_400_000;

/** Twice the time that a round may take, and never less than 60 days. */
function usualExpiry(now: Instant, { property }: Ground): Instant {
  return now + Math.max(60, 3 * (property.review?.workingDays ?? 0)) * DAY;
}

function prepared(
  ground: Ground,
  person: Person,
  view: View,
  chosen: readonly Chosen[],
  { now, expires, seed }: SendOrder & { readonly expires: Instant },
): Prepared {
  const { review, property } = ground;
  const { zone } = property;
  const round = roundOf(ground, person);
  const { privateKey, publicKey } = keyPairFrom(seed);
  const texts = submittedTexts(ground, person, chosen);
  const [made, until] = [writeInstant(now, zone), writeInstant(expires, zone)];
  const record: PacketRecord = {
    format: 1,
    id: packetId(ground, person),
    property: property.id,
    person: person.id,
    clearance: person.clearance,
    round,
    made,
    expires: until,
    publicKey,
    ledger: headOf(review.ledger),
    decides: chosen.flatMap((each, at) =>
      (texts[at]?.parts ?? []).map(({ part, digest }) => ({
        card: each.key,
        part,
        digest,
        seen: writeSeen(scheduleNow(ground, each), zone),
      })),
    ),
  };
  const submission: Submission = {
    id: record.id,
    property: property.id,
    round,
    person: { id: person.id, name: person.name },
    made: now,
    expires: instantOf(until),
    privateKey,
    texts,
  };
  return { sending: { view, submission, ground }, record, files: filesOf(ground, record) };
}

function submittedTexts(
  ground: Ground,
  person: Person,
  chosen: readonly Chosen[],
): readonly SubmittedText[] {
  const isCleared = isClearedForAll(ground.property, person);
  const findings = findingsFor(ground, chosen, isCleared);
  const last = lastDecisions(ground, person);
  return chosen.map((each) => {
    const { key, parts } = each;
    const lastOn = (part: string) => last.get(`${key} ${part}`);
    return {
      key,
      parts: parts.flatMap((part) => submittedPart(ground, each, part, lastOn(part)) ?? []),
      was: parts.flatMap((part) => fieldsWere(ground, part, lastOn(part))),
      earlier: earlierOf(ground, key, person, isCleared),
      findings: findings.get(key) ?? [],
    };
  });
}

/** The record, every text that it shows, and the ledger. */
function filesOf(ground: Ground, record: PacketRecord): Files {
  const { id, person, made } = record;
  const ledger = appended(ground.review.ledger, [
    { kind: 'submitted', at: made, packet: id, person, record: packetDigest(record) },
  ]);
  return new Map([
    [`review/packets/${id}.json`, octetsOf(`${canonicalText(record)}\n`)] as const,
    ...record.decides.flatMap(({ card, part }) => [
      ...keptText(ground, 'submitted', { card, part, covers: coversNow(ground, card, part) }),
    ]),
    [LEDGER, octetsOf(ledgerText(ledger))] as const,
  ]);
}
