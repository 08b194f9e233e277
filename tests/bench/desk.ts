import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import type { CardAnswer } from '../../pipeline/desk/protocol.js';
import { median, type Result } from './measure.js';

/** The card that is typed in, and how many letters. */
const CARD = 'set-1/base/c0500';
const LETTERS = 120;

/** Milliseconds before a letter: words of six letters, and now and then a thought. */
function pauseBefore(letter: number): number {
  if (letter % 30 === 0) return 1000;
  return letter % 6 === 0 ? 250 : 120;
}

/**
 * Milliseconds from a typed letter to the newly set back over HTTP, in a set of 1,000 cards, beside a
 * server that sends back what it is sent.
 */
export async function benchDesk(
  content: string,
): Promise<{ median: number; p95: number; beside: Result }> {
  const cli = fileURLToPath(new URL('../../pipeline/cli/bin.ts', import.meta.url));
  const bare = fileURLToPath(new URL('desk-bare.ts', import.meta.url));
  const least = await typedInto([bare]);
  const times = await typedInto([cli, '--content', content, 'desk', '--no-open']);
  const sorted = times.toSorted((a, b) => a - b);
  const typing = { median: median(times), p95: sorted[Math.floor(sorted.length * 0.95)] ?? NaN };
  return {
    ...typing,
    beside: {
      name: 'a letter typed at the desk, 1,000 cards',
      milliseconds: typing.median,
      floor: 'a server that sends it back',
      floorMilliseconds: median(least),
      goal: 50,
    },
  };
}

async function typedInto(args: readonly string[]): Promise<readonly number[]> {
  const state = mkdtempSync(join(tmpdir(), 'holdback-bench-'));
  const child = spawn(process.execPath, ['--import', import.meta.resolve('tsx'), ...args], {
    stdio: ['ignore', 'pipe', 'inherit'],
    env: { ...process.env, XDG_STATE_HOME: state },
  });
  try {
    const address = await new Promise<URL>((resolve, reject) => {
      child.stdout.on('data', (bytes: Buffer) => {
        const found = /http:\S+/.exec(bytes.toString())?.[0];
        if (found !== undefined) resolve(new URL(found));
      });
      child.once('exit', () => {
        reject(new Error('the desk ended'));
      });
    });
    return await times(address, args.length > 1);
  } finally {
    child.kill();
    rmSync(state, { recursive: true, force: true });
  }
}

async function times({ origin, hash }: URL, isDesk: boolean): Promise<readonly number[]> {
  const headers = {
    'x-holdback-token': hash.replace('#token=', ''),
    'content-type': 'application/json',
    origin,
  };
  // All rules have looked once, as on any desk that has been open for a moment.
  if (isDesk) await (await fetch(`${origin}/api/findings?card=${CARD}`, { headers })).json();
  const card = isDesk
    ? ((await (await fetch(`${origin}/api/card?card=${CARD}`, { headers })).json()) as CardAnswer)
    : null;
  const taken: number[] = [];
  for (let letter = 1; letter <= LETTERS; letter++) {
    await new Promise((resolve) => setTimeout(resolve, pauseBefore(letter)));
    const copy = `${card?.saved.copy ?? ''} ${'e'.repeat(letter)}`;
    const body = JSON.stringify({
      card: CARD,
      base: card?.digest,
      edit: { copy },
      sequence: letter,
    });
    const start = performance.now();
    const response = await fetch(`${origin}/api/draft`, { method: 'POST', headers, body });
    await response.json();
    taken.push(performance.now() - start);
    if (response.status !== 200) throw new Error(`the desk answered ${String(response.status)}`);
  }
  return taken;
}
