import { join } from 'node:path';

import type { Instant } from '../model/index.js';
import { realDisk, settle, takeLock, thisProcess, type Asker, type Disk } from '../write/index.js';

/** Below the content folder. */
export const LEDGER = 'review/ledger.jsonl';

/** Where a command writes, as whom, and when. */
export interface Place {
  /** The content folder on the disk. */
  readonly contentPath: string;
  readonly now: Instant;
  readonly disk?: Disk;
  /** The process that writes; this one, if it is not said. */
  readonly asker?: Asker;
}

/** Refused, with a sentence for each reason. */
export interface Refused {
  readonly done: false;
  readonly why: readonly string[];
}

export function refused(...why: readonly string[]): Refused {
  return { done: false, why };
}

/**
 * Does something that reads and writes below the content folder while nobody else may. What a process
 * left that died while it wrote is finished or undone before.
 */
export async function locked<T>(
  place: Place,
  run: (disk: Disk) => Promise<T> | T,
): Promise<T | Refused> {
  const { contentPath, now, disk = realDisk, asker = thisProcess } = place;
  const lock = takeLock(disk, join(contentPath, LEDGER), asker, now);
  if (!lock.free) {
    return refused(`the ledger is being written by somebody else; if not, remove ${lock.path}`);
  }
  try {
    settle(disk, contentPath);
    return await run(disk);
  } finally {
    lock.release();
  }
}

/**
 * Finishes or undoes what a process left that died while it wrote several files, unless somebody is
 * at it: what is done before content is read.
 */
export function settleLeft(place: Place): void {
  const { contentPath, now, disk = realDisk, asker = thisProcess } = place;
  if (disk.kind(join(contentPath, '.holdback-journal')) === null) return;
  const lock = takeLock(disk, join(contentPath, LEDGER), asker, now);
  if (!lock.free) return;
  try {
    settle(disk, contentPath);
  } finally {
    lock.release();
  }
}
