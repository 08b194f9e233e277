import { createPrivateKey, sign, type KeyObject } from 'node:crypto';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

import type { AnswerFile, Decision, PacketRecord } from '../../schema/index.js';
import { sampleWith } from '../../pipeline/checks/index.js';
import { instantOf, type Instant } from '../../pipeline/model/index.js';
import { answerText, signedOctets } from '../../pipeline/review/index.js';
import {
  keyPairFrom,
  sendPacket,
  type Place,
  type Refused,
  type SendOrder,
  type Sent,
} from '../../pipeline/submission/index.js';
import { filesBelow } from '../release/site-at.js';

export const SENT = instantOf('2027-01-11T10:00:00+00:00[Europe/London]');
export const NOW = instantOf('2027-01-18T10:00:00+00:00[Europe/London]');
export const SEED = new Uint8Array(32).fill(7);

const PROPERTY = `id: lake
title: The Lake
zone: Europe/London
since: "2026-09-01T09:00:00+01:00[Europe/London]"
levels:
  - { id: open, label: Known }
  - { id: later, label: Episode 1, lift: "2027-04-16T20:00:00+01:00[Europe/London]" }
  - { id: last, label: Episode 2, lift: "2027-06-04T20:00:00+01:00[Europe/London]", held: absent }
embargoes:
  - { id: guest, label: A guest, lift: unset }
approvals:
  - { parts: [copy, image, layout, web, sales], roles: [licensor] }
beats:
  - { at: 1/1, says: The water rises, level: open }
legal: { line: "© 2027 Lantern & Oar" }
review: { workingDays: 10, byHand: allowed }
`;

const PEOPLE = `people:
  - { id: jonah, name: Jonah Prewett, role: writer, clearance: last }
  - { id: sefa, name: Sefa Brook, role: editor, clearance: last }
  - { id: amara, name: Amara Linde, role: licensor, clearance: last, knows: [guest] }
  - { id: tobit, name: Tobit Crane, role: licensor, clearance: open }
`;

export const QUAY = 'one/base/a1';
export const LAMP = 'one/base/a2';
export const CHART = 'one/extra/b1';
export const QUAY_FILE = 'one/cards/base/a1.md';

const CARDS = {
  [QUAY_FILE]: `---
number: "1"
name: The Quay
spoiler: open
state: ready
story: 1/1
facts: { Berth: 'Lock nine' }
---
The quay stands in *water to the knee*. [Nobody rows there](held:later) by day.
`,
  'one/cards/base/a2.md': `---
number: "2"
name: The Lamp
spoiler: open
state: ready
story: 1/4
---
A lamp that nobody lit is burning.
`,
  'one/cards/extra/b1.md': `---
number: X-1
name: The Chart
spoiler: open
---
Ink, and a thumbprint of the lake.
`,
};

/** A content folder on the disk, with some files of its own; its folder is thrown away by the test. */
export function placed(more: Readonly<Record<string, string>> = {}): string {
  const root = mkdtempSync(join(tmpdir(), 'holdback-submission-'));
  const files = sampleWith({
    'property.yaml': PROPERTY,
    'people.yaml': PEOPLE,
    ...CARDS,
    ...more,
  });
  for (const [path, text] of files) put(root, path, text);
  return root;
}

export function put(root: string, path: string, text: string | Uint8Array): void {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
}

/** Every file below a folder, as text. */
export function textsBelow(root: string): Record<string, string> {
  const decoder = new TextDecoder('utf-8', { ignoreBOM: true });
  return Object.fromEntries(
    [...filesBelow(root)].map(([path, bytes]) => [path, decoder.decode(bytes)]),
  );
}

/** Sends a packet to Amara Linde. */
export function send(
  contentPath: string,
  more: Partial<SendOrder & Place> = {},
): Promise<Sent | Refused> {
  return sendPacket({
    contentPath,
    now: SENT,
    person: 'amara',
    seed: SEED,
    deliver: () => Promise.resolve(),
    ...more,
  });
}

export async function sentRecord(
  contentPath: string,
  more: Partial<SendOrder & Place> = {},
): Promise<PacketRecord> {
  const sent = await send(contentPath, more);
  if (!sent.done) throw new Error(sent.why.join('\n'));
  return sent.record;
}

export type Unsigned = Omit<AnswerFile, 'signature'>;

export function secretOf(seed: Uint8Array): KeyObject {
  const { privateKey } = keyPairFrom(seed);
  return createPrivateKey({
    key: Buffer.from(privateKey, 'base64url'),
    format: 'der',
    type: 'pkcs8',
  });
}

export function decisionOn(
  { decides }: PacketRecord,
  card: string,
  part: Decision['part'],
  more: Partial<Decision> = {},
): Decision {
  const shown = decides.find((each) => each.card === card && each.part === part);
  if (!shown) throw new Error(`${card} ${part} was not sent`);
  return { card, part, digest: shown.digest, decision: 'approved', ...more };
}

export function unsigned(record: PacketRecord, decisions: readonly Decision[]): Unsigned {
  const { id, property, person } = record;
  return { format: 1, property, packet: id, person, decisions: [...decisions], remarks: [] };
}

export function signed(answer: Unsigned, seed = SEED): AnswerFile {
  const signature = sign(null, signedOctets(answer), secretOf(seed)).toString('base64url');
  return { ...answer, signature };
}

export function octets(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

/** The decision file of an answer, as a packet saves it. */
export function fileOf(answer: Unsigned, seed = SEED): Uint8Array {
  return octets(answerText(signed(answer, seed)));
}

export type { Instant };
