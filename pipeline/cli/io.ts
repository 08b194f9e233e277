import { writeSync } from 'node:fs';
import { isatty } from 'node:tty';

import type { Instant } from '../model/index.js';
import { processInterrupts, type Interrupts } from './interrupts.js';

/** Where a person answers questions. */
export interface Talk {
  readonly input: NodeJS.ReadableStream;
  readonly output: NodeJS.WritableStream;
}

/** The world outside a command: everything that it reads or prints but files. */
export interface Io {
  readonly now: Instant;
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Milliseconds since some moment; it only grows. */
  readonly elapsed: () => number;
  /** So many octets of chance that nobody can foretell. */
  readonly random: (octets: number) => Uint8Array<ArrayBuffer>;
  /** Whether a person looks at standard error. */
  readonly terminal: boolean;
  /** Ctrl-C; a command that is given none cannot be stopped. */
  readonly interrupts?: Interrupts;
  /** Standard input and output, if a person sits at both. */
  readonly talk?: Talk;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

/** Exit codes: fine, findings or refused, could not run. */
export const FINE = 0;
export const REFUSED = 1;
export const COULD_NOT_RUN = 2;

/** The command was called in a way that it does not understand. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}

const STDERR = 2;

/**
 * Writes to standard error at once. Ctrl-C may break off whatever is under way, and a stream that it
 * broke off would keep all that is written afterwards to itself.
 */
function writeError(text: string): void {
  const bytes = new TextEncoder().encode(text);
  let written = 0;
  try {
    while (written < bytes.length) written += writeSync(STDERR, bytes, written);
  } catch {
    process.stderr.write(bytes.subarray(written));
  }
}

/** This process as the world of a command; the clock is given. */
export function processIo(now: Instant): Io {
  return {
    now,
    cwd: process.cwd(),
    env: process.env,
    elapsed: () => performance.now(),
    random: (octets) => crypto.getRandomValues(new Uint8Array(octets)),
    terminal: isatty(STDERR),
    interrupts: processInterrupts(),
    ...(isatty(0) && isatty(1) ? { talk: { input: process.stdin, output: process.stdout } } : {}),
    out: (text) => void process.stdout.write(text),
    err: writeError,
  };
}
