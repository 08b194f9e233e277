import { mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import { afterEach, beforeEach, describe, expect, it } from 'vitest';

import { sampleWith } from '../../pipeline/checks/index.js';
import {
  EMPTY_LEDGER,
  appended,
  headOf,
  ledgerText,
  packetDigest,
  type Ledger,
  type LedgerWords,
} from '../../pipeline/review/index.js';
import type { PacketRecord } from '../../schema/index.js';
import { placeContent, type Placed } from '../demo/copy.js';
import { runMain } from './run-main.js';

const AT = '2027-01-11T10:00:00+00:00[Europe/London]';
const KEY = 'one/base/a1';
const digest = (letter: string): string => letter.repeat(64);
const checked = (cut: string): LedgerWords => ({
  kind: 'checked',
  at: AT,
  card: KEY,
  cut,
  by: 'jonah',
});

const RECORD: PacketRecord = {
  format: 1,
  id: 'p-1',
  property: 'lake',
  person: 'amara',
  clearance: 'last',
  round: 1,
  made: AT,
  expires: AT,
  publicKey: 'A'.repeat(43),
  ledger: 'none',
  decides: [
    {
      card: KEY,
      part: 'copy',
      digest: digest('a'),
      seen: { openings: [], inHands: 'never', shows: [] },
    },
  ],
};
const ROUND: readonly LedgerWords[] = [
  { kind: 'submitted', at: AT, packet: 'p-1', person: 'amara', record: packetDigest(RECORD) },
  {
    kind: 'decided',
    at: AT,
    answer: {
      format: 1,
      property: 'lake',
      packet: 'p-1',
      person: 'amara',
      decisions: [
        {
          card: KEY,
          part: 'copy',
          digest: digest('a'),
          decision: 'revise and resubmit',
          remark: 'She is no pilot.',
        },
      ],
      remarks: [],
      signature: 'A'.repeat(86),
    },
    approves: [],
  },
];

let placed: Placed;
beforeEach(async () => {
  placed = await placeContent(sampleWith({}));
});
afterEach(async () => {
  await placed[Symbol.asyncDispose]();
});

function keep(ledger: Ledger, record: PacketRecord | null = null): void {
  const review = join(placed.content, 'review');
  mkdirSync(join(review, 'packets'), { recursive: true });
  writeFileSync(join(review, 'ledger.jsonl'), ledgerText(ledger));
  if (record) writeFileSync(join(review, 'packets', 'p-1.json'), JSON.stringify(record));
}

const ledger = (...more: string[]) => runMain(['ledger', ...more], placed.root);
const kept = (): string => readFileSync(join(placed.content, 'review', 'ledger.jsonl'), 'utf8');

describe('ledger', () => {
  it('says that the chain is whole, and its head', async () => {
    expect(await ledger()).toMatchObject({
      code: 0,
      stdout: '0 entries, 0 packets: the chain is whole\n',
    });
    const one = appended(EMPTY_LEDGER, [checked('cut-1')]);
    keep(one);
    expect((await ledger()).stdout).toBe(
      `1 entry, 0 packets: the chain is whole\nits head is ${headOf(one)}\n`,
    );
  });

  it('says at which line it breaks', async () => {
    keep(appended(EMPTY_LEDGER, [checked('cut-1'), checked('cut-2')]));
    writeFileSync(join(placed.content, 'review', 'ledger.jsonl'), kept().replace('cut-1', 'cut-9'));
    expect(await ledger()).toEqual({
      code: 1,
      stdout: '',
      stderr:
        'review/ledger.jsonl:2  it does not hold the digest of the line before: one of the two ' +
        'was changed, or one is missing\n',
    });
  });

  it('notices a cut end by the head that a record kept', async () => {
    const whole = appended(EMPTY_LEDGER, [checked('cut-1'), checked('cut-2')]);
    const cut = appended(EMPTY_LEDGER, [checked('cut-1')]);
    keep(cut, { ...RECORD, ledger: headOf(whole) });
    const run = await ledger();
    expect(run).toMatchObject({ code: 1, stdout: '' });
    expect(run.stderr).toMatch(/^review\/packets\/p-1\.json {2}the ledger that this record saw/);
    keep(whole, { ...RECORD, ledger: headOf(cut) });
    expect((await ledger()).code).toBe(0);
  });

  it('shows the history of a card', async () => {
    keep(appended(EMPTY_LEDGER, [...ROUND, checked('cut-1')]), RECORD);
    expect((await ledger('show', KEY)).stdout).toBe(`INTERNAL

Approval history of ${KEY}
  ${AT}  amara  submitted copy in p-1
  ${AT}  amara  copy aaaaaa: revise and resubmit
    She is no pilot.
  ${AT}  jonah  read against cut-1
`);
    expect((await ledger('show', 'one/base/a2')).stdout).toContain('  nothing yet\n');
  });

  it('takes in another branch, and changes nothing of its own', async () => {
    const [mine, other] = [
      ['cut-1', 'cut-2'],
      ['cut-1', 'cut-3'],
    ].map((cuts) => appended(EMPTY_LEDGER, cuts.map(checked)));
    keep(mine ?? EMPTY_LEDGER);
    const before = kept();
    writeFileSync(join(placed.root, 'other.jsonl'), ledgerText(other ?? EMPTY_LEDGER));
    expect(await ledger('merge', 'other.jsonl')).toMatchObject({
      code: 0,
      stdout: '1 entry added\n',
    });
    expect(kept().startsWith(before)).toBe(true);
    expect(await ledger('merge', 'other.jsonl')).toMatchObject({ stdout: '0 entries added\n' });
    expect((await ledger()).stdout).toMatch(/^3 entries/);
    expect(readdirSync(join(placed.content, 'review'))).toEqual(['ledger.jsonl', 'packets']);
  });

  it('refuses a broken branch whole', async () => {
    keep(appended(EMPTY_LEDGER, [checked('cut-1')]));
    const before = kept();
    writeFileSync(join(placed.root, 'other.jsonl'), `${before}{"kind":"dreamt"}\n`);
    expect(await ledger('merge', 'other.jsonl')).toEqual({
      code: 1,
      stdout: '',
      stderr: 'other.jsonl:2  this is no entry of a ledger\n',
    });
    expect(kept()).toBe(before);
    expect((await ledger('merge', 'nowhere.jsonl')).code).toBe(2);
  });
});
