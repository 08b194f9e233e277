import { execFile } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

import { afterAll, beforeAll, expect, test } from 'vitest';

import { demoFiles, placeContent } from '../demo/copy.js';

const run = promisify(execFile);
const root = fileURLToPath(new URL('../../', import.meta.url));
const place = mkdtempSync(join(tmpdir(), 'holdback-pack-'));
const packed = join(place, 'package');

beforeAll(async () => {
  const args = ['pack', '--ignore-scripts', '--pack-destination', place];
  await run('npm', args, { cwd: root });
  const [archive = ''] = readdirSync(place);
  await run('tar', ['-xzf', archive], { cwd: place });
  symlinkSync(join(root, 'node_modules'), join(place, 'node_modules'));
}, 240_000);

afterAll(() => {
  rmSync(place, { recursive: true, force: true });
});

test('the package holds the tool and its theme, and no content', () => {
  expect(readdirSync(packed).sort()).toStrictEqual([
    'LICENSE',
    'README.md',
    'RULES.md',
    'dist',
    'package.json',
    'recipes',
    'schema',
    'site',
  ]);
  expect(readdirSync(join(packed, 'dist')).sort()).toStrictEqual(['pipeline', 'schema']);
});

test('unpacked elsewhere, it checks a content, draws its deck and builds its site', async () => {
  await using placed = await placeContent(demoFiles({ art: true }));
  const holdback = (...args: string[]) =>
    run(process.execPath, [join(packed, 'dist/pipeline/cli/bin.js'), ...args], {
      cwd: placed.root,
      env: { PATH: process.env['PATH'] },
    });
  const checked = await holdback('check');
  expect(checked.stdout).toBe('188 cards in 2 sets: nothing found, 1 accepted\n');
  await holdback('proof', '--kind', 'deck', '--out', 'deck.pdf');
  const at = '2027-04-16T09:00:00+01:00[Europe/London]';
  await holdback('publish', '--preview', '--plain', '--at', at, '--out', 'site');
  expect(readdirSync(placed.root).sort()).toStrictEqual(['content', 'deck.pdf', 'site']);
  expect(readdirSync(join(placed.root, 'site'))).toContain('index.html');
}, 240_000);
