import { createHash } from 'node:crypto';
import { join } from 'node:path';

import { PublicRelease } from '../../schema/index.js';
import { validate } from '../read/index.js';
import { realDisk, type Disk } from '../write/index.js';

/** How a folder differs from what its `release.json` says, each list in the order of the paths. */
export interface Verification {
  readonly release: PublicRelease;
  readonly missing: readonly string[];
  readonly changed: readonly string[];
  readonly extra: readonly string[];
}

/**
 * Compares a published folder, byte for byte, with what its `release.json` says. The folder itself
 * may be a link; below it none is followed: a link is no file of a site.
 * @returns null if there is no `release.json` that can be understood.
 */
export function verifySite(folder: string, disk: Disk = realDisk): Verification | null {
  const release = readRelease(folder, disk);
  if (release === null) return null;
  const stated = new Map(Object.entries({ ...release.kept, ...release.files }));
  const found = entriesBelow(disk, folder, '').filter((path) => path !== 'release.json');
  const there = new Set(found);
  return {
    release,
    missing: [...stated.keys()].filter((path) => !there.has(path)).sort(),
    changed: found.filter((path) => {
      const digest = stated.get(path);
      return digest !== undefined && digest !== digestOf(disk, join(folder, path));
    }),
    extra: found.filter((path) => !stated.has(path)),
  };
}

/** `release.json` of a folder, or null if it is not there or is none. */
export function readRelease(folder: string, disk: Disk): PublicRelease | null {
  const valid = validate(PublicRelease, readJson(join(folder, 'release.json'), disk));
  return valid.ok ? valid.value : null;
}

/** A file of JSON, or null if it is not there, is no file or no JSON. */
export function readJson(path: string, disk: Disk): unknown {
  if (disk.kind(path) !== 'file') return null;
  try {
    return JSON.parse(new TextDecoder().decode(disk.read(path)));
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}

/** Everything below a folder that is no folder, sorted. */
function entriesBelow(disk: Disk, folder: string, below: string): string[] {
  return disk
    .list(join(folder, below))
    .flatMap((name) => {
      const path = below === '' ? name : `${below}/${name}`;
      return disk.kind(join(folder, path)) === 'folder' ? entriesBelow(disk, folder, path) : [path];
    })
    .sort();
}

function digestOf(disk: Disk, path: string): string | null {
  if (disk.kind(path) !== 'file') return null;
  return createHash('sha256').update(disk.read(path)).digest('hex');
}
