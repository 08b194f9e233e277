import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import { describe, expect, test } from 'vitest';

import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import { demoFiles, placeContent } from '../demo/copy.js';
import { runMain, type MainRun } from './run-main.js';

const cardFile = (number: string, name: string, more = ''): string =>
  `---\nnumber: ${number}\nname: ${name}\nspoiler: open\n${more}---\nThe ${name} of the lake.\n`;

/** Four inserts: one pulled, one with a variation, numbers in each way of quoting. */
const SET: Files = {
  'one/plan.yaml': `id: one
title: One
spoiler: open
stage: locked
street: "2027-06-05T09:00:00+01:00[Europe/London]"
subsets:
  - { id: base, title: Base, group: base, numbers: { from: 1, to: 2 } }
  - { id: extra, title: Extra, group: inserts, numbers: { prefix: X-, from: 1, to: 5 } }
  - { id: signed, title: Signed, group: signed, numbers: { codes: [S-AA, S-BB] } }
  - { id: loose, title: Loose, group: loose, numbers: none }
`,
  'one/cards/extra/b1.md': cardFile('"X-1"  # as printed', 'Delta', 'story: 1/9\n'),
  'one/cards/extra/b1v.md': cardFile(
    'X-1',
    'Delta',
    'variation: { of: extra/b1, letter: b, tell: Wet }\n',
  ),
  'one/cards/extra/b2.md': cardFile("'X-2'", 'Alder', 'issued: "no"\n'),
  'one/cards/extra/b3.md': cardFile('X-3', 'Brook', 'story: 1/1\n'),
  'one/cards/extra/b4.md': cardFile(
    'X-4',
    'Cove',
    'story: 1/4\nremark: see X-1 and LX-1 and X-12\n',
  ),
  'one/cards/signed/s1.md': cardFile('S-AA', 'Ash'),
  'one/cards/signed/s2.md': cardFile('S-BB', 'Birch'),
  'one/cards/loose/l1.md': cardFile('none', 'Reed'),
};

async function asked(args: string, over: Files = {}, order?: string) {
  await using placed = await placeContent(new Map(sampleWith({ ...SET, ...over })));
  if (order !== undefined) writeFileSync(join(placed.root, 'order.txt'), order);
  const before = textsIn(placed.content);
  const run = await runMain(['renumber', ...args.split(' '), '--set', 'one'], placed.root);
  const after = textsIn(placed.content);
  const changed = [...after].filter(([path, text]) => before.get(path) !== text);
  return { run, before, after, changed: changed.map(([path]) => path.slice(6)).sort() };
}

function textsIn(content: string): Map<string, string> {
  const folder = join(content, 'one/cards');
  return new Map(
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((path) => path.endsWith('.md'))
      .sort()
      .map((path) => [path, readFileSync(join(folder, path), 'utf8')]),
  );
}

/** The rows of the table: card, old, new. */
function rows({ stdout }: MainRun): string[] {
  return [...stdout.matchAll(/^ {2}(\w+\/\w+) +(\S+) +(\S+) {2}\w/gm)].map(
    ([, card, from, to]) => `${card ?? ''} ${from ?? ''} ${to ?? ''}`,
  );
}

