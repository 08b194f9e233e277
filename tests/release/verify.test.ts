import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { afterEach, beforeEach, expect, it } from 'vitest';

import { verifySite } from '../../pipeline/release/index.js';
import { realDisk, stagePlain, stageSwap } from '../../pipeline/write/index.js';
import { card, dataWith, siteOf } from './small-site.js';

const files = siteOf(dataWith([card('1'), card('2')]));
let root: string;
let site: string;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'holdback-verify-'));
  site = join(root, 'site');
  stageSwap(realDisk, site, 'one', files)();
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
});

const fine = { missing: [], changed: [], extra: [] };

it('finds nothing in what was published: the link, a plain folder, a copy', () => {
  stagePlain(realDisk, join(root, 'plain'), files)();
  cpSync(site, join(root, 'copy'), { recursive: true, dereference: true });
  expect(['site', 'plain', 'copy'].map((name) => verifySite(join(root, name)))).toMatchObject([
    fine,
    fine,
    fine,
  ]);
});

it('tells what is missing, changed and extra, in order', () => {
  rmSync(join(site, 'high-water/crew/2'), { recursive: true });
  writeFileSync(join(site, 'index.html'), 'Card 1,Card 3');
  writeFileSync(join(site, 'high-water/old.html'), '');
  writeFileSync(join(site, '.hidden'), '');
  mkdirSync(join(site, 'empty'));
  expect(verifySite(site)).toMatchObject({
    missing: ['high-water/crew/2/index.html'],
    changed: ['index.html'],
    extra: ['.hidden', 'high-water/old.html'],
  });
});

it('follows no link below the folder, even to the same bytes', () => {
  cpSync(join(site, 'high-water'), join(root, 'elsewhere'), { recursive: true });
  cpSync(join(site, 'index.html'), join(root, 'index.html'));
  rmSync(join(site, 'high-water'), { recursive: true });
  rmSync(join(site, 'index.html'));
  symlinkSync(join(root, 'elsewhere'), join(site, 'high-water'));
  symlinkSync(join(root, 'index.html'), join(site, 'index.html'));
  expect(verifySite(site)).toMatchObject({
    missing: ['high-water/crew/1/index.html', 'high-water/crew/2/index.html'],
    changed: ['index.html'],
    extra: ['high-water'],
  });
});

it.each(['{', '[]', '{"format":1,"files":{}}'])('makes nothing of release.json: %s', (text) => {
  writeFileSync(join(site, 'release.json'), text);
  expect(verifySite(site)).toBeNull();
});

it('makes nothing of a folder without release.json', () => {
  rmSync(join(site, 'release.json'));
  expect(verifySite(site)).toBeNull();
});
