import { spawn } from 'node:child_process';
import { SiteError } from './site-error.js';

/** Longest that a theme may take. */
const PATIENCE_IN_MILLISECONDS = 10 * 60_000;
const MOST_SAID = 20_000;

/** Node 20 and 22 call the flag experimental, later versions do not. */
const PERMISSION = process.allowedNodeEnvironmentFlags.has('--permission')
  ? '--permission'
  : '--experimental-permission';

/**
 * Runs a script in a process that may read two folders, write to one, and start nothing: no other
 * process, no worker, no addon. Its environment is empty but for the switch that keeps Eleventy
 * from starting a worker. All paths are real paths: the permission model compares letters.
 *
 * @throws SiteError with what the process said, if it fails
 */
export async function runConfined(options: {
  readonly script: string;
  readonly folder: string;
  readonly modules: string;
  readonly output: string;
  /** Aborted if what it makes is no longer wanted: it is ended then. */
  readonly signal?: AbortSignal;
}): Promise<void> {
  const { script, folder, modules, output, signal } = options;
  for (const path of [folder, modules, output]) refuseWildcards(path);
  const child = spawn(
    process.execPath,
    [
      PERMISSION,
      `--allow-fs-read=${modules}/`,
      `--allow-fs-read=${folder}/`,
      `--allow-fs-write=${output}/`,
      script,
    ],
    {
      cwd: folder,
      env: { ELEVENTY_SKIP_ESM_RESOLVER: '1' },
      stdio: ['ignore', 'ignore', 'pipe'],
      timeout: PATIENCE_IN_MILLISECONDS,
      killSignal: 'SIGKILL',
      ...(signal && { signal }),
    },
  );
  let said = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    if (said.length < MOST_SAID) said += text;
  });
  const code = await new Promise<number | null>((resolve, reject) => {
    child.once('error', (error) => {
      // One that is no longer wanted is waited for: its folder is removed next.
      if (signal?.aborted !== true) reject(error);
    });
    child.once('close', resolve);
  });
  if (code !== 0) throw new SiteError(`the pages could not be made:\n${tidy(said, options)}`);
}

function refuseWildcards(path: string): void {
  if (/[*,]/.test(path)) {
    throw new SiteError(`${path}: a folder with * or , in its name cannot be walled in`);
  }
}

/** Without the paths of this machine, so that the same fault is said in the same words. */
function tidy(said: string, { folder, modules }: { folder: string; modules: string }): string {
  const lines = said
    .replaceAll(`${folder}/`, '')
    .replaceAll(`${modules}/`, '')
    .split('\n')
    .filter((line) => line.trim() !== '' && !/ExperimentalWarning|--trace-warnings/.test(line));
  return lines.join('\n').slice(0, MOST_SAID) || 'the process ended without a word';
}
