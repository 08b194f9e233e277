import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

import { describe, expect, it } from 'vitest';

import type { CheckReport } from '../../schema/index.js';
import { RULES } from '../../pipeline/checks/index.js';
import { demoFiles, placeContent, withEdit } from '../demo/copy.js';
import { DEMO_NOW } from '../demo/day.js';
import { runCli } from '../setup/run-cli.js';
import { runMain } from './run-main.js';

const files = demoFiles({ art: true });

describe('exit codes', () => {
  it.each([
    ['nothing to do', [], 2],
    ['help', ['--help'], 0],
    ['an unknown command', ['chek'], 2],
    ['an unknown option', ['check', '--onyl', 'schema'], 2],
    ['an unknown rule', ['check', '--only', 'no-such-rule'], 2],
    ['an unknown format', ['check', '--format', 'xml'], 2],
    ['a content folder that is not there', ['check', '--content', 'nowhere'], 2],
    ['a missing --out', ['publish'], 2],
    ['an instant that is none', ['publish', '--out', 'site', '--at', '2027-04-16'], 2],
    ['an instant to come', ['publish', '--out', 'site', '--at', '2027-05-01T00:00:00Z[UTC]'], 1],
    ['a demo that is fine', ['check'], 0],
    ['a rule to explain', ['explain', 'overset'], 0],
  ])('%s', async (_, args, code) => {
    await using placed = await placeContent(files);
    const run = await runMain(args, placed.root);
    expect({ code: run.code, stderr: run.stderr }).toMatchObject({ code });
    expect(run.stdout + run.stderr).not.toMatch(/\n {4}at /);
    expect(readdirSync(placed.root)).toEqual(['content']);
  });
});

describe('a content folder that is not there', () => {
  it('is named, with what to do', async () => {
    await using placed = await placeContent(files);
    const { stderr } = await runMain(['check', '--content', 'nowhere'], placed.root);
    expect(stderr).toBe(
      'there is no folder nowhere: run this where the content is, or add --content DIR\n',
    );
  });
});

describe('check', () => {
  it('says nothing of the demo but what is accepted, in text and in JSON', async () => {
    await using placed = await placeContent(files);
    const text = await runCli(['check'], { cwd: placed.root, now: DEMO_NOW });
    const stdout = '188 cards in 2 sets: nothing found, 1 accepted\n';
    expect(text).toEqual({ code: 0, stdout, stderr: '' });
    const json = await runMain(['check', '--format', 'json'], placed.root);
    const report: CheckReport = JSON.parse(json.stdout);
    expect(report).toEqual({
      ok: true,
      counts: { sets: 2, cards: 188, errors: 0, warnings: 0, accepted: 1 },
      findings: [expect.objectContaining({ rule: 'promise-changed' })],
    });
  });

  it('prints findings by file and place, the same bytes twice', async () => {
    const broken = withEdit(files, 'high-water/cards/crew/c004.md', 'number: "4"', 'number: "3"');
    await using placed = await placeContent(broken);
    const one = await runCli(['check'], { cwd: placed.root, now: DEMO_NOW });
    const two = await runCli(['check'], { cwd: placed.root, now: DEMO_NOW });
    expect(one.code).toBe(1);
    expect(two).toEqual(one);
    expect(one.stdout).toMatch(/^high-water\/cards\/crew\/c004\.md\n {2}\d+:\d+ +error {2}/);
    expect(one.stdout).toMatch(/number-duplicate/);
  });

  it('is discreet where CI is set: of what is held it says one sentence and no more', async () => {
    const broken = withEdit(files, 'high-water/cards/crew/c019.md', 'number: "19"', 'number: "20"');
    await using placed = await placeContent(broken);
    const run = await runMain(['check'], placed.root, { CI: 'true' });
    expect(run).toEqual({
      code: 1,
      stdout:
        'What is not public is not told here. Run the check in private to see all that it finds.\n',
      stderr: '',
    });
    const told = await runMain(['check', '--no-discreet'], placed.root, { CI: 'true' });
    expect(told.stdout).toContain('c019');
  });

  it('exits 1 on warnings with --strict alone', async () => {
    const path = 'high-water/cards/crew/c004.md';
    const old = String(files.get(path));
    const bare = new Map(files).set(
      path,
      old.replace(/^---\n([\s\S]*?)\n---\n[\s\S]*$/, '---\n$1\n---\n'),
    );
    const plan = 'high-water/plan.yaml';
    await using placed = await placeContent(
      withEdit(bare, plan, 'stage: locked', 'stage: writing'),
    );
    const mild = await runMain(['check'], placed.root);
    const strict = await runMain(['check', '--strict'], placed.root);
    expect([mild.code, strict.code]).toEqual([0, 1]);
    expect(mild.stdout).toContain('copy-empty');
  });
});

