import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { root } from './files.js';

/** The last line and the exit code of a run of some of the seeds. */
function runOf(names: string): { last: string | undefined; code: number | null } {
  const args = ['run', '--config', 'tests/house/seeds/vitest.config.ts', ...names.split(' ')];
  const { stdout, status } = spawnSync(
    process.execPath,
    ['node_modules/vitest/vitest.mjs', ...args],
    {
      cwd: root,
      encoding: 'utf8',
      env: { PATH: process.env['PATH'] },
    },
  );
  return { last: stdout.trimEnd().split('\n').at(-1), code: status };
}

describe('the last line of a run', () => {
  test.each([
    ['passes', '1 passed, 0 failed', 0],
    // One failure for each of the four reasons there are.
    ['mixed does-not-load hook-throws loose-error', '4 passed, 4 failed, 1 skipped', 1],
    // The tests whose end nobody saw, and the process that was lost.
    ['dies', '0 passed, 3 failed', 1],
    ['no-such-file', '0 passed, 1 failed', 1],
  ])('of %s is %s', (names, last, code) => {
    expect(runOf(names)).toEqual({ last, code });
  });
});
