import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

import { describe, expect, test } from 'vitest';

import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import { stubIds } from '../../pipeline/mend/stub-ids.js';
import type { CheckReport } from '../../schema/index.js';
import { demoFiles, placeContent } from '../demo/copy.js';
import { runMain } from './run-main.js';

const PLAN = String(sampleWith({}).get('one/plan.yaml'));

/** Six inserts planned and one written, in a set that is being written. */
const SIX: Files = {
  'one/plan.yaml': PLAN.replace('stage: locked', 'stage: writing')
    .replace('from: 1, to: 1 }', 'from: 1, to: 6 }, spoiler: later')
    .replace('inserts: 1', 'inserts: 6')
    .replace('is: 3', 'is: 8'),
  'one/cards/extra/b1.md':
    '---\nnumber: X-1\nname: The Chart\nspoiler: later\n---\nInk, and a thumbprint.\n',
};

async function made(args: string, over: Files = {}) {
  await using placed = await placeContent(new Map(sampleWith({ ...SIX, ...over })));
  const folder = join(placed.content, 'one/cards/extra');
  const before = new Set(readdirSync(folder));
  const run = await runMain(['new', 'cards', ...args.split(' '), '--set', 'one'], placed.root);
  const added = readdirSync(folder).filter((name) => !before.has(name));
  const texts = Object.fromEntries(
    added.map((name) => [name, readFileSync(join(folder, name), 'utf8')]),
  );
  const checked = await runMain(['check', '--format', 'json'], placed.root);
  const report: CheckReport = JSON.parse(checked.stdout);
  return { run, texts, report };
}

describe('new cards', () => {
  test('makes a card for each number that has none, and check asks for what they lack alone', async () => {
    const { run, texts, report } = await made('extra --writer jonah');
    expect(run).toEqual({
      code: 0,
      stdout:
        [2, 3, 4, 5, 6]
          .map((at) => `one/cards/extra/b${String(at)}.md  X-${String(at)}\n`)
          .join('') + '5 cards written\n',
      stderr: '',
    });
    expect(texts['b2.md']).toBe(
      '---\nnumber: "X-2"\nname: To be named\nspoiler: later\nstate: draft\nwriter: jonah\n---\n',
    );
    expect(
      report.findings.map(({ rule, severity, card, message }) => [rule, severity, card, message]),
    ).toEqual(
      [2, 3, 4, 5, 6].flatMap((at) => [
        ['copy-empty', 'warning', `extra/b${String(at)}`, 'this card has no name yet'],
        ['copy-empty', 'warning', `extra/b${String(at)}`, 'this card has no bio'],
      ]),
    );
  });

  test('a locked set does not go to press with a card that nobody named', async () => {
    const locked = {
      'one/plan.yaml': String(SIX['one/plan.yaml']).replace('stage: writing', 'stage: locked'),
    };
    const { report } = await made('extra', locked);
    expect(report.counts.errors).toBe(10);
  });

  test('makes those of a list alone, and no card twice', async () => {
    const { run, texts } = await made('extra --numbers 1-3,X-5');
    expect(run.code).toBe(0);
    expect(Object.keys(texts)).toEqual(['b2.md', 'b3.md', 'b5.md']);
  });

  test.each([
    ['extra --numbers X-2-X-3', ['b2.md', 'b3.md']],
    ['extra --numbers 2–3', ['b2.md', 'b3.md']],
    ['extra --numbers X-4', ['b4.md']],
  ])('%s', async (args, files) => {
    expect(Object.keys((await made(args)).texts)).toEqual(files);
  });

  test('--dry-run writes nothing', async () => {
    const { run, texts } = await made('extra --numbers 2 --dry-run');
    expect(run.stdout).toBe('one/cards/extra/b2.md  X-2\n1 card; nothing is written: --dry-run\n');
    expect(texts).toEqual({});
  });

  test('says so where no card is missing', async () => {
    const { run } = await made('base');
    expect(run).toMatchObject({ code: 0, stdout: 'each of these numbers of base has a card\n' });
  });

  test('says everything that is wrong at once, and writes nothing', async () => {
    const { run, texts } = await made('extra --numbers 1,9,3-2,,4 --writer jona');
    expect(run).toEqual({
      code: 1,
      stdout: '',
      stderr: `refused: nothing was written
  there is no person jona; did you mean jonah?
  9 is no number that the plan gives to \`extra\`: it gives X-1 to X-6
  3-2 is no number that the plan gives to \`extra\`: it gives X-1 to X-6
  an empty part is no number that the plan gives to \`extra\`: it gives X-1 to X-6
  extra/b1 has the number X-1
`,
    });
    expect(texts).toEqual({});
  });

  test.each([
    ['extra', { 'one/cards/extra/b2.md': 'x' }, 'a card of `extra` cannot be read'],
    ['exta', {}, 'did you mean extra?'],
    [
      'extra',
      { 'one/plan.yaml': PLAN.replace('{ prefix: X-, from: 1, to: 1 }', 'none') },
      '`extra` has no numbers',
    ],
  ])('refuses %s: %j', async (args, files, why) => {
    const { run, texts } = await made(args, files);
    expect(run).toMatchObject({ code: 1, stderr: expect.stringContaining(why) });
    expect(texts).toEqual({});
  });

  test('never gives an identity again that decisions were made on', async () => {
    const files = demoFiles({ art: false, approvals: true });
    files.delete('high-water/cards/crew/c005.md');
    files.delete('high-water/cards/crew/c020.md');
    await using placed = await placeContent(files);
    const run = await runMain(['new', 'cards', 'crew', '--set', 'high-water'], placed.root);
    expect(run.stdout).toBe(
      'high-water/cards/crew/c049.md  5\nhigh-water/cards/crew/c050.md  20\n2 cards written\n',
    );
    expect(existsSync(join(placed.content, 'high-water/cards/crew/c005.md'))).toBe(false);
  });

  test('`new` by itself says what there is', async () => {
    await using placed = await placeContent(new Map());
    const run = await runMain(['new'], placed.root);
    expect(run.stdout + run.stderr).toContain('cards');
    expect(run.code).toBe(2);
  });
});

describe('the ids of new cards', () => {
  test.each([
    [
      'after the numbers',
      [
        ['c001', 1],
        ['c003', 3],
      ],
      ['c001', 'c003'],
      [2, 4],
      ['c002', 'c004'],
    ],
    [
      'after one another, where they follow no number',
      [
        ['au01', 1],
        ['au03', 12],
      ],
      ['au01', 'au03'],
      [5, 6],
      ['au04', 'au05'],
    ],
    [
      'of codes',
      [
        ['au01', null],
        ['au02', null],
      ],
      ['au01', 'au02'],
      [null, null],
      ['au03', 'au04'],
    ],
    [
      'beside one that was taken',
      [['c001', 1]],
      ['c001', 'c002', 'c009'],
      [2, 3],
      ['c010', 'c003'],
    ],
    ['of a subset without cards', [], [], [1, 12], ['c001', 'c012']],
    [
      'beside one of another manner',
      [
        ['c01', 1],
        ['c02', 2],
        ['zeta', 3],
      ],
      ['c01', 'c02', 'zeta'],
      [3],
      ['c03'],
    ],
  ] as const)('%s', (_, known, used, wanted, expected) => {
    expect(stubIds('crew', known, used, wanted)).toEqual(expected);
  });
});
