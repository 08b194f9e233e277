import { rmSync } from 'node:fs';

import { afterEach, beforeEach, expect, it } from 'vitest';

import { diskFolder, readReview } from '../../pipeline/read/index.js';
import { decisionsOf, sha256 } from '../../pipeline/review/index.js';
import { recordByHand, withdrawPacket, type HandOrder } from '../../pipeline/submission/index.js';
import type { PacketRecord } from '../../schema/index.js';
import {
  CHART,
  NOW,
  QUAY,
  QUAY_FILE,
  decisionOn,
  octets,
  placed,
  put,
  sentRecord,
  textsBelow,
} from './ground.js';

const MAIL = octets('From: amara\n\nYes to the quay.\n');
const YES = `decisions:\n  - { card: ${QUAY}, part: copy, decision: approved, remark: Lovely }\n`;

let root: string;
let record: PacketRecord;
beforeEach(async () => {
  root = placed();
  record = await sentRecord(root);
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
});

const byHand = (text: string, more: Partial<HandOrder> = {}) =>
  recordByHand({
    contentPath: root,
    now: NOW,
    file: 'yes.yaml',
    octets: octets(text),
    person: 'amara',
    by: 'jonah',
    confirmedBy: 'sefa',
    received: '2027-01-12',
    evidence: MAIL,
    dryRun: false,
    ...more,
  });

it('goes into the ledger with who says so, and with the text and schedule that were sent', async () => {
  const sent = record.decides.find(({ card, part }) => card === QUAY && part === 'copy');
  expect(await byHand(YES)).toEqual({
    done: true,
    lines: [`${QUAY} copy: approved`, '  remark: Lovely'],
  });
  const { ledger, packets, faults } = readReview(diskFolder(root));
  expect(faults).toEqual([]);
  expect(ledger.entries.at(-1)).toEqual({
    kind: 'by-hand',
    previous: ledger.digests[0],
    at: '2027-01-18T10:00:00+00:00[Europe/London]',
    person: 'amara',
    by: 'jonah',
    confirmedBy: 'sefa',
    received: '2027-01-12',
    evidence: sha256(MAIL),
    decisions: [
      {
        card: QUAY,
        part: 'copy',
        digest: sent?.digest,
        decision: 'approved',
        remark: 'Lovely',
        seen: sent?.seen,
      },
    ],
  });
  expect(decisionsOf(ledger, packets)).toMatchObject([{ person: 'amara', digest: sent?.digest }]);
  expect(Object.keys(textsBelow(root))).toContain(`review/approved/${sent?.digest ?? ''}.json`);
});

it('is about the text that was sent, however it reads now', async () => {
  put(root, QUAY_FILE, (textsBelow(root)[QUAY_FILE] ?? '').replace('the knee', 'the hip'));
  const version = decisionOn(record, QUAY, 'copy').digest.slice(0, 6);
  expect(await byHand(YES)).toEqual({
    done: true,
    lines: [
      `${QUAY} copy: approved`,
      '  remark: Lovely',
      `  the text was changed since: kept as a decision on copy version ${version}`,
    ],
  });
});

const typed = (rest: string, card = QUAY): string => `decisions:\n  - { card: ${card}, ${rest} }\n`;

it.each<[string, string, Partial<HandOrder>, string]>([
  ['who decided entered it', YES, { by: 'amara' }, 'must be three people'],
  ['who entered it confirms it', YES, { confirmedBy: 'jonah' }, 'must be three people'],
  ['who confirms is outside', YES, { confirmedBy: 'tobit' }, 'tobit is not of the house'],
  ['who entered it is unknown', YES, { by: 'nora' }, 'people.yaml knows no nora'],
  ['a day to come', YES, { received: '2027-01-19' }, '--received 2027-01-19 is still to come'],
  ['no day', YES, { received: '2027-02-30' }, 'it is a day such as 2027-01-12'],
  ['never sent', typed('part: copy, decision: approved', CHART), {}, 'it was never sent to amara'],
  ['never sent to them', YES, { person: 'tobit' }, 'it was never sent to tobit'],
  [
    'changes',
    typed('part: copy, decision: approved with changes'),
    {},
    'changes cannot be recorded',
  ],
  [
    'revise without words',
    typed('part: copy, decision: revise and resubmit'),
    {},
    'needs a remark',
  ],
  ['on hold with nobody', typed('part: copy, decision: on hold'), {}, 'needs `with`'],
  ['decided twice', YES + YES.replace('decisions:\n', ''), {}, 'it is decided on twice'],
  ['an unknown word', typed('part: copy, decision: fine'), {}, ''],
  ['an unknown key', typed('part: copy, decision: approved, digest: abc'), {}, ''],
  ['no YAML', '{', {}, ''],
])('is refused, and nothing is written: %s', async (_, text, more, why) => {
  const before = textsBelow(root);
  const outcome = await byHand(text, more);
  expect(outcome.done).toBe(false);
  expect(outcome.done ? [] : outcome.why).toContainEqual(expect.stringContaining(why));
  expect(textsBelow(root)).toEqual(before);
});

it('is refused where the property does not allow it', async () => {
  const property = textsBelow(root)['property.yaml'] ?? '';
  for (const instead of ['byHand: refused', 'holidays: []']) {
    put(root, 'property.yaml', property.replace('byHand: allowed', instead));
    const outcome = await byHand(YES);
    expect(outcome.done ? [] : outcome.why).toEqual([
      'this property takes no decisions by hand: `review: { byHand: allowed }` in property.yaml would allow it',
    ]);
  }
});

it('is refused for a packet that was withdrawn', async () => {
  const order = { contentPath: root, now: NOW, packet: 'amara-1', by: 'sefa', why: 'Wrong set' };
  expect(await withdrawPacket(order)).toEqual({ done: true });
  const outcome = await byHand(YES);
  expect(outcome.done ? '' : outcome.why[0]).toContain('it was never sent to amara');
});
