import { spawn } from 'node:child_process';
import { readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

import { afterAll, beforeAll, expect, test } from 'vitest';

import { benchProperty } from '../bench/property.js';
import { DEMO_NOW } from '../demo/day.js';
import { placeContent, type Placed } from '../demo/copy.js';

const root = fileURLToPath(new URL('../../', import.meta.url));
const cli = pathToFileURL(join(root, 'dist/pipeline/cli/index.js')).href;

/** The built command line in a process of its own, whose every step is said at once. */
const CHILD = `
const { main, processIo } = await import(${JSON.stringify(cli)});
let elapsed = 0;
const io = { ...processIo(${String(DEMO_NOW)}), terminal: true, elapsed: () => (elapsed += 1000) };
process.exitCode = await main(process.argv.slice(1), io);
`;

interface Stopped {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  /** What it said after it was interrupted, steps left out. */
  readonly said: string;
  readonly stdout: string;
}

/** Runs a command and presses Ctrl-C once it says that it is at a step. */
function stopAt(step: string, args: readonly string[], cwd: string): Promise<Stopped> {
  const child = spawn(process.execPath, ['--input-type=module', '-e', CHILD, '--', ...args], {
    cwd,
    env: { PATH: process.env['PATH'] ?? '', TMPDIR: tmpdir(), TZ: 'UTC' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let [stderr, stdout, isStopped] = ['', '', false];
  child.stdout.on('data', (data: Buffer) => (stdout += data.toString()));
  child.stderr.on('data', (data: Buffer) => {
    stderr += data.toString();
    if (isStopped || !stderr.includes(step)) return;
    isStopped = true;
    // Well within the step, whose first moments are not its work.
    setTimeout(() => child.kill('SIGINT'), 300);
  });
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (code, signal) => {
      const said = stderr.replace(/^.* …\n/gm, '');
      if (isStopped) resolve({ code, signal, said, stdout });
      else reject(new Error(`it never came to "${step}":\n${stderr.slice(-2000)}`));
    });
  });
}

let placed: Placed;
beforeAll(async () => {
  placed = await placeContent(benchProperty(600));
  const rows = Array.from({ length: 500 }, (_, at) => `base,${String(at + 1)},seen\r\n`);
  writeFileSync(join(placed.root, 'in.csv'), `Subset,Number,Remark\r\n${rows.join('')}`);
}, 60_000);
afterAll(() => placed[Symbol.asyncDispose]());

test.each([
  ['check', 'checking: ', []],
  ['proof', 'setting sheets', ['--out', 'sheets.pdf']],
  ['export', 'reading: ', ['cards.xlsx']],
  ['import', 'checking: ', ['in.csv', '--set', 'set-1', '--write']],
  ['publish', 'making pages', ['--out', 'site']],
  ['publish', 'reading and checking', ['--out', 'site']],
])(
  '%s is stopped at "%s" %j: one sentence, and nothing is left',
  async (command, step, args) => {
    const before = readdirSync(placed.root, { recursive: true }).sort();
    const stopped = await stopAt(step, [command, ...args], placed.root);
    expect(stopped).toEqual({
      code: 2,
      signal: null,
      said: 'cancelled: nothing was written\n',
      stdout: '',
    });
    expect(readdirSync(placed.root, { recursive: true }).sort()).toEqual(before);
  },
  120_000,
);
