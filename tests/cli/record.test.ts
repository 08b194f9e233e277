import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import { afterEach, beforeEach, expect, it } from 'vitest';

import { instantOf } from '../../pipeline/model/index.js';
import type { PacketRecord } from '../../schema/index.js';
import {
  LAMP,
  QUAY,
  decisionOn,
  fileOf,
  placed,
  put,
  sentRecord,
  textsBelow,
  unsigned,
} from '../submission/ground.js';
import { runMain, type MainRun } from './run-main.js';

const SENT = instantOf('2027-03-20T10:00:00+00:00[Europe/London]');

let root: string;
let record: PacketRecord;
beforeEach(async () => {
  root = placed();
  record = await sentRecord(root, { now: SENT });
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
});

const run = (...args: string[]): Promise<MainRun> =>
  runMain([...args, '--content', root], join(root, '..'));
const answerFile = (): string => {
  const changes = [{ field: 'bio', text: 'A lamp that somebody lit is burning.' }];
  const path = join(root, '.answer.json');
  writeFileSync(
    path,
    fileOf(
      unsigned(record, [
        decisionOn(record, QUAY, 'copy'),
        decisionOn(record, LAMP, 'copy', { decision: 'approved with changes', changes }),
      ]),
    ),
  );
  return path;
};
const SAID = `INTERNAL

${QUAY} copy: approved
${LAMP} copy: approved with changes
  bio: A lamp that [-nobody-]{+somebody+} lit is burning.

`;

it('shows what it would do, does it, and does it once', async () => {
  const file = answerFile();
  const before = textsBelow(root);
  expect(await run('record', file, '--dry-run')).toEqual({
    code: 0,
    stdout: `${SAID}nothing was recorded: --dry-run\n`,
    stderr: '',
  });
  expect(textsBelow(root)).toEqual(before);
  expect(await run('record', file)).toEqual({ code: 0, stdout: `${SAID}recorded\n`, stderr: '' });
  expect(textsBelow(root)['one/cards/base/a2.md']).toContain('somebody lit');
  expect(await run('record', file)).toEqual({
    code: 1,
    stdout: '',
    stderr:
      'refused: nothing was recorded and no file was changed\n' +
      '  this decision file is in the ledger already: there is nothing to do\n',
  });
  expect((await run('ledger')).stdout).toMatch(/^2 entries, 1 packet: the chain is whole\n/);
});

it('says every reason for which it is refused', async () => {
  const file = join(root, '.answer.json');
  const answer = { ...unsigned(record, [decisionOn(record, QUAY, 'copy')]), person: 'tobit' };
  writeFileSync(file, fileOf(answer, new Uint8Array(32)));
  expect((await run('record', file)).stderr.split('\n')).toEqual([
    'refused: nothing was recorded and no file was changed',
    expect.stringMatching(/^ {2}this decision file names tobit, to whom this packet was not sent/),
    expect.stringMatching(/^ {2}the signature does not fit/),
    '',
  ]);
});

it('takes decisions that came by mail', async () => {
  const [mail, yes] = [join(root, '.mail.eml'), join(root, '.yes.yaml')];
  writeFileSync(mail, 'Yes.\n');
  writeFileSync(yes, `decisions:\n  - { card: ${QUAY}, part: web, decision: approved }\n`);
  const who = ['--by-hand', 'amara', '--evidence', mail, '--by', 'jonah', '--confirmed-by', 'sefa'];
  expect(await run('record', yes, ...who, '--received', '2027-03-22')).toEqual({
    code: 0,
    stdout: `INTERNAL\n\n${QUAY} web: approved\n\nrecorded\n`,
    stderr: '',
  });
  expect(await run('record', yes, ...who)).toMatchObject({
    code: 2,
    stderr: expect.stringContaining('--by-hand needs --evidence FILE'),
  });
});

it.each<[string, string[], string]>([
  ['no such file', ['record', 'nowhere.json'], 'nowhere.json cannot be read'],
  ['flags of another way', ['record', 'x.json', '--by', 'sefa'], 'cannot be read'],
])('cannot run: %s', async (_, args, said) => {
  expect(await run(...args)).toMatchObject({ code: 2, stderr: expect.stringContaining(said) });
});

it('says that flags of --by-hand do not belong to a decision file', async () => {
  expect(await run('record', answerFile(), '--by', 'sefa')).toMatchObject({
    code: 2,
    stderr: expect.stringContaining('belong to --by-hand'),
  });
});

it('withdraws a packet', async () => {
  const withdraw = ['ledger', 'withdraw', 'amara-1', '--by', 'sefa', '--why', 'Wrong set'];
  expect(await run(...withdraw)).toEqual({
    code: 0,
    stdout: 'amara-1 is withdrawn: no more decisions on it are taken\n',
    stderr: '',
  });
  expect(await run(...withdraw)).toMatchObject({
    code: 1,
    stderr: 'amara-1 was withdrawn already\n',
  });
});

it('finishes what a process left half written before anything is read', async () => {
  const ledger = textsBelow(root)['review/ledger.jsonl'] ?? '';
  put(root, 'review/ledger.jsonl', '');
  put(root, 'review/.ledger.jsonl.new', ledger);
  put(root, '.holdback-journal', 'ready\nreview/ledger.jsonl\n');
  expect((await run('ledger')).stdout).toMatch(/^1 entry, 1 packet: the chain is whole\n/);
  expect(textsBelow(root)).not.toHaveProperty('.holdback-journal');
});
