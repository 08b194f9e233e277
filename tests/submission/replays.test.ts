import { rmSync } from 'node:fs';

import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { recordAnswer } from '../../pipeline/submission/index.js';
import type { Decision, PacketRecord } from '../../schema/index.js';
import {
  LAMP,
  NOW,
  QUAY,
  decisionOn,
  fileOf,
  placed,
  sentRecord,
  unsigned,
  type Unsigned,
} from './ground.js';
import { whyRefused } from './refusals.js';

let root: string;
let record: PacketRecord;
beforeAll(async () => {
  root = placed();
  record = await sentRecord(root);
});
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

const on = (card: string, part: Decision['part'], more: Partial<Decision> = {}): Decision =>
  decisionOn(record, card, part, more);

describe('replayed: refused, and no byte is changed', () => {
  const REPLAYED = /^this decision file is in the ledger already: there is nothing to do$/;

  it.each<[string, () => Unsigned]>([
    ['at once', () => unsigned(record, [on(QUAY, 'copy'), on(LAMP, 'copy')])],
    ['one decision', () => unsigned(record, [on(QUAY, 'image')])],
    [
      'no decision but a remark',
      () => ({ ...unsigned(record, []), remarks: [{ about: 'all', text: 'Hm' }] }),
    ],
    ['a refusal', () => unsigned(record, [on(LAMP, 'web', { decision: 'rejected' })])],
  ])('%s', async (_, answer) => {
    const order = { contentPath: root, now: NOW, octets: fileOf(answer()), dryRun: false };
    expect(await recordAnswer(order)).toMatchObject({ done: true });
    expect(await whyRefused(root, fileOf(answer()), NOW)).toEqual([
      expect.stringMatching(REPLAYED),
    ]);
    const later = unsigned(record, [on(LAMP, 'layout', { remark: 'Later' })]);
    await recordAnswer({ ...order, octets: fileOf(later) });
    expect(await whyRefused(root, fileOf(answer()), NOW)).toEqual([
      expect.stringMatching(REPLAYED),
    ]);
  });
});

it('a file that is far too large is not read', async () => {
  expect(await whyRefused(root, new Uint8Array(5_000_001).fill(0x20), NOW)).toEqual([
    'this is no decision file: it is larger than 5 MB',
  ]);
});
