import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  statfsSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Where Linux keeps files in memory. */
const MEMORY = '/dev/shm';
/** More than all that tests have lying about at a time, in bytes. */
const ENOUGH = 2 * 1024 ** 3;
const NAME = /^holdback-tests-(\d+)$/;

/**
 * Gives the tests one folder for all that is temporary, and takes it away after them with whatever
 * they left. Contents of thousands of files are laid down hundreds of times, so it is in memory where
 * that has room for it.
 */
export default function setUp(): () => void {
  const place = fits(MEMORY) ? MEMORY : tmpdir();
  removeForgotten(place);
  const folder = join(place, `holdback-tests-${String(process.pid)}`);
  mkdirSync(folder, { mode: 0o700 });
  const before = process.env['TMPDIR'];
  process.env['TMPDIR'] = folder;
  return () => {
    if (before === undefined) delete process.env['TMPDIR'];
    else process.env['TMPDIR'] = before;
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  };
}

/** Whether there is room in a folder, and programs may be run from it, as some tests do. */
function fits(folder: string): boolean {
  if (!existsSync(folder)) return false;
  const { bavail, bsize } = statfsSync(folder);
  return bavail * bsize >= ENOUGH && runsPrograms(folder);
}

function runsPrograms(folder: string): boolean {
  try {
    const own = mkdtempSync(join(folder, 'holdback-look-'));
    const script = join(own, 'script');
    writeFileSync(script, '#!/bin/sh\n', { mode: 0o700 });
    const { status } = spawnSync(script);
    rmSync(own, { recursive: true });
    return status === 0;
  } catch {
    return false;
  }
}

/** Removes what was left by runs that were ended before they could do it. */
function removeForgotten(place: string): void {
  for (const name of readdirSync(place)) {
    const pid = NAME.exec(name)?.[1];
    if (pid !== undefined && !isRunning(Number(pid))) {
      rmSync(join(place, name), { recursive: true, force: true });
    }
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return !(error instanceof Error && 'code' in error && error.code === 'ESRCH');
  }
}
