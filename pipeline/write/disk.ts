import {
  closeSync,
  fsyncSync,
  lstatSync,
  mkdirSync,
  openSync,
  readFileSync,
  readdirSync,
  readlinkSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeSync,
} from 'node:fs';
import { dirname } from 'node:path';

/** The disk that things are written to: each call is one step that can be the last before a crash. */
export interface Disk {
  kind(path: string): 'file' | 'folder' | 'link' | null;
  /** Names in a folder, sorted. */
  list(path: string): readonly string[];
  read(path: string): Uint8Array;
  readLink(path: string): string;
  makeFolder(path: string): void;
  /** Makes a folder that only its owner can look into. */
  makePrivateFolder(path: string): void;
  /** Writes a file whole and has it on the disk before it returns. */
  writeSynced(path: string, bytes: Uint8Array): void;
  syncFolder(path: string): void;
  rename(from: string, to: string): void;
  link(target: string, path: string): void;
  /** Removes a file, a link or a folder with all in it; nothing if it is not there. */
  remove(path: string): void;
}

/** The real disk. Its calls throw as node:fs does. */
export const realDisk: Disk = {
  kind(path) {
    const stat = lstatSync(path, { throwIfNoEntry: false });
    if (!stat) return null;
    if (stat.isSymbolicLink()) return 'link';
    return stat.isDirectory() ? 'folder' : 'file';
  },
  list: (path) => readdirSync(path).sort(),
  read: (path) => readFileSync(path),
  readLink: (path) => readlinkSync(path),
  makeFolder: (path) => void mkdirSync(path, { recursive: true }),
  makePrivateFolder: (path) => void mkdirSync(path, { recursive: true, mode: 0o700 }),
  writeSynced(path, bytes) {
    const file = openSync(path, 'w');
    try {
      let written = 0;
      while (written < bytes.length) written += writeSync(file, bytes, written);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
  },
  syncFolder(path) {
    const folder = openSync(path, 'r');
    try {
      fsyncSync(folder);
    } finally {
      closeSync(folder);
    }
  },
  rename: (from, to) => {
    renameSync(from, to);
  },
  link: (target, path) => {
    symlinkSync(target, path);
  },
  remove: (path) => {
    rmSync(path, { recursive: true, force: true });
  },
};

/** Writes one file: beside its place, synced, then renamed. Its folder is made if need be. */
export function writeWhole(disk: Disk, path: string, bytes: Uint8Array): void {
  const folder = dirname(path);
  disk.makeFolder(folder);
  const beside = `${path}.new`;
  disk.writeSynced(beside, bytes);
  disk.rename(beside, path);
  disk.syncFolder(folder);
}