describe('renumber', () => {
  test('shows everything and writes nothing', async () => {
    const { run, changed } = await asked('extra --move b4 --to X-1');
    expect(changed).toEqual([]);
    expect(run).toEqual({
      code: 0,
      stdout: `INTERNAL

one/extra: 4 numbers change
  card       old  new  name
  extra/b4   X-4  X-1  Cove
  extra/b1   X-1  X-3  Delta
  extra/b1v  X-1  X-3  Delta
  extra/b3   X-3  X-4  Brook

Public addresses that change (the old ones lead nowhere, or to another card):
  extra/b1  one/extra/X-1/ -> one/extra/X-3/
  extra/b1v  one/extra/X-1b/ -> one/extra/X-3b/
  extra/b3  one/extra/X-3/ -> one/extra/X-4/
  extra/b4  one/extra/X-4/ -> one/extra/X-1/

Places to look at, which name a number that moves:
  one/cards/extra/b4.md:6:13  X-1

Numbers may change until press, and:
  the public can look these cards up by their numbers

nothing is written: add --write --after-press to write it
`,
      stderr: '',
    });
  });

  test('writes the values alone, in the quotes that they had', async () => {
    const { before, after, changed } = await asked('extra --swap b1 b3 --write --after-press');
    expect(changed).toEqual(['b1.md', 'b1v.md', 'b3.md']);
    const swap = new Map([
      ['extra/b1.md', before.get('extra/b1.md')?.replace('"X-1"', '"X-3"')],
      ['extra/b1v.md', before.get('extra/b1v.md')?.replace('X-1', 'X-3')],
      ['extra/b3.md', before.get('extra/b3.md')?.replace('X-3', 'X-1')],
    ]);
    expect(after).toEqual(new Map([...before, ...swap]));
  });

  test('asks before it changes what the public can look up', async () => {
    const { run, changed } = await asked('extra --swap b1 b3 --write');
    expect(run).toMatchObject({ code: 1, stderr: expect.stringContaining('--after-press') });
    expect(changed).toEqual([]);
  });

  test('asks before it changes what is at the printer, and nothing while that is to come', async () => {
    const plan = (day: string): Files => ({
      'one/plan.yaml': `${String(SET['one/plan.yaml'])}dates: { toPrinter: "${day}" }\n`,
      // Nothing of it is public yet.
      'property.yaml': String(sampleWith({}).get('property.yaml')).replace(
        'since: "2026-09-01T',
        'since: "2027-04-01T',
      ),
    });
    const past = await asked('extra --swap b1 b3 --write', plan('2027-03-30'));
    expect(past.run).toMatchObject({
      code: 1,
      stdout: expect.stringContaining('went to the printer on 2027-03-30'),
    });
    expect(past.changed).toEqual([]);
    const coming = await asked('extra --swap b1 b3 --write', plan('2027-03-31'));
    expect(coming.run).toMatchObject({ code: 0, stdout: expect.stringMatching(/\nwritten\n$/) });
    expect(coming.changed.length).toBe(3);
  });

  test.each([
    ['by name', 'extra --by name', ['b3 X-3 X-1', 'b4 X-4 X-3', 'b1 X-1 X-4', 'b1v X-1 X-4']],
    ['by story', 'extra --by story', ['b3 X-3 X-1', 'b4 X-4 X-3', 'b1 X-1 X-4', 'b1v X-1 X-4']],
    ['as they stand', 'extra --by current', []],
    ['to a number that nobody has', 'extra --move b1 --to X-5', ['b1 X-1 X-5', 'b1v X-1 X-5']],
    ['a pulled card that is named', 'extra --swap b2 b3', ['b3 X-3 X-2', 'b2 X-2 X-3']],
  ])('%s', async (_, args, expected) => {
    expect(rows((await asked(args)).run)).toEqual(expected.map((row) => `extra/${row}`));
  });

  test('exchanges codes', async () => {
    expect(rows((await asked('signed --swap signed/s1 s2')).run)).toEqual([
      'signed/s2 S-BB S-AA',
      'signed/s1 S-AA S-BB',
    ]);
  });

  test('closes gaps, around a card that was pulled', async () => {
    const gap: Files = {
      'one/cards/extra/b3.md': null,
      'one/cards/extra/b5.md': cardFile('X-5', 'Eddy'),
    };
    expect(rows((await asked('extra --by current --close-gaps', gap)).run)).toEqual([
      'extra/b4 X-4 X-3',
      'extra/b5 X-5 X-4',
    ]);
  });

  test('takes an order from a file', async () => {
    const { run } = await asked(
      'extra --order order.txt',
      {},
      '# mine\nb4\nextra/b3  # then\n\nb1\n',
    );
    expect(rows(run)).toEqual(['extra/b4 X-4 X-1', 'extra/b1 X-1 X-4', 'extra/b1v X-1 X-4']);
  });

  test('says everything that is wrong with an order at once', async () => {
    const { run, changed } = await asked(
      'extra --order order.txt --write',
      {},
      'b4\nb4\nb33\nb1v\n',
    );
    expect(run).toEqual({
      code: 1,
      stdout: '',
      stderr: `refused: nothing was written
  line 2: b4 stands in line 1 already
  line 3: there is no card b33 in \`extra\`; did you mean b3?
  line 4: b1v is a variation of extra/b1 and goes where that one goes
  extra/b1 is not in the list
  extra/b3 is not in the list
`,
    });
    expect(changed).toEqual([]);
  });

  test.each([
    ['a subset without numbers', 'loose --by name', {}, '`loose` has no numbers'],
    [
      'a number outside the plan',
      'extra --move b1 --to X-6',
      {},
      'the plan gives no number X-6 here: X-1 to X-5',
    ],
    [
      'a number that a pulled card keeps',
      'extra --move b1 --to X-2',
      {},
      'extra/b2 was pulled and keeps the number X-2',
    ],
    ['a card without a scene', 'signed --by story', {}, 'signed/s2 has no `story`'],
    [
      'a subset that is not there',
      'exta --by name',
      {},
      'there is no subset exta; did you mean extra?',
    ],
    [
      'two cards of one number',
      'extra --by name',
      { 'one/cards/extra/b3.md': cardFile('X-4', 'Brook') },
      'both have the number X-4',
    ],
    [
      'a number that is none',
      'extra --by name',
      { 'one/cards/extra/b3.md': cardFile('X-03', 'Brook') },
      'X-03, which the plan does not give',
    ],
    [
      'a file that cannot be read',
      'extra --by name',
      { 'one/cards/base/a1.md': 'x' },
      'run `holdback check` first',
    ],
  ])('refuses %s', async (_, args, files, why) => {
    const { run, changed } = await asked(`${args} --write`, files);
    expect(run).toMatchObject({ code: 1, stdout: '', stderr: expect.stringContaining(why) });
    expect(changed).toEqual([]);
  });

  test('refuses numbers with which check would find more', async () => {
    const plan = String(SET['one/plan.yaml']).replace(
      'to: 5 }',
      'to: 5 }, order: story, coverage: { from: 1/1, to: 1/9 }',
    );
    const { run } = await asked('extra --swap b3 b4', {
      'one/plan.yaml': plan,
      'one/cards/extra/b1.md': cardFile('X-1', 'Delta', 'story: 1/1\n'),
      'one/cards/extra/b3.md': cardFile('X-3', 'Brook', 'story: 1/4\n'),
      'one/cards/extra/b4.md': cardFile('X-4', 'Cove', 'story: 1/9\n'),
    });
    expect(run).toMatchObject({ code: 1, stderr: expect.stringContaining('story-order') });
  });

  test.each([
    ['no way', 'extra'],
    ['two ways', 'extra --by name --swap b1 b3'],
    ['a place without a card', 'extra --to X-1 --by name'],
    ['a card without a place', 'extra --move b1'],
    ['one card to swap', 'extra --swap b1'],
    ['a file that is not there', 'extra --order nowhere.txt'],
  ])('%s is a slip', async (_, args) => {
    expect((await asked(args)).run.code).toBe(2);
  });
});

test('of the demo it says whose approvals of the layout are of the old numbers', async () => {
  await using placed = await placeContent(demoFiles({ art: true, approvals: true }));
  const args = ['renumber', 'crew', '--set', 'high-water', '--swap', 'c017', 'c003'];
  const { stdout, code } = await runMain(args, placed.root);
  expect(code).toBe(0);
  expect(stdout).toContain(
    'high-water/crew: 3 numbers change\n  card        old  new  name\n' +
      '  crew/c017   17   3    Odalys Thrane\n  crew/c017b  17   3    Odalys Thrane\n' +
      '  crew/c003   3    17   Tamsin Oakum\n',
  );
  expect(stdout).toMatch(
    /Layout approvals that no longer hold:\n( {2}crew\/\w+ {2}\w+ \(\w+\)\n)+/,
  );
  expect(stdout).toContain('  crew/c017b  high-water/crew/17b/ -> high-water/crew/3b/\n');
});
