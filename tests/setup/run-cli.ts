import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
const bin = join(root, 'dist/pipeline/cli/bin.js');
const atInstant = join(root, 'tests/setup/cli-at.mjs');

/** Longer than any command takes, shorter than a test may take. */
const LONGEST = 50_000;

export type CliOptions = {
  /** The folder that the command runs in. */
  readonly cwd: string;
  /** Variables besides the stated ones; they win over these. */
  readonly env?: Readonly<Record<string, string>>;
  /** The instant that the command takes for now, in ms since 1970; without it, the real one. */
  readonly now?: number;
};

export type CliRun = {
  /** The exit code, or null if the command had to be stopped. */
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
};

/**
 * Runs the built `holdback` as a user would, without standard input, in a stated environment:
 * nothing of the surrounding one comes through, and the home folder is empty and thrown away, with
 * what is temporary in it.
 */
export async function runCli(args: readonly string[], options: CliOptions): Promise<CliRun> {
  if (!existsSync(bin)) throw new Error('dist is missing: run npm run build');
  const home = await mkdtemp(join(tmpdir(), 'holdback-home-'));
  try {
    const script = options.now === undefined ? [bin] : [atInstant, String(options.now)];
    return await runNode([...script, ...args], options.cwd, { ...stated(home), ...options.env });
  } finally {
    await rm(home, { recursive: true, force: true });
  }
}

/** The environment that a command under test sees, and nothing else. */
function stated(home: string): Record<string, string> {
  const PATH = [dirname(process.execPath), '/usr/bin', '/bin'].join(delimiter);
  return { PATH, HOME: home, TMPDIR: home, LANG: 'C.UTF-8', TZ: 'UTC', NO_COLOR: '1' };
}

function runNode(
  args: readonly string[],
  cwd: string,
  env: Record<string, string>,
): Promise<CliRun> {
  const limits = { timeout: LONGEST, killSignal: 'SIGKILL', maxBuffer: Infinity } as const;
  return new Promise((resolve) => {
    const child = execFile(
      process.execPath,
      args,
      { cwd, env, ...limits },
      (_error, stdout, stderr) => {
        resolve({ code: child.exitCode, stdout, stderr });
      },
    );
    child.stdin?.end();
  });
}
