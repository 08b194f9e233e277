import { rmSync } from 'node:fs';

import { afterEach, beforeEach, describe, expect, it } from 'vitest';

import { diskFolder, readReview } from '../../pipeline/read/index.js';
import { packetDigest, isSigned, signedOctets } from '../../pipeline/review/index.js';
import {
  keyPairFrom,
  recordAnswer,
  sendPacket,
  withdrawPacket,
  type SendOrder,
  type Sending,
} from '../../pipeline/submission/index.js';
import type { PacketRecord } from '../../schema/index.js';
import {
  LAMP,
  NOW,
  QUAY,
  QUAY_FILE,
  SEED,
  SENT,
  decisionOn,
  fileOf,
  placed,
  put,
  send,
  sentRecord,
  signed,
  textsBelow,
  unsigned,
} from './ground.js';

let root: string;
beforeEach(() => {
  root = placed({ 'one/sales/sheet.md': SHEET });
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
});

const SHEET = `---
kind: sell-sheet
goes: "2026-12-01T10:00:00+00:00[Europe/London]"
spoiler: open
---
Cards of the lake.
`;

async function made(more: Partial<SendOrder> = {}): Promise<Sending> {
  const made: Sending[] = [];
  const outcome = await send(root, {
    ...more,
    deliver: (own) => {
      made.push(own);
      return Promise.resolve();
    },
  });
  const [sending] = made;
  if (!outcome.done || !sending) throw new Error('nothing was sent');
  return sending;
}

const partsOf = ({ decides }: PacketRecord): string[] =>
  decides.map(({ card, part }) => `${card} ${part}`);

/** Everything of whoever may know everything. */
const ALL = [QUAY, LAMP]
  .flatMap((card) => ['copy', 'image', 'layout', 'web'].map((part) => `${card} ${part}`))
  .concat('one/sales/sheet sales');

describe('a packet', () => {
  it('asks for what is handed in, shown whole, and for this role to approve', async () => {
    const record = await sentRecord(root);
    expect(partsOf(record)).toEqual(ALL);
    expect({ ...record, decides: [] }).toEqual({
      format: 1,
      id: 'amara-1',
      property: 'lake',
      person: 'amara',
      clearance: 'last',
      round: 1,
      made: '2027-01-11T10:00:00+00:00[Europe/London]',
      expires: '2027-03-12T10:00:00+00:00[Europe/London]',
      publicKey: keyPairFrom(SEED).publicKey,
      ledger: 'none',
      decides: [],
    });
    const { ledger, packets, faults } = readReview(diskFolder(root));
    expect(faults).toEqual([]);
    expect(packets.get('amara-1')).toEqual(record);
    expect(ledger.entries).toMatchObject([
      { kind: 'submitted', packet: 'amara-1', person: 'amara', record: packetDigest(record) },
    ]);
    const kept = Object.keys(textsBelow(root)).filter((path) => path.includes('/submitted/'));
    expect(kept).toEqual(
      record.decides.map(({ digest }) => `review/submitted/${digest}.json`).sort(),
    );
  });

  it('never asks about, or names by a digest, what is not shown whole', async () => {
    const sending = await made({ person: 'tobit' });
    const record = readReview(diskFolder(root)).packets.get('tobit-1');
    // Words of the quay are held from him: its copy and web are not for him to decide on.
    expect(record && partsOf(record)).toEqual(
      ALL.filter((part) => part !== `${QUAY} copy` && part !== `${QUAY} web`),
    );
    const whole = await sentRecord(root);
    const said = JSON.stringify(sending.submission);
    for (const part of ['copy', 'web'] as const) {
      expect(said).not.toContain(decisionOn(whole, QUAY, part).digest);
    }
    expect(said).not.toContain('rows there');
    expect(JSON.stringify(sending.view)).not.toContain('rows there');
  });

  it('can be of some parts, of one set and of one subset', async () => {
    expect(partsOf(await sentRecord(root, { parts: ['copy', 'sales'] }))).toEqual([
      `${QUAY} copy`,
      `${LAMP} copy`,
      'one/sales/sheet sales',
    ]);
    expect(partsOf(await sentRecord(root, { set: 'one', subset: 'base' }))).toEqual(
      ALL.slice(0, -1),
    );
  });

  it.each<[string, Partial<SendOrder>, string]>([
    ['nobody', { person: 'nora' }, 'people.yaml knows no nora'],
    ['a role that is not asked', { person: 'jonah' }, 'there is nothing that jonah can decide on'],
    ['a set that is not there', { set: 'two' }, 'there is nothing that amara can decide on'],
    ['what is not handed in', { subset: 'extra' }, 'there is nothing that amara can decide on'],
    ['a day that is past', { expires: SENT }, '--expires is past'],
  ])('is refused for %s, and nothing is written', async (_, more, why) => {
    const before = textsBelow(root);
    const outcome = await send(root, more);
    expect(outcome.done ? [] : outcome.why).toEqual([expect.stringContaining(why)]);
    expect(textsBelow(root)).toEqual(before);
  });

  it('is refused where nobody is asked, and where the review folder is in doubt', async () => {
    put(root, 'review/ledger.jsonl', '{"previous":"none"}\n');
    expect(await send(root)).toEqual({
      done: false,
      why: ['what is kept in review/ cannot be trusted: `holdback ledger` says why'],
    });
    rmSync(`${root}/review`, { recursive: true });
    const property = textsBelow(root)['property.yaml'] ?? '';
    put(root, 'property.yaml', property.replace(/approvals:\n.*\n/, 'approvals: none\n'));
    const outcome = await send(root);
    expect(outcome.done ? '' : outcome.why[0]).toMatch(/^the property asks nobody to approve/);
  });

  it('signs with its own key, whose private half is in what is sent alone', async () => {
    const { submission } = await made();
    const record = readReview(diskFolder(root)).packets.get('amara-1');
    if (!record) throw new Error('there is no record');
    const answer = signed(unsigned(record, [decisionOn(record, QUAY, 'copy')]));
    expect(isSigned(signedOctets(answer), answer.signature, record.publicKey)).toBe(true);
    expect(submission.privateKey).toBe(keyPairFrom(SEED).privateKey);
    expect(Object.values(textsBelow(root)).join('')).not.toContain(submission.privateKey);
  });
});