describe('explain', () => {
  it('lists every rule, and shows one with what passes and what does not', async () => {
    await using placed = await placeContent(new Map());
    const all = await runMain(['explain'], placed.root);
    expect(
      all.stdout
        .trim()
        .split('\n')
        .map((line) => line.split(' ')[0]),
    ).toEqual(RULES.map((rule) => rule.id));
    const one = await runMain(['explain', 'number-duplicate'], placed.root);
    expect(one.stdout).toMatch(/Passes: [\s\S]*Does not pass: /);
    const near = await runMain(['explain', 'number-duplicat'], placed.root);
    expect(near).toMatchObject({ code: 2, stderr: expect.stringContaining('number-duplicate?') });
  });
});

describe('keys that have no default', () => {
  const keys: readonly [string, RegExp, string][] = [
    ['property.yaml', /^zone:.*\n/m, 'zone'],
    ['property.yaml', /^since:.*\n/m, 'since'],
    ['property.yaml', /^approvals:.*\n/m, 'approvals'],
    ['high-water/plan.yaml', /^spoiler:.*\n/m, 'spoiler'],
    ['high-water/cards/crew/c001.md', /^number:.*\n/m, 'number'],
    ['high-water/cards/crew/c001.md', /^name:.*\n/m, 'name'],
    ['high-water/cards/crew/c001.md', /^spoiler:.*\n/m, 'spoiler'],
  ];

  it.each(keys)('%s without %s: exit 1, and no file is written', async (path, line, key) => {
    const old = String(files.get(path));
    expect(old.match(line)).not.toBeNull();
    await using placed = await placeContent(new Map(files).set(path, old.replace(line, '')));
    const check = await runMain(['check', '--format', 'json'], placed.root);
    const report: CheckReport = JSON.parse(check.stdout);
    expect(check.code).toBe(1);
    const standing = report.findings.filter(({ accepted }) => accepted === undefined);
    expect(standing.map(({ rule, file, message }) => ({ rule, file, message }))).toEqual([
      { rule: 'schema', file: path, message: `the key \`${key}\` is missing` },
    ]);
    const publish = await runMain(['publish', '--out', 'site'], placed.root);
    const proof = await runMain(['proof', '--out', 'proof.pdf'], placed.root);
    expect([publish.code, proof.code]).toEqual([1, 1]);
    expect(readdirSync(placed.root)).toEqual(['content']);
    expect(readdirSync(placed.content)).not.toContain('review');
  });
});

describe('a card that opens with ---js', () => {
  it('runs nothing and shows nothing of what it says', async () => {
    const trap = `---js\nrequire('fs').writeFileSync('ran', 'yes'); ({ number: "1" })\n---\nWords.\n`;
    const path = 'high-water/cards/crew/c001.md';
    await using placed = await placeContent(new Map(files).set(path, trap));
    const run = await runCli(['check'], { cwd: placed.root, now: DEMO_NOW });
    expect(run.code).toBe(1);
    expect(run.stdout).toContain('front-matter');
    expect(run.stdout).not.toContain('writeFileSync');
    expect(readdirSync(placed.root)).toEqual(['content']);
    expect(readFileSync(join(placed.content, path), 'utf8')).toBe(trap);
  });
});
