import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';

import { afterEach, beforeEach, describe, expect, test } from 'vitest';

import { main } from '../../pipeline/cli/index.js';
import { sampleWith } from '../../pipeline/checks/index.js';
import type { CheckReport } from '../../schema/index.js';
import { DEMO_NOW } from '../demo/day.js';
import { placeContent } from '../demo/copy.js';
import { runMain } from './run-main.js';

let root = '';
beforeEach(async () => {
  root = await mkdtemp(join(tmpdir(), 'holdback-new-set-'));
});
afterEach(() => rm(root, { recursive: true, force: true }));

const LAKE = [
  ...['--property-title', 'The Lake', '--zone', 'Europe/London', '--title', 'The Lake: One'],
  ...['--street', '2027-04-16', '--licensor', 'Amara Linde', '--levels', 'open,premiere,finale'],
  ...['--legal', '© 2027 Lantern & Oar', '--writer', 'Jonah Prewett'],
  ...['--subset', 'id=crew;title=Crew;numbers=1-12;bio=35-60;facts=Berth'],
  ...['--subset', 'title=Lake Charts;numbers=LC-1-LC-8'],
  ...['--subset', 'title=Signatures;numbers=SG-1,SG-2;group=autographs;bio=none'],
];

const newSet = (...args: string[]) => runMain(['new', 'set', ...args], root);

function files(below = root): string[] {
  return readdirSync(below, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(below.length + 1))
    .sort();
}

async function report(where = root): Promise<CheckReport> {
  const found: CheckReport = JSON.parse(
    (await runMain(['check', '--format', 'json'], where)).stdout,
  );
  return found;
}

function rulesOf({ findings }: CheckReport): string[] {
  return [...new Set(findings.map(({ rule, severity }) => `${rule} ${severity}`))].sort();
}

describe('in an empty place', () => {
  test('leaves a property and a set that only lack their cards', async () => {
    const run = await newSet(...LAKE, '--write');
    expect(run).toMatchObject({ code: 0, stderr: '' });
    expect(files()).toEqual([
      'content/backs/standard.yaml',
      'content/names.yaml',
      'content/people.yaml',
      'content/property.yaml',
      'content/the-lake-one/plan.yaml',
    ]);
    const found = await report();
    expect(rulesOf(found)).toEqual(['subset-count warning']);
    expect(found.findings.map(({ message }) => message)).toEqual([
      '`crew` has no cards at all',
      '`lake-charts` has no cards at all',
      '`signatures` has no cards at all',
    ]);
    expect(readFileSync(join(root, 'content/the-lake-one/plan.yaml'), 'utf8')).toBe(`format: 1
id: the-lake-one
title: "The Lake: One"
spoiler: open
# planning, then writing, then locked, which asks for everything
stage: planning
# When it may be sold. The earliest counts.
street: "2027-04-16T09:00:00+01:00[Europe/London]"

# A subset is a folder of cards. Its id stays; its title may change until press.
subsets:
  - { id: crew, title: Crew, group: base, numbers: { from: 1, to: 12 }, back: standard, bio: { words: { min: 35, max: 60 } }, facts: [Berth] }
  - { id: lake-charts, title: Lake Charts, group: inserts, numbers: { prefix: LC-, from: 1, to: 8 }, back: standard }
  - { id: signatures, title: Signatures, group: autographs, numbers: { codes: [SG-1, SG-2] }, back: standard, bio: none }

# What is announced. \`check\` counts the cards.
totals: { base: 12, inserts: 8, autographs: 2 }
`);
    expect(readFileSync(join(root, 'content/people.yaml'), 'utf8')).toContain(
      'name: Amara Linde, role: licensor, clearance: finale',
    );
  });

  test.each(['planning', 'writing'])('with stubs, in %s: only words are missing', async (stage) => {
    expect(await newSet(...LAKE, '--stubs', '--stage', stage, '--yes')).toMatchObject({ code: 0 });
    expect(files().filter((path) => path.endsWith('.md'))).toHaveLength(22);
    const found = await report();
    expect(rulesOf(found)).toEqual(['copy-empty warning']);
    expect(found.findings).toHaveLength(42);
    const stub = readFileSync(join(root, 'content/the-lake-one/cards/crew/c001.md'), 'utf8');
    expect(stub).toContain('writer: jonah-prewett\n');
  });

  test('the least that must be said is enough', async () => {
    const least = ['--property-title', 'Lake', '--zone', 'UTC', '--title', 'One'];
    const run = await newSet(
      ...least,
      '--since',
      '2027-01-01',
      '--subset',
      'id=crew;numbers=48',
      '--write',
    );
    expect(run).toMatchObject({ code: 0, stderr: '' });
    expect(rulesOf(await report())).toEqual(['subset-count warning']);
    expect(readFileSync(join(root, 'content/people.yaml'), 'utf8')).toContain('still missing here');
  });

  test('shows everything and writes nothing unless it is told to', async () => {
    for (const more of [[], ['--dry-run', '--write']]) {
      const run = await newSet(...LAKE, ...more);
      expect(run.code).toBe(0);
      expect(run.stdout).toContain('the-lake-one/plan.yaml\n  format: 1\n');
      expect(run.stdout).toMatch(/\nnothing is written: add --write to write it\n$/);
      expect(existsSync(join(root, 'content'))).toBe(false);
    }
  });

  test('says all that is missing at once, and where the licence speaks', async () => {
    const run = await newSet();
    expect(run.code).toBe(2);
    const named = [...run.stderr.matchAll(/^ {2}--([a-z-]+) is missing/gm)].map(([, key]) => key);
    expect(named).toEqual(['property-title', 'zone', 'title', 'since', 'subset']);
    expect((await newSet('--help')).stdout).toMatch(/contract and counsel/);
  });

  test('says all that is wrong at once, in the words of check', async () => {
    const wrong = ['--zone', 'Mars/Base', '--legal', '(c) 2027 Lantern', '--street', '2027-02-30'];
    const run = await newSet(
      ...LAKE,
      ...wrong,
      '--subset',
      'title=Odd;numbers=9-3;boi=2',
      '--write',
    );
    expect(run.code).toBe(1);
    expect(run.stdout).toBe('');
    for (const line of [
      '--zone Mars/Base: `zone` has a value that is not allowed; found Mars/Base; expected a time zone of the IANA list, such as Europe/London',
      '--legal (c) 2027 Lantern: the legal line has letters where the mark of copyright belongs; found (c); expected ©, if the licence has it',
      'there is no key `boi`: did you mean bio?',
      'numbers=9-3: 9 to 3 runs backwards',
    ]) {
      expect(run.stderr).toContain(line);
    }
    expect(existsSync(join(root, 'content'))).toBe(false);
  });
});

