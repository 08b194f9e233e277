import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { afterEach, beforeEach, expect, it } from 'vitest';

import { realDisk, takeLock, thisProcess, type Asker } from '../../pipeline/write/index.js';

let root: string;
let out: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'holdback-lock-'));
  out = join(root, 'site');
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
});

const living = new Set<number>();
const asker = (pid: number, host = 'dock'): Asker => ({
  pid,
  host,
  runs: (other) => living.has(other),
});
const take = (who: Asker, since = 0) => takeLock(realDisk, out, who, since);

beforeEach(() => {
  living.clear();
});

it('is beside the place, is one’s own, and leaves nothing', () => {
  const lock = take(asker(1));
  expect(readdirSync(root)).toEqual(['site.lock']);
  if (lock.free) lock.release();
  expect(readdirSync(root)).toEqual([]);
});

it('says who holds it, and can be taken once it is released', () => {
  living.add(1);
  const first = take(asker(1), 99);
  expect(take(asker(2))).toEqual({
    free: false,
    path: `${out}.lock`,
    holder: { pid: 1, since: 99, host: 'dock' },
  });
  expect(readdirSync(root)).toEqual(['site.lock']);
  if (first.free) first.release();
  expect(take(asker(2)).free).toBe(true);
});

it('is taken over from a dead process, which then takes nothing away', () => {
  const dead = take(asker(1));
  const lock = take(asker(2));
  expect(lock.free).toBe(true);
  if (dead.free) dead.release();
  living.add(2);
  expect(take(asker(3))).toMatchObject({ free: false, holder: { pid: 2 } });
});

it('is not taken over by one that read it before another took it over', () => {
  take(asker(1));
  let first = true;
  const disk = {
    ...realDisk,
    remove(path: string) {
      if (first && path.includes('1_0_dock')) {
        first = false;
        expect(take(asker(2)).free).toBe(true);
        living.add(2);
      }
      realDisk.remove(path);
    },
  };
  expect(takeLock(disk, out, asker(3), 0)).toMatchObject({ free: false, holder: { pid: 2 } });
});

it('of another machine counts as held', () => {
  take(asker(1, 'quay'));
  expect(take(asker(2))).toMatchObject({ free: false, holder: { pid: 1, host: 'quay' } });
});

it('is refused where something else lies in the way, and leaves that alone', () => {
  writeFileSync(`${out}.lock`, 'mine');
  expect(take(asker(1))).toEqual({ free: false, path: `${out}.lock`, holder: null });
  rmSync(`${out}.lock`);
  mkdirSync(join(`${out}.lock`, 'things'), { recursive: true });
  expect(take(asker(1))).toEqual({ free: false, path: `${out}.lock`, holder: null });
  expect(readdirSync(`${out}.lock`)).toEqual(['things']);
});

it('tells a process that runs from one that has ended', () => {
  const { pid } = spawnSync(process.execPath, ['--version']);
  expect([process.pid, process.ppid, pid].map(thisProcess.runs)).toEqual([true, true, false]);
});
