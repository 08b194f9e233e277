import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));

/** The files that are or would be in the repository: tracked ones and new ones not ignored. */
export function repositoryFiles(): string[] {
  const files = listed(['--cached', '--others', '--exclude-standard']);
  return [...new Set(files)].filter((file) => existsSync(join(root, file))).sort();
}

/** The files below some folders that git would leave out of the repository. */
export function ignoredFiles(folders: readonly string[]): string[] {
  return listed(['--others', '--ignored', '--exclude-standard', '--', ...folders]);
}

function listed(args: readonly string[]): string[] {
  // The folder may belong to another user than the one who runs the tests.
  const output = execFileSync('git', ['-c', 'safe.directory=*', 'ls-files', '-z', ...args], {
    cwd: root,
    encoding: 'utf8',
    env: { PATH: process.env['PATH'], HOME: root },
    maxBuffer: 64 * 1024 * 1024,
  });
  return output.split('\0').filter(Boolean);
}

export function read(file: string): string {
  return readFileSync(join(root, file), 'utf8');
}