describe('a second round', () => {
  const remark = 'The knee, really?';

  beforeEach(async () => {
    const record = await sentRecord(root);
    const octets = fileOf(
      unsigned(record, [
        decisionOn(record, QUAY, 'copy', { decision: 'revise and resubmit', remark }),
        decisionOn(record, LAMP, 'copy'),
      ]),
    );
    await recordAnswer({ contentPath: root, now: NOW, octets, dryRun: false });
    const quay = textsBelow(root)[QUAY_FILE] ?? '';
    put(root, QUAY_FILE, quay.replace('the knee', 'the hip'));
  });

  it('shows what was decided before, and what the text was then', async () => {
    const { submission } = await made({ now: NOW });
    const [quay, lamp] = submission.texts;
    expect(submission.round).toBe(2);
    expect(quay?.was).toEqual([
      { field: 'name', text: 'The Quay' },
      {
        field: 'bio',
        text: 'The quay stands in water to the knee. Nobody rows there by day.',
      },
      { field: 'facts.Berth', text: 'Lock nine' },
      { field: 'credits', text: '' },
      { field: 'signers', text: '' },
    ]);
    const last = (text: typeof quay) => text?.parts.find(({ part }) => part === 'copy')?.last;
    expect(last(quay)).toEqual({ verdict: 'revise and resubmit', isCurrent: false });
    expect(last(lamp)).toEqual({ verdict: 'approved', isCurrent: true });
    expect(quay?.earlier).toMatchObject([
      { who: 'Amara Linde', what: 'submitted copy, image, layout, web in amara-1', more: [] },
      { who: 'Amara Linde', what: expect.stringContaining('revise'), more: [remark] },
    ]);
  });

  it('tells nobody who may not know everything what others said', async () => {
    const { submission } = await made({ now: NOW, person: 'tobit' });
    expect(submission.texts.map(({ earlier }) => earlier).flat()).toEqual([]);
    expect(JSON.stringify(submission)).not.toContain(remark);
  });
});

describe('what `check` says', () => {
  it('is told in full only to whoever may know everything', async () => {
    const lamp = textsBelow(root)['one/cards/base/a2.md'] ?? '';
    put(root, 'one/cards/base/a2.md', lamp.replace('nobody', 'Ysolde Marrack \u200b'));
    put(
      root,
      'names.yaml',
      'names:\n  - { name: Ysolde Marrack, kind: character, level: last, publicName: The voice }\n',
    );
    const findings = async (person: string): Promise<readonly string[]> =>
      (await made({ person })).submission.texts.find(({ key }) => key === LAMP)?.findings ?? [];
    const [all, some] = [await findings('amara'), await findings('tobit')];
    expect(all.filter((line) => line.includes('Ysolde Marrack'))).toHaveLength(1);
    expect(some).toHaveLength(1);
    expect(all).toEqual(expect.arrayContaining([...some]));
    expect(some.join('')).not.toContain('Ysolde');
  });
});

describe('a packet that is withdrawn', () => {
  const withdrawn = (more: object = {}) =>
    withdrawPacket({
      contentPath: root,
      now: NOW,
      packet: 'amara-1',
      by: 'sefa',
      why: 'Wrong set',
      ...more,
    });

  it('takes no more decisions', async () => {
    const record = await sentRecord(root);
    expect(await withdrawn()).toEqual({ done: true });
    const octets = fileOf(unsigned(record, [decisionOn(record, QUAY, 'copy')]));
    expect(await recordAnswer({ contentPath: root, now: NOW, octets, dryRun: false })).toEqual({
      done: false,
      why: ['this packet was withdrawn: ask for decisions on the one that was sent instead'],
    });
  });

  it.each<[string, object, string]>([
    ['one that was never sent', { packet: 'amara-9' }, 'no packet amara-9 was sent'],
    ['by nobody', { by: 'nora' }, 'people.yaml knows no nora'],
    ['by somebody outside', { by: 'amara' }, 'amara is not of the house: --by names who is'],
    ['without a reason', { why: ' ' }, '--why says nothing: say why it is withdrawn'],
  ])('is not withdrawn: %s', async (_, more, why) => {
    await sentRecord(root);
    const before = textsBelow(root);
    expect(await withdrawn(more)).toEqual({ done: false, why: [why] });
    expect(textsBelow(root)).toEqual(before);
  });
});

it('a ledger that is locked is not written', async () => {
  const { takeLock, realDisk } = await import('../../pipeline/write/index.js');
  const other = { pid: 9, host: 'dock', runs: () => true };
  const lock = takeLock(realDisk, `${root}/review/ledger.jsonl`, other, 0);
  expect(lock.free).toBe(true);
  const outcome = await sendPacket({
    contentPath: root,
    now: SENT,
    person: 'amara',
    seed: SEED,
    deliver: () => Promise.reject(new Error('it was sent')),
    asker: { pid: 10, host: 'dock', runs: () => true },
  });
  expect(outcome.done ? '' : outcome.why[0]).toMatch(
    /^the ledger is being written by somebody else/,
  );
});
