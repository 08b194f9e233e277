import { basename, dirname, join } from 'node:path';

import type { Disk } from './disk.js';

/** The place that was given for output cannot be used; the message says why and what to do. */
export class PlaceError extends Error {
  override readonly name = 'PlaceError';
}

/**
 * Writes a finished site beside its place. `out` is a relative link into `out.releases/`; a new link
 * is renamed over it, so that a reader sees the whole old site or the whole new one.
 * @param name what this release is called: letters, digits and hyphens. If the site that is out has
 *   this name already, the new one is called otherwise: what is out is never written to.
 * @returns what puts the site in place.
 * @throws PlaceError if `out` is a folder with something in it, a file, or a link of another kind.
 */
export function stageSwap(
  disk: Disk,
  out: string,
  name: string,
  files: ReadonlyMap<string, Uint8Array>,
): () => void {
  const releases = `${out}.releases`;
  const before = currentRelease(disk, out, releases);
  const fresh = before === name ? `${name}-again` : name;
  const place = join(releases, fresh);
  disk.remove(place);
  disk.remove(`${place}.new`);
  writeTree(disk, `${place}.new`, files);
  disk.rename(`${place}.new`, place);
  disk.syncFolder(releases);
  return () => {
    const link = `${out}.new`;
    disk.remove(link);
    disk.link(join(basename(releases), fresh), link);
    if (disk.kind(out) === 'folder') disk.remove(out);
    disk.rename(link, out);
    disk.syncFolder(dirname(out));
    forgetOlder(disk, releases, new Set([fresh, before ?? fresh]));
  };
}

/**
 * Writes a site beside a folder that is empty or not there. What is returned puts it in place.
 * @param eyes whether anybody or only its owner can look into the folder.
 */
export function stagePlain(
  disk: Disk,
  out: string,
  files: ReadonlyMap<string, Uint8Array>,
  eyes: 'all' | 'private' = 'all',
): () => void {
  refuseUnlessFree(disk, out);
  const beside = `${out}.new`;
  disk.remove(beside);
  if (eyes === 'private') disk.makePrivateFolder(beside);
  writeTree(disk, beside, files);
  return () => {
    disk.remove(out);
    disk.rename(beside, out);
    disk.syncFolder(dirname(out));
  };
}

/** Whether a site can be put at a place; said before any work is done for it. */
export function refuseBadPlace(disk: Disk, out: string, plain: boolean): void {
  if (plain) refuseUnlessFree(disk, out);
  else currentRelease(disk, out, `${out}.releases`);
}

function refuseUnlessFree(disk: Disk, out: string): void {
  const kind = disk.kind(out);
  if (kind === null || (kind === 'folder' && disk.list(out).length === 0)) return;
  throw new PlaceError(`${out} is not an empty folder. Give a new one, or empty it first.`);
}

function currentRelease(disk: Disk, out: string, releases: string): string | null {
  const kind = disk.kind(out);
  if (kind === null || (kind === 'folder' && disk.list(out).length === 0)) return null;
  if (kind !== 'link') {
    throw new PlaceError(
      `${out} is there already and is no release. Give a new folder, or empty it, or use --plain.`,
    );
  }
  const target = disk.readLink(out);
  if (dirname(target) !== basename(releases)) {
    throw new PlaceError(`${out} is a link to ${target}, not to a release. Give another folder.`);
  }
  return basename(target);
}

function writeTree(disk: Disk, folder: string, files: ReadonlyMap<string, Uint8Array>): void {
  disk.makeFolder(folder);
  const folders = new Set([...files.keys()].map((path) => dirname(join(folder, path))));
  for (const below of folders) disk.makeFolder(below);
  for (const [path, bytes] of files) disk.writeSynced(join(folder, path), bytes);
  for (const below of [...folders, folder]) disk.syncFolder(below);
}

function forgetOlder(disk: Disk, releases: string, kept: ReadonlySet<string>): void {
  for (const name of disk.list(releases)) {
    if (!kept.has(name)) disk.remove(join(releases, name));
  }
}