describe('beside other sets', () => {
  const NAMES =
    'names:\n  - { name: Ysolde Marrack, kind: character, level: last, publicName: The voice }\n';
  const home = () => placeContent(new Map(sampleWith({ 'names.yaml': NAMES })));
  const TWO = ['--title', 'Two', '--subset', 'title=Crew;numbers=1-2'];

  test('adds a set, and touches nothing else', async () => {
    await using placed = await home();
    const before = new Map(
      files(placed.root).map((path) => [path, readFileSync(join(placed.root, path), 'utf8')]),
    );
    const run = await runMain(
      ['new', 'set', ...TWO, '--stubs', '--writer', 'jonah', '--write'],
      placed.root,
    );
    expect(run).toMatchObject({ code: 0, stderr: '' });
    const added = files(placed.root).filter((path) => !before.has(path));
    expect(added).toEqual([
      'content/two/cards/crew/c001.md',
      'content/two/cards/crew/c002.md',
      'content/two/plan.yaml',
    ]);
    for (const [path, text] of before) {
      expect(readFileSync(join(placed.root, path), 'utf8')).toBe(text);
    }
    expect(rulesOf(await report(placed.root))).toEqual(['copy-empty warning']);
  });

  test('a title that is held needs a level, and then an id that tells nothing is taken', async () => {
    await using placed = await home();
    const told = [
      '--title',
      'The Ysolde Marrack Set',
      '--subset',
      'title=Crew;numbers=1-2',
      '--write',
    ];
    const open = await runMain(['new', 'set', ...told], placed.root);
    expect(open.code).toBe(1);
    expect(open.stderr).toContain('`title` names what opens later than it');
    const held = await runMain(['new', 'set', ...told, '--spoiler', 'last'], placed.root);
    expect(held).toMatchObject({ code: 0, stderr: '' });
    expect(existsSync(join(placed.content, 'set-1/plan.yaml'))).toBe(true);
  });

  test.each([
    [['--id', 'one'], 'there is a folder `one` already: give another id'],
    [['--id', 'review'], 'the folder `review` is not for a set: give another id'],
    [['--id', 'Two'], 'expected an id of small letters, digits and single hyphens'],
    [['--zone', 'UTC'], '--zone is of a new property, and there is one'],
    [['--writer', 'jona'], '--writer jona: there is no person jona; did you mean jonah?'],
    [['--spoiler', 'laster'], 'last'],
  ])('refuses %j', async (more, why) => {
    await using placed = await home();
    const before = files(placed.root);
    const run = await runMain(['new', 'set', ...TWO, ...more, '--write'], placed.root);
    expect(run.code).toBe(1);
    expect(run.stderr).toContain(why);
    expect(files(placed.root)).toEqual(before);
  });

  test('never writes over a file of a property that is half there', async () => {
    await using placed = await placeContent(new Map([['names.yaml', NAMES]]));
    const run = await runMain(['new', 'set', ...LAKE, '--write'], placed.root);
    expect(run.code).toBe(1);
    expect(run.stderr).toContain('names.yaml is there already: it stays as it is');
    expect(files(placed.content)).toEqual(['names.yaml']);
  });

  test('a property that cannot be read is mended first', async () => {
    await using placed = await placeContent(new Map([['property.yaml', 'levels: [']]));
    const run = await runMain(['new', 'set', ...TWO, '--write'], placed.root);
    expect(run).toMatchObject({
      code: 1,
      stderr: expect.stringContaining('property.yaml cannot be read'),
    });
  });
});

