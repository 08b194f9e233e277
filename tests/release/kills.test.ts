import { spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isDeepStrictEqual } from 'node:util';

import { afterAll, beforeAll, expect, it } from 'vitest';

import { sendOut } from '../../pipeline/release/index.js';
import { realDisk, takeLock, thisProcess } from '../../pipeline/write/index.js';
import { filesBelow } from './site-at.js';
import { LARGE, LARGER, dataWith, card, recordOf, siteOf } from './small-site.js';

const SCRIPT = fileURLToPath(new URL('publish-on-and-on.mjs', import.meta.url));

/** Kills a process that publishes without end, so many milliseconds after it got going. */
async function killed(root: string, after: number): Promise<void> {
  const child = spawn(process.execPath, [SCRIPT, root, join(ground, 'sites.json')], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  child.stderr.on('data', (bytes: Buffer) => (said += bytes.toString()));
  const ended = new Promise<NodeJS.Signals | null>((resolve) => {
    child.once('exit', (_, signal) => {
      resolve(signal);
    });
  });
  await Promise.race([new Promise((resolve) => child.stdout.once('data', resolve)), ended]);
  await new Promise((resolve) => setTimeout(resolve, after));
  child.kill('SIGKILL');
  expect(await ended, said).toBe('SIGKILL');
}

/** Words by path. */
function wordsOf(files: ReadonlyMap<string, Uint8Array>): Record<string, string> {
  const decoder = new TextDecoder();
  return Object.fromEntries([...files].map(([path, bytes]) => [path, decoder.decode(bytes)]));
}

const WHOLE = [LARGE, LARGER].map((data) => wordsOf(siteOf(data)));
const SITES = [LARGE, LARGER].map((data, at) => ({
  record: recordOf(data, ['large', 'larger'][at] ?? ''),
  files: WHOLE[at],
}));
const NEXT = dataWith([card('1'), card('99')]);

function publishNext(root: string): void {
  const out = join(root, 'site');
  const lock = takeLock(realDisk, out, thisProcess, 0);
  if (!lock.free) throw new Error('locked');
  const order = { contentPath: join(root, 'content'), out, plain: false, at: 0 };
  const how = { earlier: true, takeBack: false, mayKeep: () => true };
  expect(sendOut(realDisk, { ...order, ...how }, recordOf(NEXT, 'next'), siteOf(NEXT)).is).toBe(
    'out',
  );
  lock.release();
}

let ground: string;
beforeAll(() => {
  ground = mkdtempSync(join(tmpdir(), 'holdback-kill-'));
  writeFileSync(join(ground, 'sites.json'), JSON.stringify(SITES));
});
afterAll(() => {
  rmSync(ground, { recursive: true, force: true });
});

it('20 real kills leave a whole site each, and the next publish succeeds', async () => {
  let interrupted = 0;
  const kill = async (number: number): Promise<void> => {
    const root = join(ground, String(number));
    await killed(root, (number * 13) % 97);
    const out = wordsOf(filesBelow(join(root, 'site')));
    const which = WHOLE.findIndex((files) => isDeepStrictEqual(out, files));
    expect(which, `kill ${String(number)}`).toBeGreaterThanOrEqual(0);
    if (readdirSync(root).includes('site.lock')) interrupted += 1;
    publishNext(root);
    expect(wordsOf(filesBelow(join(root, 'site')))).toEqual(wordsOf(siteOf(NEXT)));
    expect(readdirSync(root)).toEqual(['content', 'site', 'site.releases']);
  };
  const numbers = Array.from({ length: 20 }, (_, number) => number);
  for (let at = 0; at < numbers.length; at += 4) {
    await Promise.all(numbers.slice(at, at + 4).map(kill));
  }
  // They are killed in the middle of their work, or nothing is shown by what is whole.
  expect(interrupted).toBeGreaterThan(10);
}, 120_000);
