import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';

import type { Disk } from './disk.js';

/** Who holds a lock: a process of a machine, since an instant in ms since 1970. */
export interface Holder {
  readonly pid: number;
  readonly since: number;
  readonly host: string;
}

/** The process that asks for a lock, and how it tells whether another one of its machine runs. */
export interface Asker {
  readonly pid: number;
  readonly host: string;
  readonly runs: (pid: number) => boolean;
}

/** A lock that is ours until it is released, or who holds it; null if what lies there is no lock. */
export type Lock =
  | { readonly free: true; release(): void }
  | { readonly free: false; readonly path: string; readonly holder: Holder | null };

/** This process. */
export const thisProcess: Asker = {
  pid: process.pid,
  host: hostname().replace(/[^A-Za-z0-9.]+/g, '-') || 'here',
  runs(pid) {
    try {
      process.kill(pid, 0);
      return true;
    } catch (error) {
      return error instanceof Error && 'code' in error && error.code === 'EPERM';
    }
  },
};

/**
 * Takes the lock of an output place, the folder `<out>.lock` beside it; the folder of `out` is made
 * if need be. Its one file is named by its holder, so that a lock left by a dead process is emptied
 * by name and taken over without a moment in which a living one could be removed: a folder is
 * renamed over another only where that is empty. A process of another machine counts as living.
 */
export function takeLock(disk: Disk, out: string, asker: Asker, since: number): Lock {
  const path = `${out}.lock`;
  const name = nameOf({ pid: asker.pid, since, host: asker.host });
  const mine = `${path}.${name}`;
  disk.makeFolder(dirname(out));
  removeLeftovers(disk, path, asker);
  disk.makeFolder(mine);
  disk.writeSynced(join(mine, name), new Uint8Array());
  for (let tries = 0; tries < 3; tries += 1) {
    if (renamed(disk, mine, path)) return { free: true, release: releaser(disk, path, mine, name) };
    const held = emptied(disk, path, asker);
    if (held !== undefined) {
      disk.remove(mine);
      return { free: false, path, holder: held };
    }
  }
  disk.remove(mine);
  return { free: false, path, holder: null };
}

/** Moved away before it is removed: nobody may come in between and lose a lock of its own. */
function releaser(disk: Disk, path: string, mine: string, name: string): () => void {
  return () => {
    if (disk.kind(join(path, name)) === null) return;
    disk.rename(path, mine);
    disk.remove(mine);
  };
}

/** False if something is in the way; any other error is thrown. */
function renamed(disk: Disk, from: string, to: string): boolean {
  try {
    disk.rename(from, to);
    return true;
  } catch (error) {
    if (disk.kind(to) === null) throw error;
    return false;
  }
}

/** Removes what dead processes left in a lock. Who still holds it, if anybody does. */
function emptied(disk: Disk, path: string, asker: Asker): Holder | null | undefined {
  if (disk.kind(path) !== 'folder') return null;
  for (const name of disk.list(path)) {
    const holder = holderOf(name);
    if (holder === null || lives(holder, asker)) return holder;
    disk.remove(join(path, name));
  }
  return undefined;
}

/** What processes left that died while they took or released the lock. */
function removeLeftovers(disk: Disk, path: string, asker: Asker): void {
  const start = `${basename(path)}.`;
  for (const name of disk.list(dirname(path))) {
    const holder = name.startsWith(start) ? holderOf(name.slice(start.length)) : null;
    if (holder && !lives(holder, asker)) disk.remove(join(dirname(path), name));
  }
}

function lives(holder: Holder, asker: Asker): boolean {
  return holder.host !== asker.host || asker.runs(holder.pid);
}

function nameOf({ pid, since, host }: Holder): string {
  return `${String(pid)}_${String(since)}_${host}`;
}

function holderOf(name: string): Holder | null {
  const [, pid, since, host] = /^(\d+)_(-?\d+)_([A-Za-z0-9.-]+)$/.exec(name) ?? [];
  if (pid === undefined || since === undefined || host === undefined) return null;
  return { pid: Number(pid), since: Number(since), host };
}
