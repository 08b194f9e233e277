import { readFileSync, readdirSync, realpathSync, statSync, type Dirent } from 'node:fs';
import { join, sep } from 'node:path';

/** A file that a folder holds; `outside` if it is a link that leads out of the folder. */
export interface Entry {
  /** Relative to the folder, with /. */
  readonly path: string;
  readonly outside: boolean;
}

/** A folder to read from: the disk, or values in memory. */
export interface Folder {
  /** Every file below it, sorted by code unit. Names that begin with a dot are passed over. */
  list(): readonly Entry[];
  /** @throws if there is no such file, or it lies outside. */
  read(path: string): Uint8Array;
}

/**
 * A folder on disk.
 * @throws Error with `code` as of node:fs, from `list` and `read`.
 */
export function diskFolder(root: string): Folder {
  let known: string | undefined;
  const real = (): string => (known ??= realpathSync.native(root));
  return {
    list: () => listBelow(real(), '').sort(byPath),
    read: (path) => readFileSync(insideOf(real(), path)),
  };
}

/** A link may have been put there since the folder was listed, so the real place is looked at. */
function insideOf(root: string, path: string): string {
  const real = realpathSync.native(join(root, path));
  if (real.startsWith(root + sep)) return real;
  throw new Error(`${path} leads out of the folder`);
}

/** A folder of values: path to text or bytes. */
export function memoryFolder(files: ReadonlyMap<string, string | Uint8Array>): Folder {
  return {
    list: () => [...files.keys()].map((path) => ({ path, outside: false })).sort(byPath),
    read: (path) => {
      const bytes = files.get(path);
      if (bytes === undefined) throw new Error(`no file ${path}`);
      return typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes;
    },
  };
}

function byPath(a: Entry, b: Entry): number {
  return a.path < b.path ? -1 : a.path > b.path ? 1 : 0;
}

function listBelow(root: string, below: string): Entry[] {
  return readdirSync(join(root, below), { withFileTypes: true })
    .filter((entry) => !entry.name.startsWith('.'))
    .flatMap((entry) =>
      entriesOf(root, below === '' ? entry.name : `${below}/${entry.name}`, entry),
    );
}

function entriesOf(root: string, path: string, entry: Dirent): Entry[] {
  if (entry.isDirectory()) return listBelow(root, path);
  if (entry.isFile()) return [{ path, outside: false }];
  if (!entry.isSymbolicLink()) return [];
  const target = realTarget(join(root, path));
  if (target === null || !target.startsWith(root + sep)) return [{ path, outside: true }];
  return statSync(target).isDirectory() ? [{ path, outside: true }] : [{ path, outside: false }];
}

function realTarget(path: string): string | null {
  try {
    return realpathSync(path);
  } catch {
    return null;
  }
}
