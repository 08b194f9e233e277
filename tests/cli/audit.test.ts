import { mkdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

import { Command } from 'commander';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';

import { addAudit } from '../../pipeline/cli/audit.js';
import { rasterise, validate } from '../../pipeline/read/index.js';
import { AuditReport, DiscreetAudit } from '../../schema/outputs/audit.js';
import { SMALL_DAY, SMALL_FILES } from '../audit/small-property.js';
import { placeContent, type Placed } from '../demo/copy.js';
import type { MainRun } from './run-main.js';

const AT = ['--at', '2027-03-30T12:00:00+01:00[Europe/London]'];
const ART =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 63 88" width="630" height="880"><path d="M0 0h30v40h-30z"/><circle cx="40" cy="60" r="20"/></svg>';

let placed: Placed;
beforeAll(async () => {
  placed = await placeContent(new Map([...SMALL_FILES, ['first/art/w001.svg', ART]]));
});
afterAll(async () => {
  await placed[Symbol.asyncDispose]();
});
afterEach(() => {
  rmSync(join(placed.root, 'site'), { recursive: true, force: true });
});

/** Runs the command over a folder of these files. */
async function run(
  files: Readonly<Record<string, string | Uint8Array>>,
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<MainRun> {
  for (const [path, text] of Object.entries(files)) {
    const place = join(placed.root, 'site', path);
    mkdirSync(dirname(place), { recursive: true });
    writeFileSync(place, text);
  }
  return command(['audit', ...args], env);
}

async function command(
  args: readonly string[],
  env: Readonly<Record<string, string>>,
): Promise<MainRun> {
  const said = { stdout: '', stderr: '' };
  let code = 0;
  const out = (text: string): void => {
    said.stdout += text;
  };
  const err = (text: string): void => {
    said.stderr += text;
  };
  const program = new Command()
    .option('--content <dir>', '', 'content')
    .exitOverride()
    .configureOutput({ writeOut: out, writeErr: err });
  const io = {
    now: SMALL_DAY,
    cwd: placed.root,
    env,
    elapsed: () => 0,
    random: (octets: number) => new Uint8Array(octets),
    terminal: false,
    out,
    err,
  };
  addAudit(program, io, (result) => {
    code = result;
  });
  try {
    await program.parseAsync([...args], { from: 'user' });
  } catch (error) {
    return { code: 2, stdout: said.stdout, stderr: error instanceof Error ? error.message : '' };
  }
  return { code, ...said };
}

const CALM = { 'index.html': '<p>The lake is calm.', '.note/a.txt': 'Calm.' };
const TOLD = { ...CALM, '.note/a.txt': 'Calm.\nSo is Ysolde Marrack.', 'b.txt': 'Eight lanterns' };

describe('audit', () => {
  it('finds nothing where nothing is', async () => {
    expect(await run(CALM, ['site', ...AT])).toEqual({
      code: 0,
      stdout: '2 files searched: nothing held was found\n',
      stderr: '',
    });
  });

  it('says file, place and what it is, in hidden files too', async () => {
    expect(await run(TOLD, ['site', ...AT])).toEqual({
      code: 1,
      stdout:
        '.note/a.txt 2:7  the name Ysolde Marrack: Ysolde Marrack\n' +
        'b.txt 1:1  the now of a correction of first/wide/w001: Eight lanterns\n' +
        '3 files searched: 2 findings\n',
      stderr: '',
    });
  });

  it('follows links, but not in a circle', async () => {
    mkdirSync(join(placed.root, 'site', 'a'), { recursive: true });
    symlinkSync('..', join(placed.root, 'site', 'a', 'up'));
    symlinkSync('../../elsewhere.txt', join(placed.root, 'site', 'a', 'note'));
    writeFileSync(join(placed.root, 'elsewhere.txt'), 'Ysolde Marrack');
    const { stdout } = await run({}, ['site', ...AT]);
    expect(stdout).toBe(
      'a/note 1:1  the name Ysolde Marrack: Ysolde Marrack\n1 file searched: 1 finding\n',
    );
  });

  it('finds art of held cards by its looks', async () => {
    const { bytes } = await rasterise(Buffer.from(ART), 240, 'webp');
    const { code, stdout } = await run({ 'a.webp': bytes }, ['site', ...AT]);
    expect(code).toBe(1);
    expect(stdout).toContain('a.webp  art of first/wide/w001: first/art/w001.svg\n');
  });

  it('is quiet about what has opened, or what a reader is cleared for', async () => {
    const later = ['--at', '2027-06-05T00:00:00+01:00[Europe/London]'];
    expect((await run(TOLD, ['site', ...later])).code).toBe(0);
    expect((await run({}, ['site', '--clearance', 'last'])).code).toBe(0);
    const { stdout } = await run({}, ['site', '--clearance', 'later']);
    expect(stdout).toContain('the name Ysolde Marrack');
    expect(stdout).not.toContain('Eight lanterns');
  });

  it('holds an embargo back from every clearance', async () => {
    const { stdout } = await run({ 'c.txt': 'Further pens' }, ['site', '--clearance', 'last']);
    expect(stdout).toContain('c.txt 1:1  the label of more: Further pens\n');
  });
});

describe('audit as JSON', () => {
  it('has the shape that the schema says', async () => {
    const { code, stdout } = await run(TOLD, ['site', ...AT, '--format', 'json']);
    const report = validate(AuditReport, JSON.parse(stdout));
    expect(code).toBe(1);
    expect(report).toEqual({
      ok: true,
      value: {
        ok: false,
        files: 3,
        findings: [
          {
            file: '.note/a.txt',
            inside: [],
            line: 2,
            column: 7,
            byte: null,
            card: null,
            from: 'the name Ysolde Marrack',
            words: 'Ysolde Marrack',
          },
          {
            file: 'b.txt',
            inside: [],
            line: 1,
            column: 1,
            byte: null,
            card: 'first/wide/w001',
            from: 'the now of a correction of first/wide/w001',
            words: 'Eight lanterns',
          },
        ],
      },
    });
  });
});

describe('audit where others read the log', () => {
  const SENTENCE = 'Something held was found. Run the audit in private to see it.';

  it.each([
    ['it is said', ['--discreet'], {}],
    ['CI is set', [], { CI: 'true' }],
  ])('says one sentence: %s', async (_why, args, env) => {
    const expected = { code: 1, stdout: `${SENTENCE}\n`, stderr: '' };
    expect(await run(TOLD, ['site', ...AT, ...args], env)).toEqual(expected);
    const json = await run({}, ['site', ...AT, ...args, '--format', 'json'], env);
    const value = { ok: false, rest: SENTENCE };
    expect(validate(DiscreetAudit, JSON.parse(json.stdout))).toEqual({ ok: true, value });
  });

  it('says the same whatever is found, wherever', async () => {
    const one = await run({ 'a.txt': 'Ysolde Marrack' }, ['site', ...AT, '--discreet']);
    rmSync(join(placed.root, 'site'), { recursive: true });
    const files = { 'b.txt': 'calm', 'Unspoken Water.txt': 'Eight lanterns' };
    expect(await run(files, ['site', ...AT, '--discreet'])).toEqual(one);
  });

  it('says all if that is asked for', async () => {
    const { stdout } = await run(TOLD, ['site', ...AT, '--no-discreet'], { CI: 'true' });
    expect(stdout).toContain('Ysolde Marrack');
  });

  it('has nothing to hide if nothing is found', async () => {
    const { code, stdout } = await run(CALM, ['site', ...AT, '--discreet', '--format', 'json']);
    expect([code, JSON.parse(stdout)]).toEqual([0, { ok: true, rest: null }]);
  });
});

describe('audit cannot run', () => {
  it.each([
    [['site'], 'say for whom: --at INSTANT for the public, or --clearance LEVEL'],
    [
      ['site', ...AT, '--clearance', 'last'],
      'say for whom: --at INSTANT for the public, or --clearance LEVEL',
    ],
    [['site', '--clearance', 'lst'], '--clearance lst: the levels are open, later, last'],
    [['nowhere', ...AT], 'there is no folder nowhere: name a finished one'],
    [['site', ...AT, '--format', 'xml'], '--format xml: it is text or json'],
  ])('%j', async (args, stderr) => {
    expect(await run(CALM, args)).toEqual({ code: 2, stdout: '', stderr });
  });

  it('and refuses content that it cannot read whole', async () => {
    const broken = join(placed.content, 'first', 'cards', 'wide', 'w009.md');
    writeFileSync(broken, '---\nnumber: 9\n');
    expect(await run(CALM, ['site', ...AT])).toEqual({
      code: 1,
      stdout: '',
      stderr: 'some files cannot be read: run `holdback check` first\n',
    });
    rmSync(broken);
  });
});
