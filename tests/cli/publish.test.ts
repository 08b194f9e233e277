import { readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';

import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { sampleWith } from '../../pipeline/checks/index.js';
import { edited } from '../../pipeline/checks/sample.js';
import { placeContent, type Placed } from '../demo/copy.js';
import { DEMO_NOW } from '../demo/day.js';
import { filesBelow } from '../release/site-at.js';
import { runMain, type MainRun } from './run-main.js';

const AS_OF = '2026-10-01T09:00:00+01:00[Europe/London]';

/** The sample property, whose site shows bios and which has begun a month before. */
const files = sampleWith(
  edited(
    'property.yaml',
    ['approvals: none', 'approvals: none\nsite: { shows: { bio: full } }'],
    [
      '  - { id: later,',
      '  - { id: sooner, label: A fair, lift: "2026-10-01T09:00:00+01:00[Europe/London]" }\n  - { id: later,',
    ],
  ),
);

let placed: Placed;
let first: MainRun;
beforeAll(async () => {
  placed = await placeContent(files);
  first = await publish();
});
afterAll(async () => {
  await placed[Symbol.asyncDispose]();
});

const publish = (...more: string[]): Promise<MainRun> =>
  runMain(['publish', '--out', 'site', ...more], placed.root);
const verify = (dir: string): Promise<MainRun> =>
  runMain(['publish', '--verify', dir], placed.root);
const fine = (stdout: string): MainRun => ({ code: 0, stdout, stderr: '' });
const refused = (stderr: string): MainRun => ({ code: 1, stdout: '', stderr });
/** How many files are out, by a count of our own. */
const fileCount = (more = 0): string => String(filesBelow(join(placed.root, 'site')).size + more);
const records = (): string[] => readdirSync(join(placed.content, 'review', 'releases'));

describe('publish', () => {
  it('says how many files of which step are where, and leaves no lock', () => {
    expect(first).toEqual(fine(`published: ${fileCount()} files as of ${AS_OF} in site\n`));
    expect(readdirSync(placed.root)).toEqual(['content', 'site', 'site.releases']);
  });

  it('says so if nothing has changed, and keeps no second record', async () => {
    const said = fine(`nothing has changed since ${AS_OF}: nothing was published\n`);
    expect(await publish()).toEqual(said);
    expect(await publish('--take-back')).toEqual(said);
    expect(records()).toHaveLength(1);
  });

  it('refuses while another process publishes, and says what to do', async () => {
    const host = hostname().replace(/[^A-Za-z0-9.]+/g, '-');
    const since = Date.parse('2027-03-30T10:58:00Z');
    const lock = join(placed.root, 'site.lock');
    await mkdir(join(lock, `${String(process.ppid)}_${String(since)}_${host}`), {
      recursive: true,
    });
    expect(await publish()).toEqual(
      refused(
        `nothing was published: process ${String(process.ppid)} on ${host} has been publishing ` +
          'into site since 2027-03-30T10:58:00.000Z; wait until it ends, or end it, and publish ' +
          `again. If there is no such process, remove ${lock}\n`,
      ),
    );
    rmSync(lock, { recursive: true });
  });

  it('lets one of two at once through', async () => {
    const [one, two] = await Promise.all([publish(), publish()]);
    expect([one.code, two.code]).toEqual([0, 1]);
    expect(two.stderr).toContain(`process ${String(process.pid)} `);
    expect(two.stderr).toContain(`since ${new Date(DEMO_NOW).toISOString()}`);
  });

  it('refuses an earlier instant, and says what would go', async () => {
    const run = await publish('--at', '2026-09-01T09:00:00+01:00[Europe/London]');
    expect(run).toMatchObject({ code: 1, stdout: '' });
    expect(run.stderr.split('\n')[0]).toBe(
      `nothing was published into site: its last release is as of ${AS_OF}, which is later`,
    );
  });
});

describe('publish --preview', () => {
  const later = ['--preview', '--at', '2027-06-04T20:00:00+01:00[Europe/London]'];

  it('never takes the place of what the public sees', async () => {
    const before = fileCount();
    expect(await publish(...later)).toEqual(
      refused('what the public sees is in site: give a preview a place of its own\n'),
    );
    expect([fileCount(), records().length]).toEqual([before, 1]);
    const path = join(placed.root, 'site', 'release.json');
    const whole = readFileSync(path);
    writeFileSync(path, '{');
    expect((await publish(...later)).code).toBe(1);
    writeFileSync(path, whole);
  });

  it('has a place of its own, in which one takes the place of another', async () => {
    for (let times = 0; times < 2; times += 1) {
      const run = await runMain(['publish', '--out', 'later', ...later], placed.root);
      expect(run.code).toBe(0);
    }
    for (const left of ['later', 'later.releases']) {
      rmSync(join(placed.root, left), { recursive: true });
    }
    for (const record of records().filter((name) => name.includes('preview'))) {
      rmSync(join(placed.content, 'review', 'releases', record));
    }
  });
});

describe('publish with a ledger that cannot be trusted', () => {
  it('is refused, and says where it breaks', async () => {
    const path = join(placed.content, 'review', 'ledger.jsonl');
    writeFileSync(path, '{"kind":"dreamt"}\n');
    const run = await publish();
    expect(run).toMatchObject({ code: 1, stdout: '' });
    expect(run.stderr).toMatch(
      /^nothing was published: what is kept in review\/ cannot be trusted\n/,
    );
    expect(run.stderr).toContain('review/ledger.jsonl:1: ');
    expect(await publish('--discreet')).toEqual(
      refused('nothing was published: something has a finding; run the check in private\n'),
    );
    rmSync(path);
  });
});

describe('publish --verify', () => {
  it('finds nothing in what was published', async () => {
    expect(await verify('site')).toEqual(
      fine(`site is what its release.json says: ${fileCount(-1)} files as of ${AS_OF}\n`),
    );
  });

  it('says what is not as it was', async () => {
    const path = join(placed.root, 'site', 'about', 'index.html');
    const page = readFileSync(path);
    const note = join(placed.root, 'site', 'note.txt');
    writeFileSync(path, 'Hello');
    writeFileSync(note, 'Hello');
    expect(await verify('site')).toEqual({
      code: 1,
      stdout:
        'site is not what its release.json says\n' +
        'changed:\n  about/index.html\nextra:\n  note.txt\n',
      stderr: '',
    });
    writeFileSync(path, page);
    rmSync(note);
  });

  it.each([
    [
      ['--verify', 'content'],
      1,
      'content has no release.json that can be read: it is no published folder, or a broken one\n',
    ],
    [
      ['--verify', 'nowhere'],
      2,
      'there is no folder nowhere: name a published one after --verify\n',
    ],
    [
      ['--verify', 'site', '--out', 'other'],
      2,
      '--verify publishes nothing: leave out --out, or leave out --verify\n',
    ],
  ])('%j', async (args, code, stderr) => {
    expect(await runMain(['publish', ...args], placed.root)).toEqual({ code, stdout: '', stderr });
  });
});

describe('publish --rehearse', () => {
  const WHERE = 'the record is in review/rehearsal.json\n';

  it('says of each lift whether it would go out, and publishes nothing', async () => {
    const run = await runMain(['publish', '--rehearse', '--out', 'private'], placed.root);
    expect(run).toMatchObject({ code: 0, stderr: '' });
    expect(run.stdout.replace(/[0-9a-f]{64}/g, 'DIGEST')).toBe(
      'INTERNAL\n' +
        '16 April 2027, 20:00: would go out, digest DIGEST\n' +
        '4 June 2027, 20:00: would go out, digest DIGEST\n' +
        '5 June 2027, 09:00: would go out, digest DIGEST\n' +
        `the sites are in private: they tell what is held\n${WHERE}`,
    );
    expect(records()).toHaveLength(1);
    rmSync(join(placed.root, 'private'), { recursive: true });
  });

  it('says where others read the log no more than that it was done', async () => {
    const run = await runMain(['publish', '--rehearse', '--discreet'], placed.root);
    expect(run).toEqual(fine(`rehearsed: ${WHERE}`));
  });

  it('takes no instant', async () => {
    expect(await runMain(['publish', '--rehearse', '--at', AS_OF], placed.root)).toEqual({
      code: 2,
      stdout: '',
      stderr: '--rehearse takes every lift to come: leave out --at\n',
    });
  });
});

describe('a release that shows less', () => {
  const goes = '  one/base 1: bio\n';

  beforeAll(() => {
    const path = join(placed.content, 'one/cards/base/a1.md');
    const text = readFileSync(path, 'utf8');
    writeFileSync(
      path,
      text.replace(/^---\n([\s\S]*?)\n---\n[\s\S]*$/, '---\n$1\nbio: none\n---\n'),
    );
  });

  it('is refused, with what would go', async () => {
    expect(await publish()).toEqual(
      refused(
        `nothing was published into site\nthis would go:\n${goes}` +
          '--earlier publishes it all the same; --take-back too, and lists what to purge from caches\n',
      ),
    );
  });

  it('is refused where others read the log with the one sentence', async () => {
    expect(await publish('--discreet')).toEqual(
      refused('nothing was published: something has a finding; run the check in private\n'),
    );
    expect(records()).toHaveLength(1);
  });

  it('is taken back, with what caches must forget', async () => {
    const run = await publish('--take-back');
    expect(run).toEqual(
      fine(
        `published: ${fileCount()} files as of ${AS_OF} in site\ntaken back:\n${goes}purge from caches:\n` +
          [
            ...['data.json', 'one/base/1/', 'one/base/1/index.html', 'one/checklist.json'],
            ...['sw.js', 'release.json'],
          ]
            .map((path) => `  /${path}\n`)
            .join(''),
      ),
    );
  });

  it('is taken back where others read the log with the lists in the record alone', async () => {
    const path = join(placed.content, 'one/cards/base/a2.md');
    const text = readFileSync(path, 'utf8');
    writeFileSync(
      path,
      text.replace(/^---\n([\s\S]*?)\n---\n[\s\S]*$/, '---\n$1\nbio: none\n---\n'),
    );
    const before = new Set(records());
    const run = await publish('--take-back', '--discreet');
    const [record = ''] = records().filter((name) => !before.has(name));
    expect(run).toEqual(
      fine(
        `published: ${fileCount()} files as of ${AS_OF} in site\n` +
          `what to purge from caches is in review/releases/${record}\n`,
      ),
    );
    const kept: unknown = JSON.parse(
      readFileSync(join(placed.content, 'review', 'releases', record), 'utf8'),
    );
    expect(kept).toMatchObject({ takenBack: { parts: ['one/base 2: bio'] } });
  });
});
