import { basename, dirname, join, normalize } from 'node:path';

import { writeWhole, type Disk } from './disk.js';

/** Below a folder: hidden, so that no reader takes it for content. */
const JOURNAL = '.holdback-journal';

/** `writing`: the new files are not all there. `ready`: they are, and only have to be renamed. */
type State = 'writing' | 'ready';

/**
 * Writes several files below a folder, all or none of them: they are written beside their places
 * and synced, a journal names them, they are renamed, the journal goes. After a crash `settle`
 * finishes or undoes what it finds.
 * @param files bytes by path below the folder, parted by /.
 * @throws RangeError for a path that leads out of the folder, or what the disk throws.
 */
export function writeAll(disk: Disk, folder: string, files: ReadonlyMap<string, Uint8Array>): void {
  const paths = [...files.keys()];
  for (const path of paths) refuseOutside(path);
  note(disk, folder, 'writing', paths);
  for (const [path, bytes] of files) {
    disk.makeFolder(dirname(join(folder, path)));
    disk.writeSynced(beside(folder, path), bytes);
  }
  syncFolders(disk, folder, paths);
  note(disk, folder, 'ready', paths);
  finish(disk, folder, paths);
}

/**
 * Finishes or undoes what a process left that died while it wrote several files. Whoever is about to
 * write several files does this first, holding the lock of the folder.
 * @throws RangeError for a journal that is none or leads out of the folder, or what the disk throws.
 */
export function settle(disk: Disk, folder: string): 'nothing' | 'finished' | 'undone' {
  const journal = join(folder, JOURNAL);
  disk.remove(`${journal}.new`);
  if (disk.kind(journal) !== 'file') return 'nothing';
  const { state, paths } = readJournal(disk, journal);
  if (state === 'ready') {
    finish(disk, folder, paths);
    return 'finished';
  }
  for (const path of paths) disk.remove(beside(folder, path));
  forget(disk, folder);
  return 'undone';
}

function note(disk: Disk, folder: string, state: State, paths: readonly string[]): void {
  const text = [state, ...paths].map((line) => `${line}\n`).join('');
  writeWhole(disk, join(folder, JOURNAL), new TextEncoder().encode(text));
}

function readJournal(disk: Disk, journal: string): { state: State; paths: readonly string[] } {
  const [state, ...paths] = new TextDecoder()
    .decode(disk.read(journal))
    .split('\n')
    .filter((line) => line !== '');
  if (state !== 'writing' && state !== 'ready') {
    throw new RangeError(`${journal} is no journal: look at it and remove it`);
  }
  for (const path of paths) refuseOutside(path);
  return { state, paths };
}

/** What was renamed already is passed over, so that it can be done again from any point. */
function finish(disk: Disk, folder: string, paths: readonly string[]): void {
  for (const path of paths) {
    const fresh = beside(folder, path);
    if (disk.kind(fresh) === 'file') disk.rename(fresh, join(folder, path));
  }
  syncFolders(disk, folder, paths);
  forget(disk, folder);
}

function forget(disk: Disk, folder: string): void {
  disk.remove(join(folder, JOURNAL));
  disk.syncFolder(folder);
}

function syncFolders(disk: Disk, folder: string, paths: readonly string[]): void {
  for (const below of new Set(paths.map((path) => dirname(join(folder, path))))) {
    disk.syncFolder(below);
  }
}

function beside(folder: string, path: string): string {
  const place = join(folder, path);
  return join(dirname(place), `.${basename(place)}.new`);
}

function refuseOutside(path: string): void {
  const leadsOut = normalize(path) !== path || path.startsWith('..') || path.startsWith('/');
  if (leadsOut || path.includes('\n')) throw new RangeError(`${path} is no path below a folder`);
}
