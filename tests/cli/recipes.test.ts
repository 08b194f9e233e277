import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { chmod, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';

import { Type } from 'typebox';
import { validate } from '../../pipeline/read/index.js';
import { sampleWith } from '../../pipeline/checks/index.js';
import { filesBelow } from '../release/site-at.js';

const recipes = fileURLToPath(new URL('../../recipes/', import.meta.url));
const atInstant = fileURLToPath(new URL('../setup/cli-at.mjs', import.meta.url));
const workflowText = readFileSync(join(recipes, 'workflow.yml'), 'utf8');
const crontab = readFileSync(join(recipes, 'crontab'), 'utf8');

const Workflow = Type.Object({
  on: Type.Object({ schedule: Type.Array(Type.Object({ cron: Type.String() })) }),
  jobs: Type.Object({
    publish: Type.Object({
      steps: Type.Array(Type.Object({ name: Type.String(), run: Type.Optional(Type.String()) })),
    }),
  }),
});
const workflow = validate(Workflow, parse(workflowText));
if (!workflow.ok) throw new Error(JSON.stringify(workflow.faults));
const { on, jobs } = workflow.value;

/** The sample's card 2 is held until episode 1 is on the air. */
const LIFT = Date.parse('2027-04-16T20:00:00+01:00');
const HELD = 'The Lamp';
const files = new Map(
  [...sampleWith({})].map(([path, text]) => [
    path,
    path.endsWith('a2.md') ? text.replace('spoiler: open', 'spoiler: later') : text,
  ]),
);

describe('the recipes', () => {
  it('have no date: a list of instants is a leak', () => {
    for (const text of [workflowText, crontab]) expect(text).not.toMatch(/\b20\d\d\b|\d\d:\d\d/);
  });

  it('run every quarter of an hour or more often, on every day alike', () => {
    const lines = [...on.schedule.map(({ cron }) => cron), crontab];
    for (const line of lines) {
      const [, minutes] = /^\*\/(\d+) \* \* \* \*/.exec(line) ?? [];
      expect(Number(minutes)).toBeLessThanOrEqual(15);
    }
  });

  it('take nothing of the content to the site’s repository', () => {
    expect(workflowText).not.toMatch(/--no-discreet|content\/(?!review\/releases)/);
  });
});

/** A folder with a content's repository, a site's repository, and a `holdback` at a stated clock. */
interface Ground {
  readonly root: string;
  readonly run: (script: string, cwd: string) => Promise<Shell>;
  now(at: number): void;
}

interface Shell {
  readonly code: number | null;
  readonly said: string;
}

async function groundWith(content: ReadonlyMap<string, string>): Promise<Ground> {
  const root = mkdtempSync(join(tmpdir(), 'holdback-recipe-'));
  const bin = join(root, 'bin');
  mkdirSync(bin);
  await writeFile(
    join(bin, 'npx'),
    `#!/bin/sh\nshift\nexec "${process.execPath}" "${atInstant}" "$(cat "${root}/now")" "$@"\n`,
  );
  await chmod(join(bin, 'npx'), 0o755);
  const env = {
    PATH: [bin, dirname(process.execPath), '/usr/bin', '/bin'].join(delimiter),
    HOME: root,
    TMPDIR: tmpdir(),
    CI: 'true',
  };
  const run = (script: string, cwd: string): Promise<Shell> =>
    new Promise((resolve) => {
      const child = execFile('/bin/bash', ['-e', '-c', script], { cwd, env }, (_, out, err) => {
        resolve({ code: child.exitCode, said: out + err });
      });
    });
  const repositories = `
    git config --global user.name test
    git config --global user.email test@example.org
    git config --global init.defaultBranch main
    git init --quiet --bare private.git
    git init --quiet --bare public.git
    git clone --quiet private.git ferrywrights
    git clone --quiet public.git first
    echo checklist > first/README.txt
    git -C first add . && git -C first commit --quiet -m first && git -C first push --quiet`;
  expect(await run(`(${repositories}) 2>/dev/null`, root)).toMatchObject({ code: 0 });
  for (const [path, text] of content) {
    const place = join(root, 'ferrywrights', 'content', path);
    mkdirSync(dirname(place), { recursive: true });
    writeFileSync(place, text);
  }
  await run('git add . && git commit -q -m content && git push -q', join(root, 'ferrywrights'));
  const now = (at: number): void => {
    writeFileSync(join(root, 'now'), String(at));
  };
  return { root, run, now };
}

describe('the workflow', () => {
  let ground: Ground;
  beforeAll(async () => {
    ground = await groundWith(files);
  });
  afterAll(() => {
    rmSync(ground.root, { recursive: true, force: true });
  });

  /** A run on a fresh machine: both repositories are cloned, then come the steps with a script. */
  async function runAt(at: number): Promise<Shell> {
    ground.now(at);
    const machine = join(ground.root, 'machine');
    rmSync(machine, { recursive: true, force: true });
    await ground.run(
      'git clone -q private.git machine && git clone -q public.git machine/live',
      ground.root,
    );
    let said = '';
    for (const { name, run } of jobs.publish.steps) {
      if (run === undefined || name === 'Install') continue;
      const step = await ground.run(run, machine);
      said += step.said;
      if (step.code !== 0) return { code: step.code, said };
    }
    return { code: 0, said };
  }

  const commits = async (repository: string): Promise<number> =>
    Number((await ground.run(`git -C ${repository} rev-list --count HEAD`, ground.root)).said);

  async function siteText(): Promise<string> {
    await ground.run('rm -rf served && git clone -q public.git served', ground.root);
    const served = filesBelow(join(ground.root, 'served'));
    return [...served]
      .filter(([path]) => !path.startsWith('.git/'))
      .map(([path, bytes]) => `${path}\n${new TextDecoder().decode(bytes)}`)
      .join('\n');
  }

  it('publishes, does nothing until a lift has passed, and then publishes that', async () => {
    const first = await runAt(LIFT - 86_400_000);
    expect(first).toMatchObject({ code: 0 });
    expect([await commits('public.git'), await commits('private.git')]).toEqual([2, 2]);
    expect(await siteText()).not.toContain(HELD);

    const idle = await runAt(LIFT - 1000);
    expect(idle.code).toBe(0);
    expect(idle.said).toMatch(/^nothing has changed since .*: nothing was published\n$/);
    expect([await commits('public.git'), await commits('private.git')]).toEqual([2, 2]);

    expect(await runAt(LIFT)).toMatchObject({ code: 0 });
    expect([await commits('public.git'), await commits('private.git')]).toEqual([3, 3]);
    expect(await siteText()).toContain(HELD);
    expect(await siteText()).not.toMatch(/review\/|a2\.md|spoiler:/);
  });

  it('says nothing held when it refuses, and leaves the site as it was', async () => {
    const before = await siteText();
    const place = join(ground.root, 'ferrywrights');
    await ground.run('git pull -q', place);
    writeFileSync(
      join(place, 'content/one/cards/extra/b2.md'),
      '---\nnumber: X-1\nname: Ysolde Marrack\nspoiler: last\n---\nShe is the voice.\n',
    );
    await ground.run('git add . && git commit -q -m more && git push -q', place);
    expect(await runAt(LIFT)).toEqual({
      code: 1,
      said: 'nothing was published: something has a finding; run the check in private\n',
    });
    expect(await siteText()).toBe(before);
  });
});

describe('the line for cron', () => {
  it('publishes once, and is silent', async () => {
    const ground = await groundWith(files);
    try {
      const line = crontab.replace(/^(?:\S+ ){5}/, '');
      const place = join(ground.root, 'ferrywrights');
      const silent = { code: 0, said: '' };
      ground.now(LIFT - 1);
      expect(await ground.run(line, place)).toEqual(silent);
      expect(await ground.run(line, place)).toEqual(silent);
      expect(readdirSync(join(place, 'site.releases'))).toHaveLength(1);
      ground.now(LIFT);
      expect(await ground.run(line, place)).toEqual(silent);
      expect(readdirSync(join(place, 'site.releases'))).toHaveLength(2);
    } finally {
      rmSync(ground.root, { recursive: true, force: true });
    }
  });
});
