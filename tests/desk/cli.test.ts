import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import type { CardAnswer } from '../../pipeline/desk/protocol.js';
import { runMain } from '../cli/run-main.js';
import { DeskGround } from './ground.js';
import { SET_FILES } from './sample-files.js';

const BIN = fileURLToPath(new URL('../../pipeline/cli/bin.ts', import.meta.url));

let ground: DeskGround;
beforeAll(() => {
  ground = new DeskGround(SET_FILES);
});
afterAll(() => ground.end());

const run = (...args: readonly string[]): ReturnType<typeof runMain> =>
  runMain(['desk', '--no-open', ...args], ground.root, {
    XDG_STATE_HOME: join(ground.root, 'state'),
  });

/** What was written below a folder, in any folder. */
function filesBelow(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}

describe('the command', () => {
  it('says where it is, opens no browser that was not asked for, and ends with Ctrl-C with what was typed kept', async () => {
    const state = join(ground.root, 'state');
    const env = { ...process.env, XDG_STATE_HOME: state, PATH: process.env['PATH'] };
    const tsx = import.meta.resolve('tsx');
    const args = ['--import', tsx, BIN, 'desk', '--no-open', '--content', ground.content];
    const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'pipe'], env });
    const said = { out: '', err: '' };
    child.stderr.on('data', (bytes: Buffer) => (said.err += bytes.toString()));
    const address = await new Promise<URL>((resolve, reject) => {
      child.stdout.on('data', (bytes: Buffer) => {
        said.out += bytes.toString();
        const found = /http:\S+(?=\n)/.exec(said.out)?.[0];
        if (found !== undefined) resolve(new URL(found));
      });
      child.once('exit', () => {
        reject(new Error(said.err));
      });
    });
    expect(address.hostname).toBe('127.0.0.1');
    const headers = {
      'x-holdback-token': address.hash.replace('#token=', ''),
      'content-type': 'application/json',
      origin: address.origin,
    };
    const asked = await fetch(`${address.origin}/api/card?card=one/base/a1`, { headers });
    const card = (await asked.json()) as CardAnswer;
    const draft = { card: 'one/base/a1', base: card.digest, edit: { copy: 'Typed.' }, sequence: 1 };
    const body = JSON.stringify(draft);
    const sent = await fetch(`${address.origin}/api/draft`, { method: 'POST', headers, body });
    expect(sent.status).toBe(200);
    const ended = new Promise((resolve) => child.once('close', resolve));
    child.kill('SIGINT');
    expect([await ended, said.err]).toEqual([0, '']);
    expect(said.out).toBe(
      `the desk is open at ${address.href}\n` +
        'it is for you alone: whoever has this address can read all of the content\n',
    );
    const kept = filesBelow(state);
    expect(kept).toHaveLength(1);
    expect(readFileSync(kept[0] ?? '', 'utf8')).toContain('Typed.');
    expect(await fetch(address.origin).catch(() => null)).toBeNull();
  });

  it('says so where the port is taken', async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
    const place = other.address();
    const port = String(typeof place === 'object' ? place?.port : '');
    try {
      const { code, stdout, stderr } = await run('--port', port);
      expect([code, stdout]).toEqual([2, '']);
      expect(stderr).toContain(
        `--port ${port}: something else is served there; name another, or none for any free one`,
      );
      expect(stderr).not.toMatch(/\n\s+at /);
    } finally {
      other.close();
    }
  });

  it.each(['80808', '-1', 'x', '1.5', '1e3', ''])('takes no port %j', async (port) => {
    const { code, stderr } = await run(`--port=${port}`);
    expect(code).toBe(2);
    expect(stderr).toContain('a number from 0 to 65535');
  });
});
