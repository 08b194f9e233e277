import { main } from '../../pipeline/cli/index.js';
import { DEMO_NOW } from '../demo/day.js';

/** What a command printed, and its exit code. */
export interface MainRun {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs a command in this process, in a stated environment; on the demo's day, unless another is said. */
export async function runMain(
  args: readonly string[],
  cwd: string,
  env: Readonly<Record<string, string>> = {},
  now: number = DEMO_NOW,
): Promise<MainRun> {
  const said = { stdout: '', stderr: '' };
  const code = await main(args, {
    now,
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
