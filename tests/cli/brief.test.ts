import { readFileSync, existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { sampleWith } from '../../pipeline/checks/index.js';
import { main } from '../../pipeline/cli/index.js';
import { placeContent, type Placed } from '../demo/copy.js';
import { DEMO_NOW } from '../demo/day.js';
import { runMain } from './run-main.js';

const LATER = '2027-06-04T20:00:00+01:00[Europe/London]';

let placed: Placed;
beforeAll(async () => {
  placed = await placeContent(
    sampleWith({
      'people.yaml': `people:
  - { id: jonah, name: Jonah Prewett, role: writer, clearance: last }
  - { id: nell, name: Nell Ode, role: publisher, clearance: later }
`,
    }),
  );
});
afterAll(async () => {
  await placed[Symbol.asyncDispose]();
});

const brief = (...more: string[]) => runMain(['brief', ...more], placed.root);

describe('brief', () => {
  it('is text, or a page', async () => {
    const text = await brief();
    expect(text).toMatchObject({ code: 0, stderr: '' });
    expect(text.stdout).toMatch(/^What may be said of The Lake from 1 September 2026, 09:00/);
    expect(await brief('--out', 'brief.html')).toEqual({
      code: 0,
      stdout: 'the brief is in brief.html\n',
      stderr: '',
    });
    expect(readFileSync(join(placed.root, 'brief.html'), 'utf8')).toContain('<h1>What may be said');
  });

  it.each([
    [['--at', LATER], 1, /still to come/],
    [['--at', LATER, '--preview'], 1, /still to come/],
    [['--at', LATER, '--preview', '--out', 'later.html'], 2, /shown on a terminal alone/],
    [['--passphrase-file', 'word'], 2, /leave out --passphrase-file/],
    [['--at', '2026-08-01T00:00:00+01:00[Europe/London]'], 1, /nothing of this property is public/],
  ])('%j is refused', async (args, code, stderr) => {
    const run = await brief(...args);
    expect(run).toMatchObject({ code, stdout: '' });
    expect(run.stderr).toMatch(stderr);
    expect(existsSync(join(placed.root, 'later.html'))).toBe(false);
  });

  it('for an instant to come is sealed with the passphrase of a file', async () => {
    writeFileSync(join(placed.root, 'word'), 'K7Q2M-00ABC-XYZ12\n');
    const args = ['--at', LATER, '--preview', '--out', 'later.html', '--passphrase-file', 'word'];
    expect((await brief(...args)).stderr).toMatch(/^--passphrase-file word: a passphrase has at/);
    writeFileSync(join(placed.root, 'word'), 'K7Q2M-00ABC-XYZ12-34567\n');
    expect(await brief(...args)).toMatchObject({ code: 0, stderr: '' });
    const page = readFileSync(join(placed.root, 'later.html'), 'utf8');
    expect(page).toContain('<title>A sealed page</title>');
    expect(page).not.toMatch(/Lake|Quay/);
  });

  it.each([
    [['--for', 'jonah'], 2, /is a sealed page: --out FILE is missing/],
    [['--for', 'jonah', '--out', 'own.html'], 2, /shown on a terminal alone/],
    [['--for', 'pim', '--out', 'own.html', '--passphrase-file', 'right'], 2, /knows no pim/],
    [
      [
        '--for',
        'nell',
        '--at',
        LATER,
        '--preview',
        '--out',
        'own.html',
        '--passphrase-file',
        'right',
      ],
      1,
      /something lifts until then for which they are not cleared/,
    ],
  ])('for a person, %j is refused', async (args, code, stderr) => {
    writeFileSync(join(placed.root, 'right'), 'K7Q2M-00ABC-XYZ12-34567\n');
    const run = await brief(...args);
    expect(run).toMatchObject({ code, stdout: '' });
    expect(run.stderr).toMatch(stderr);
    expect(run.stderr).not.toMatch(/Episode/);
    expect(existsSync(join(placed.root, 'own.html'))).toBe(false);
  });

  it('for a person is sealed, for today too', async () => {
    writeFileSync(join(placed.root, 'right'), 'K7Q2M-00ABC-XYZ12-34567\n');
    const args = ['--for', 'jonah', '--out', 'jonah.html', '--passphrase-file', 'right'];
    expect(await brief(...args)).toEqual({
      code: 0,
      stdout: 'the brief is in jonah.html\n',
      stderr: '',
    });
    const page = readFileSync(join(placed.root, 'jonah.html'), 'utf8');
    expect(page).toContain('<title>A sealed page</title>');
    expect(page).not.toMatch(/Lake|Quay|Prewett|raise/);
  });

  it('shows a new passphrase once, to a terminal', async () => {
    const said = { out: '', err: '' };
    const code = await main(['brief', '--at', LATER, '--preview', '--out', 'later.html'], {
      now: DEMO_NOW,
      cwd: placed.root,
      env: {},
      elapsed: () => 0,
      random: (octets) => new Uint8Array(octets).fill(10),
      terminal: true,
      out: (text) => (said.out += text),
      err: (text) => (said.err += text),
    });
    expect([code, said.out]).toEqual([0, 'the brief is in later.html\n']);
    expect(said.err).toBe(
      'it opens with AAAAA-AAAAA-AAAAA-AAAAA\n' +
        'Tell it by another way than the file. It is kept nowhere.\n',
    );
  });
});
