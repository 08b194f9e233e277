import { main } from '../../pipeline/cli/index.js';
import { DEMO_NOW } from '../demo/day.js';

/** What a command printed, and its exit code. */
export interface MainRun {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs a command in this process, on the demo's day, in a stated environment. */
export async function runMain(
  args: readonly string[],
  cwd: string,
  env: Readonly<Record<string, string>> = {},
): Promise<MainRun> {
  const said = { stdout: '', stderr: '' };
  const code = await main(args, {
    now: DEMO_NOW,
    cwd,
    env,
    elapsed: () => 0,
    random: (octets) => new Uint8Array(octets).fill(7),
    terminal: false,
    out: (text) => {
      said.stdout += text;
    },
    err: (text) => {
      said.stderr += text;
    },
  });
  return { code, ...said };
}
