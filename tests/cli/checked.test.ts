import { rmSync } from 'node:fs';
import { join } from 'node:path';

import { afterEach, beforeEach, expect, it } from 'vitest';

import { placed, textsBelow } from '../submission/ground.js';
import { PROPERTY_WITH_CUTS, PEOPLE_TOO, LAMP_READ } from '../submission/checked-ground.js';
import { runMain, type MainRun } from './run-main.js';

let root: string;
beforeEach(() => {
  root = placed({ ...PROPERTY_WITH_CUTS, ...PEOPLE_TOO, ...LAMP_READ });
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
});

const run = (...args: string[]): Promise<MainRun> =>
  runMain([...args, '--content', root], join(root, '..'));
const checked = (...args: string[]): Promise<MainRun> => run('checked', ...args);

it('stamps cards, says it again without writing, and agrees with ledger and status', async () => {
  const before = textsBelow(root);
  expect(await run('status', '--cut')).toMatchObject({
    stdout: expect.stringContaining('one/base/a1') as unknown,
  });
  expect(await checked('one/base/a1', '2', '--cut', 'cut-2', '--by', 'jonah')).toEqual({
    code: 0,
    stdout: `INTERNAL

one/base/a1: read against cut-2, before against none
one/base/a2: read against cut-2, before against cut-1

recorded
`,
    stderr: '',
  });
  const after = textsBelow(root);
  const { 'review/ledger.jsonl': ledger = '', ...rest } = after;
  expect(rest).toEqual({
    ...before,
    'one/cards/base/a1.md': (before['one/cards/base/a1.md'] ?? '').replace(
      "'Lock nine' }\n",
      "'Lock nine' }\ncheckedAgainst: cut-2\n",
    ),
    'one/cards/base/a2.md': (before['one/cards/base/a2.md'] ?? '').replace('cut-1', 'cut-2'),
  });
  expect(
    ledger
      .trim()
      .split('\n')
      .map((line): unknown => JSON.parse(line)),
  ).toEqual(
    ['one/base/a1', 'one/base/a2'].map((card) => ({
      previous: expect.any(String) as unknown,
      at: '2027-03-30T12:00:00+01:00[Europe/London]',
      kind: 'checked',
      card,
      cut: 'cut-2',
      by: 'jonah',
    })),
  );
  expect((await run('ledger')).stdout).toMatch(/^2 entries, 0 packets: the chain is whole\n/);
  expect((await run('ledger', 'show', 'one/base/a2')).stdout).toBe(
    'INTERNAL\n\nApproval history of one/base/a2\n  2027-03-30T12:00:00+01:00[Europe/London]  jonah  read against cut-2\n',
  );
  const { stdout } = await run('status', '--cut');
  expect(stdout).toContain('one/extra/b1');
  expect(stdout).not.toContain('one/base/');
  expect(await checked('base/a1', 'base/a1', '--cut', 'cut-2', '--by', 'jonah')).toEqual({
    code: 0,
    stdout: `INTERNAL

one/base/a1: was read against cut-2 already

nothing was recorded: there is nothing to do
`,
    stderr: '',
  });
  expect(textsBelow(root)).toEqual(after);
});

it('takes an older cut of a card that was read against nothing later, and says so', async () => {
  expect(await checked('X-1', '--cut', 'cut-1', '--by', 'sefa')).toEqual({
    code: 0,
    stdout: `INTERNAL

one/extra/b1: read against cut-1, before against none
cut-1 is not the current cut: cut-2 came in after it

recorded
`,
    stderr: '',
  });
});

it('says every reason for which it is refused, and writes nothing', async () => {
  const before = textsBelow(root);
  expect(await checked('one/base/a9', 'base/a1', 'X-1', '--cut', 'cut-3', '--by', 'jona')).toEqual({
    code: 1,
    stdout: '',
    stderr: `refused: nothing was recorded and no file was changed
  property.yaml knows no cut cut-3: the nearest is cut-2
  people.yaml knows no jona: the nearest is jonah
  there is no card one/base/a9: the nearest is one/base/a1
`,
  });
  expect(await checked('base/a1', '--cut', 'cut-2', '--by', 'wilf')).toEqual({
    code: 1,
    stdout: '',
    stderr: `refused: nothing was recorded and no file was changed
  one/base/a1: wilf, who is cleared for open, is not told all of its copy and cannot have read it: name with --by who has
`,
  });
  expect(textsBelow(root)).toEqual(before);
});

it('cannot run without saying against which cut, and by whom', async () => {
  expect(await checked('base/a1', '--by', 'jonah')).toMatchObject({ code: 2 });
  expect(await checked('base/a1', '--cut', 'cut-2')).toMatchObject({ code: 2 });
  expect(await checked('--cut', 'cut-2', '--by', 'jonah')).toMatchObject({ code: 2 });
});