describe('asked at a terminal', () => {
  /** Gives one answer after another; then waits, or hangs up. */
  async function talk(
    answers: readonly string[],
    { args = [], hangsUp = false }: { args?: readonly string[]; hangsUp?: boolean } = {},
  ) {
    const [input, output] = [new PassThrough(), new PassThrough()];
    const said: string[] = [];
    output.on('data', (data: Buffer) => said.push(data.toString()));
    const say = (text: string): void => void said.push(text);
    input.write(answers.map((answer) => `${answer}\n`).join(''));
    if (hangsUp) input.end();
    const code = await main(['new', 'set', ...args], {
      now: DEMO_NOW,
      cwd: root,
      env: {},
      elapsed: () => 0,
      random: (octets) => new Uint8Array(octets),
      terminal: true,
      talk: { input, output },
      out: say,
      err: say,
    });
    return { code, said: said.join('') };
  }

  const ANSWERS = [
    ...['', 'The Lake', '', '?', 'Mars/Base', 'Europe/London'],
    ...['', '', 'premiere', 'Episode 1', '2027-04-16 20:00', ''],
    ...['Amara Linde', '© 2027 Lantern & Oar', '', 'Jonah Prewett'],
    ...['', 'The Lake: One', '', '', '2027-04-16', ''],
    ...['Crew', '', '1-4', '', '', 'Berth', '', '', 'yes'],
  ];

  test('asks until an answer stands, shows what would be written, and writes it', async () => {
    const { code, said } = await talk([...ANSWERS, 'yes']);
    expect(code).toBe(0);
    expect(said).toContain('Title of the licensed work:   this needs an answer; ? explains it\n');
    expect(said).toContain('Its id [the-lake]: ');
    expect(said).toContain('  A zone of the IANA list, such as Europe/London.');
    expect(said).toContain(
      '  `zone` has a value that is not allowed; found Mars/Base; expected a time zone',
    );
    expect(said).toMatch(/the-lake-one\/plan\.yaml[^]*Write these files\? \[no\] \nwritten:/);
    const property = readFileSync(join(root, 'content/property.yaml'), 'utf8');
    expect(property).toContain(`levels:
  - { id: open, label: Known beforehand }
  - { id: premiere, label: Episode 1, lift: "2027-04-16T20:00:00+01:00[Europe/London]" }
`);
    expect(rulesOf(await report())).toEqual(['copy-empty warning']);
  });

  test('no is no', async () => {
    const { code, said } = await talk([...ANSWERS, '']);
    expect(code).toBe(0);
    expect(said).toMatch(/nothing is written: add --write to write it\n$/);
    expect(files()).toEqual([]);
  });

  test.each([0, 1, 9, 20, ANSWERS.length])(
    'stopped after %i answers it leaves nothing',
    async (given) => {
      const { code, said } = await talk(ANSWERS.slice(0, given), { hangsUp: true });
      expect(code).toBe(2);
      expect(said).toMatch(/cancelled: nothing was written\n$/);
      expect(files()).toEqual([]);
    },
  );

  test('asks for nothing that was said', async () => {
    const { code, said } = await talk([], { args: [...LAKE, '--write'] });
    expect(code).toBe(0);
    expect(said).not.toContain('?');
  });
});
