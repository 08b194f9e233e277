import { dirname, join } from 'node:path';

import { locked, refused, type Place, type Refused } from '../submission/index.js';
import { realDisk, writeAll, type Disk } from '../write/index.js';

/** A file as it was read, null if there was none, and as it is to be. */
export interface FileChange {
  readonly before: Uint8Array | null;
  readonly after: Uint8Array;
}

/**
 * Writes files below the content folder, all or none, while nobody else may. Refused if one of them
 * is not any more as it was read.
 * @throws what the disk throws.
 */
export async function writeChanges(
  place: Place,
  files: ReadonlyMap<string, FileChange>,
): Promise<{ readonly done: true } | Refused> {
  const { contentPath, disk = realDisk } = place;
  const review = join(contentPath, 'review');
  const isOurs = disk.kind(review) === null;
  try {
    return await writeLocked(place, files);
  } finally {
    // The lock lies there; a property that asks for no approvals has no such folder.
    if (isOurs && disk.kind(review) === 'folder' && disk.list(review).length === 0) {
      disk.remove(review);
    }
  }
}

function writeLocked(
  place: Place,
  files: ReadonlyMap<string, FileChange>,
): Promise<{ readonly done: true } | Refused> {
  return locked(place, (disk) => {
    const moved = [...files].filter(([path, { before }]) => !isAsRead(disk, place, path, before));
    if (moved.length > 0) {
      return refused(
        ...moved.map(([path]) => `${path} was changed in the meantime: nothing was written`),
      );
    }
    const after = new Map([...files].map(([path, change]) => [path, change.after]));
    writeAll(disk, place.contentPath, after);
    return { done: true } as const;
  });
}

function isAsRead(
  disk: Disk,
  { contentPath }: Place,
  path: string,
  before: Uint8Array | null,
): boolean {
  if (before === null) return disk.kind(join(contentPath, path)) === null;
  if (!isOwnFile(disk, contentPath, path)) return false;
  const now = disk.read(join(contentPath, path));
  return now.length === before.length && now.every((octet, at) => octet === before[at]);
}

/** Whether a path below the content folder is a file itself, and no link leads to it. */
export function isOwnFile(disk: Disk, contentPath: string, path: string): boolean {
  if (disk.kind(join(contentPath, path)) !== 'file') return false;
  for (let folder = dirname(path); folder !== '.'; folder = dirname(folder)) {
    if (disk.kind(join(contentPath, folder)) !== 'folder') return false;
  }
  return true;
}
