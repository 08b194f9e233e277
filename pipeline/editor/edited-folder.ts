import type { Entry, Folder } from '../read/index.js';

/** Files of words, which are kept in memory; of all others only what is asked for is read. */
const KEPT = /\.(?:md|yaml)$/;

/**
 * A folder as an editor shows it: open documents stand over the files of the disk. A file that has
 * not changed gives the same bytes, as the same value, each time.
 */
export class EditedFolder implements Folder {
  readonly #disk: Folder;
  readonly #open = new Map<string, Uint8Array>();
  readonly #kept = new Map<string, Uint8Array>();
  readonly #stale = new Set<string>();
  #listed: readonly Entry[] | null = null;

  constructor(disk: Folder) {
    this.#disk = disk;
  }

  /** @throws what the disk throws when it fails. */
  list(): readonly Entry[] {
    this.#listed ??= this.#withOpen(this.#disk.list());
    return this.#listed;
  }

  /** @throws if there is no such file. */
  read(path: string): Uint8Array {
    const open = this.#open.get(path);
    if (open) return open;
    if (!KEPT.test(path)) return this.#disk.read(path);
    const before = this.#kept.get(path);
    if (before && !this.#stale.has(path)) return before;
    const now = this.#disk.read(path);
    this.#stale.delete(path);
    if (before && isSame(before, now)) return before;
    this.#kept.set(path, now);
    return now;
  }

  /** A document is open, or has other words now. */
  show(path: string, text: string): void {
    if (!this.#open.has(path)) this.#listed = null;
    this.#open.set(path, new TextEncoder().encode(text));
  }

  /** A document is closed: what the disk has counts again. */
  hide(path: string): void {
    if (this.#open.delete(path)) this.changed(path);
  }

  /** Something on the disk is other than it was: this file, or what is below this folder. */
  changed(path: string): void {
    this.#listed = null;
    this.#stale.add(path);
    for (const kept of this.#kept.keys()) if (kept.startsWith(`${path}/`)) this.#stale.add(kept);
  }

  /** Everything may be other than it was. */
  changedAll(): void {
    this.#listed = null;
    for (const path of this.#kept.keys()) this.#stale.add(path);
  }

  #withOpen(entries: readonly Entry[]): readonly Entry[] {
    const there = new Set(entries.map(({ path }) => path));
    const added = [...this.#open.keys()].filter((path) => !there.has(path));
    if (added.length === 0) return entries;
    const all = [...entries, ...added.map((path) => ({ path, outside: false }))];
    return all.sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0));
  }
}

function isSame(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, at) => byte === b[at]);
}
