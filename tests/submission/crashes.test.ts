import { cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';

import { afterEach, expect, it } from 'vitest';

import { diskFolder, readReview } from '../../pipeline/read/index.js';
import { recordAnswer, settleLeft, type Place } from '../../pipeline/submission/index.js';
import type { Asker, Disk } from '../../pipeline/write/index.js';
import { Died, dyingDisk, type Ending } from '../release/dying-disk.js';
import {
  NOW,
  QUAY,
  decisionOn,
  fileOf,
  placed,
  send,
  sentRecord,
  textsBelow,
  unsigned,
} from './ground.js';

/** Each process that dies is dead for the next. */
const asker = (pid: number): Asker => ({ pid, host: 'dock', runs: () => false });

let roots: string[] = [];
afterEach(() => {
  for (const root of roots) rmSync(root, { recursive: true, force: true });
  roots = [];
});

function kept(root: string): string {
  roots.push(root);
  return root;
}

function copyOf(start: string): string {
  const root = kept(mkdtempSync(join(tmpdir(), 'holdback-crash-')));
  cpSync(start, root, { recursive: true });
  return root;
}

type Run = (place: Place & { readonly contentPath: string }) => Promise<unknown>;

/** Dies at every call of the disk in turn; the next command leaves all of it or nothing. */
async function everyCrash(start: string, run: Run, ending: Ending): Promise<void> {
  const old = textsBelow(start);
  const whole = copyOf(start);
  const counting = dyingDisk(Infinity, 'before');
  await run({ contentPath: whole, now: NOW, disk: counting, asker: asker(1) });
  const all = textsBelow(whole);
  expect(all).not.toEqual(old);
  const left = new Set<string>();
  for (let at = 0; at < counting.calls(); at += 1) {
    const root = copyOf(start);
    const disk: Disk = dyingDisk(at, ending);
    await expect(run({ contentPath: root, now: NOW, disk, asker: asker(2) })).rejects.toThrow(Died);
    settleLeft({ contentPath: root, now: NOW, asker: asker(3) });
    const isAll = isDeepStrictEqual(visible(root), all);
    expect(visible(root), `call ${String(at)}`).toEqual(isAll ? all : old);
    expect(readReview(diskFolder(root)).faults, `call ${String(at)}`).toEqual([]);
    left.add(isAll ? 'all' : 'nothing');
    if (isAll) continue;
    await run({ contentPath: root, now: NOW, asker: asker(4) });
    expect(textsBelow(root), `call ${String(at)}`).toEqual(all);
    expect(existsSync(join(root, '.holdback-journal')), `call ${String(at)}`).toBe(false);
  }
  expect([...left].sort()).toEqual(['all', 'nothing']);
}

/** What a reader of content finds: nothing hidden, and no lock of the dead. */
function visible(root: string): Record<string, string> {
  return Object.fromEntries(
    Object.entries(textsBelow(root)).filter(
      ([path]) => !path.split('/').some((name) => name.startsWith('.')) && !path.includes('.lock'),
    ),
  );
}

it.each<Ending>(['before', 'halfway'])(
  'a record that dies at any call of the disk (%s) is there whole or not at all',
  async (ending) => {
    const root = kept(placed());
    const record = await sentRecord(root);
    const octets = fileOf(
      unsigned(record, [
        decisionOn(record, QUAY, 'copy', {
          decision: 'approved with changes',
          changes: [{ field: 'name', text: 'The Old Quay' }],
        }),
        decisionOn(record, QUAY, 'web'),
      ]),
    );
    await everyCrash(root, (place) => recordAnswer({ ...place, octets, dryRun: false }), ending);
  },
  120_000,
);

it.each<Ending>(['halfway'])(
  'a packet that dies at any call of the disk (%s) is in the ledger whole or not at all',
  async (ending) => {
    const root = kept(placed());
    await everyCrash(root, ({ contentPath, ...place }) => send(contentPath, place), ending);
  },
  120_000,
);

it('a packet whose file cannot be written is not in the ledger', async () => {
  const root = kept(placed());
  const before = textsBelow(root);
  const deliver = () => Promise.reject(new Error('the disk is full'));
  await expect(send(root, { deliver })).rejects.toThrow('the disk is full');
  expect(textsBelow(root)).toEqual(before);
});
