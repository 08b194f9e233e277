import { isAbsolute, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

/** Addresses of files in a content folder, and their paths in it. */
export class Places {
  readonly root: string;
  /** Addresses as the editor writes them: others may write the same file in another way. */
  readonly #written = new Map<string, string>();

  constructor(root: string) {
    this.root = resolve(root);
  }

  /** The path in the content folder, with /; null for what lies outside, and for hidden files. */
  pathOf(uri: string): string | null {
    const file = fileOf(uri);
    if (file === null) return null;
    const path = relative(this.root, file);
    if (path === '' || path.startsWith('..') || isAbsolute(path)) return null;
    const parts = path.split(sep);
    return parts.some((part) => part.startsWith('.')) ? null : parts.join('/');
  }

  /** The address of a path: as the editor wrote it, if it did. */
  uriOf(path: string): string {
    return this.#written.get(path) ?? pathToFileURL(join(this.root, path)).href;
  }

  /** Notes how the editor writes an address. */
  note(path: string, uri: string): void {
    this.#written.set(path, uri);
  }
}

/** The file that an address names; null for an address of something else. */
export function fileOf(uri: string): string | null {
  if (!uri.startsWith('file:')) return null;
  try {
    return fileURLToPath(uri);
  } catch {
    return null;
  }
}
