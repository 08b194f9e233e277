import type { Folder } from '../read/index.js';
import type { Io } from './io.js';

/** How long a command works in silence, and between two lines, in milliseconds. */
const PATIENCE = 1000;

/** Told what is being done, in a few words. */
export type Progress = (step: string) => void;

/**
 * Does a job that tells its progress. Whoever looks on at a terminal reads the newest step once a
 * second; a job of less than a second, and one that nobody looks at, says nothing.
 */
export async function withProgress<T>(
  io: Io,
  job: (progress: Progress) => T | Promise<T>,
): Promise<T> {
  if (!io.terminal) return job(() => undefined);
  const line = new ProgressLine(io);
  try {
    return await job((step) => {
      line.tell(step);
    });
  } finally {
    line.end();
  }
}

class ProgressLine {
  #said: number;
  #step = '';
  #timer: NodeJS.Timeout | undefined;

  constructor(private readonly io: Io) {
    this.#said = io.elapsed();
  }

  tell(step: string): void {
    this.#step = step;
    if (this.io.elapsed() - this.#said >= PATIENCE) this.#say();
    else this.#wait();
  }

  end(): void {
    clearTimeout(this.#timer);
  }

  /** A step that is told early and takes long is said while it goes on. */
  #wait(): void {
    const left = PATIENCE - (this.io.elapsed() - this.#said);
    this.#timer ??= setTimeout(() => {
      this.#say();
    }, left);
  }

  #say(): void {
    this.end();
    this.#timer = undefined;
    this.#said = this.io.elapsed();
    this.io.err(`${this.#step} …\n`);
  }
}

/** The folder, telling how many of its files have been read. */
export function countedFolder(folder: Folder, progress: Progress): Folder {
  let files = 0;
  let read = 0;
  return {
    list: () => {
      const entries = folder.list();
      files = entries.length;
      return entries;
    },
    read: (path) => {
      read += 1;
      progress(`reading: ${String(read)} of ${String(files)} files`);
      return folder.read(path);
    },
  };
}
