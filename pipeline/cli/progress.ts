import type { Folder } from '../read/index.js';
import { goOn, type Whole } from './interrupts.js';
import type { Io } from './io.js';
import { isDiscreet } from './options.js';

/** How long a command works in silence, and between two lines, in milliseconds. */
const PATIENCE = 1000;

/** Told what is being done, in a few words. */
export type Progress = (step: string) => void;

/** What a job tells its progress to, and what it does without a pause in it. */
export interface Working {
  readonly progress: Progress;
  readonly whole: Whole;
}

/**
 * Does a job that tells its progress, and that Ctrl-C stops: between two steps, and anywhere within
 * what it does by `whole`. Whoever looks on at a terminal reads the newest step once a second; a job
 * of less than a second, and one that nobody looks at or that others read the log of, says nothing.
 * @throws Cancelled if it was stopped.
 */
export async function withProgress<T>(
  io: Io,
  job: (progress: Progress, whole: Whole) => T | Promise<T>,
  { discreet }: { readonly discreet?: boolean | undefined } = {},
): Promise<T> {
  const line = io.terminal && !isDiscreet(discreet, io) ? new ProgressLine(io) : null;
  const signal = io.interrupts?.signal;
  const deaf = io.interrupts?.hear();
  try {
    return await job(
      (step) => {
        goOn(signal);
        line?.tell(step);
      },
      io.interrupts?.whole ?? (async (run) => await run()),
    );
  } finally {
    line?.end();
    deaf?.();
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
