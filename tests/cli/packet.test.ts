import { execFileSync } from 'node:child_process';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import { afterEach, beforeEach, expect, it } from 'vitest';

import { instantOf } from '../../pipeline/model/index.js';
import { openBrowser } from '../site/support.js';
import { programPath } from '../setup/programs.mjs';
import { runCli, type CliRun } from '../setup/run-cli.js';
import { placed, textsBelow } from '../submission/ground.js';

const NOW = instantOf('2027-01-11T10:00:00+00:00[Europe/London]');
const PASSPHRASE = '7QK2M-00ABC-XYZ12-34567';
const UNTIL = '2027-03-12T10:00:00+00:00[Europe/London]';

let root: string;
beforeEach(() => {
  root = placed();
  writeFileSync(join(root, '.passphrase'), PASSPHRASE);
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
});

const packet = (...args: string[]): Promise<CliRun> =>
  runCli(['packet', '--content', '.', '--for', 'amara', ...args], { cwd: root, now: NOW });
const SEALED = ['--passphrase-file', '.passphrase'];

it('makes a page that opens with its passphrase, and puts it into the ledger', async () => {
  expect(await packet('--out', '.p.html', ...SEALED)).toEqual({
    code: 0,
    stdout: `packet amara-1 is in .p.html: 2 texts, 8 parts to decide on, until ${UNTIL}\n`,
    stderr: '',
  });
  const html = readFileSync(join(root, '.p.html'), 'utf8');
  for (const told of ['Quay', 'amara', 'Amara', 'Lake', PASSPHRASE])
    expect(html).not.toContain(told);
  const browser = await openBrowser();
  try {
    const page = await browser.newPage();
    await page.goto(`file://${join(root, '.p.html')}`);
    await page.fill('#passphrase', PASSPHRASE);
    await page.keyboard.press('Enter');
    await page.locator('#card h2').waitFor();
    expect(await page.locator('#card h2').textContent()).toBe('1 The Quay');
    expect(await page.locator('#card .whose').textContent()).toBe('For Amara Linde · submission 1');
  } finally {
    await browser.close();
  }
  expect(Object.keys(textsBelow(root))).toContain('review/packets/amara-1.json');
});

it('makes a PDF that opens with its passphrase', async () => {
  expect((await packet('--out', '.p.pdf', '--as', 'pdf', ...SEALED)).code).toBe(0);
  const file = join(root, '.p.pdf');
  const read = (...args: string[]): string =>
    execFileSync(programPath('pdftotext'), [...args, file, '-'], {
      encoding: 'utf8',
      stdio: 'pipe',
    });
  expect(() => read()).toThrow();
  expect(read('-upw', PASSPHRASE)).toContain('The Quay');
});

it('can be of some parts until a day', async () => {
  const asked = ['--parts', 'copy, web', '--subset', 'base', '--expires', '2027-05-01'];
  expect(await packet('--out', '.p.html', ...asked, ...SEALED)).toMatchObject({
    code: 0,
    stdout: expect.stringContaining(
      '2 texts, 4 parts to decide on, until 2027-05-02T00:59:59+01:00',
    ),
  });
});

it.each<[string, string[], number, string]>([
  ['nothing to decide on', ['--subset', 'extra', ...SEALED], 1, 'no packet was made\n  there is'],
  ['no passphrase', [], 2, 'a sealed file needs a passphrase'],
  ['no part', ['--parts', 'copy,words', ...SEALED], 2, '--parts words: it is copy or image'],
  ['no day', ['--expires', 'soon', ...SEALED], 2, 'Write it like 2027-05-01.'],
  ['no form', ['--as', 'doc', ...SEALED], 2, '--as doc: it is html or pdf'],
])('says why there is none, and writes nothing: %s', async (_, args, code, said) => {
  const before = textsBelow(root);
  expect(await packet('--out', '.p.html', ...args)).toMatchObject({
    code,
    stdout: '',
    stderr: expect.stringContaining(said),
  });
  expect(textsBelow(root)).toEqual(before);
});
