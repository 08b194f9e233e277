import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import { afterAll, beforeAll, expect, it } from 'vitest';

import { sampleWith } from '../../pipeline/checks/index.js';
import { placeContent, type Placed } from '../demo/copy.js';
import { runMain, type MainRun } from './run-main.js';

/** A name that leaves no trace for the public. */
const HELD = 'Ysolde Marrack';

let placed: Placed;
beforeAll(async () => {
  placed = await placeContent(
    sampleWith({
      'held.mjs': `export const held = '${HELD}';`,
      'names.yaml': `names:\n  - { name: ${HELD}, kind: character, level: last }\n`,
    }),
  );
});
afterAll(async () => {
  await placed[Symbol.asyncDispose]();
});

/** Publishes with a theme of one template, whose page is what a function body returns. */
async function publishWith(body: string, permalink = 'index.html'): Promise<MainRun> {
  const theme = join(placed.root, 'theme');
  rmSync(theme, { recursive: true, force: true });
  mkdirSync(theme);
  const template = `export const data = { permalink: ${JSON.stringify(permalink)} };
export async function render({ publicData }) { ${body} }
`;
  writeFileSync(join(theme, 'page.11ty.js'), template);
  return runMain(['publish', '--out', 'site', '--theme', 'theme'], placed.root);
}

const quoted = (...below: string[]): string =>
  JSON.stringify(join(placed.root, 'content', ...below));
const names = (): string => quoted('names.yaml');
const fs = `(await import('node:fs'))`;

const DENIED = /Access to this API has been restricted|ERR_ACCESS_DENIED|fs\.symlink API requires/;

it.each<[string, () => string, string?]>([
  ['reads a file of the content by fs', () => `return ${fs}.readFileSync(${names()}, 'utf8');`],
  ['lists the content by fs', () => `return ${fs}.readdirSync(${quoted()}).join();`],
  [
    'reads by a promise',
    () => `return (await import('node:fs/promises')).readFile(${names()}, 'utf8');`,
  ],
  ['imports a module', () => `return (await import(${quoted('held.mjs')})).held;`],
  ['makes a symbolic link', () => `${fs}.symlinkSync(${names()}, 'output/a.html'); return '';`],
  ['makes a hard link', () => `${fs}.linkSync(${names()}, 'output/a.html'); return '';`],
  ['copies a file', () => `${fs}.copyFileSync(${names()}, 'output/a.html'); return '';`],
  [
    'copies a folder',
    () => `${fs}.cpSync(${quoted()}, 'output/all', { recursive: true }); return '';`,
  ],
  ['writes above the site by its permalink', () => `return 'x';`, '../../escaped.html'],
  ['writes into the content by fs', () => `${fs}.writeFileSync(${names()}, 'x'); return '';`],
  [
    'starts a process',
    () => `const { execFileSync } = await import('node:child_process');
      return execFileSync('cat', [${names()}]).toString();`,
  ],
  [
    'starts a worker without the walls',
    () => `const { Worker } = await import('node:worker_threads');
      return await new Promise((resolve, reject) => {
        const worker = new Worker(
          'require("node:worker_threads").parentPort.postMessage(' +
            'require("node:fs").readFileSync(${names().replaceAll('"', '\\"')}, "utf8"))',
          { eval: true, execArgv: [], env: {} },
        );
        worker.once('message', resolve).once('error', reject);
      });`,
  ],
])('a theme that %s is refused, and nothing goes out', async (_, body, permalink) => {
  const run = await publishWith(body(), permalink);
  expect(run).toMatchObject({ code: 1, stdout: '' });
  expect(run.stderr).toMatch(DENIED);
  expect(run.stderr).not.toContain(HELD);
  expect(readdirSync(placed.root).sort()).toEqual(['content', 'theme']);
  expect(existsSync(join(placed.content, 'review'))).toBe(false);
});

it('a theme that has a held name of its own is stopped by the audit', async () => {
  const run = await publishWith(`return '<p title="ysolde&#32;MARRACK">1</p>';`);
  expect(run).toMatchObject({ code: 1, stdout: '' });
  expect(run.stderr).toContain('the finished site tells what is held');
  expect(readdirSync(placed.root).sort()).toEqual(['content', 'theme']);
});

it('the same theme without it goes out', async () => {
  const run = await publishWith(`return '<p>' + publicData.sets.length + '</p>';`);
  expect(run).toMatchObject({ code: 0, stderr: '' });
});
