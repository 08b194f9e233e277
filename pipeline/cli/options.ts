import { statSync } from 'node:fs';
import { resolve } from 'node:path';

import { readInstant, type Instant } from '../model/index.js';
import { diskFolder, type Folder } from '../read/index.js';
import { settleLeft } from '../submission/index.js';
import { UsageError, type Io } from './io.js';

/** Options that every command has. */
export interface Common {
  readonly content: string;
  readonly debug?: boolean;
}

/**
 * The content folder of a command, after what was left half written in it is finished or undone.
 * @throws UsageError if there is no such folder.
 */
export function contentOf(options: Common, io: Io): { path: string; folder: Folder } {
  const path = resolve(io.cwd, options.content);
  if (statSync(path, { throwIfNoEntry: false })?.isDirectory() !== true) {
    throw new UsageError(
      `there is no folder ${options.content}: run this where the content is, or add --content DIR`,
    );
  }
  settleLeft({ contentPath: path, now: io.now });
  return { path, folder: diskFolder(path) };
}

/**
 * The instant that a command is asked about; now, if it is not said.
 * @throws UsageError for text that is no instant.
 */
export function instantFrom(text: string | undefined, io: Io, option = 'at'): Instant {
  if (text === undefined) return io.now;
  const reading = readInstant(text);
  if (reading.ok) return reading.at;
  throw new UsageError(
    `--${option} ${text}: ${reading.why}. Write it like "2027-04-16T09:00:00+01:00[Europe/London]".`,
  );
}

/** Whether output may be read by others: said, or a build machine. */
export function isDiscreet(stated: boolean | undefined, io: Io): boolean {
  return stated ?? (io.env['CI'] !== undefined && io.env['CI'] !== '' && io.env['CI'] !== 'false');
}

/** @throws UsageError for a set that is not among these. */
export function checkSet(id: string | undefined, sets: readonly { readonly id: string }[]): void {
  if (id === undefined || sets.some((set) => set.id === id)) return;
  throw new UsageError(`there is no set ${id}`);
}

/** Whether to print in colour: a person looks, and nothing says not to. */
export function inColour(io: Io): boolean {
  return io.terminal && (io.env['NO_COLOR'] ?? '') === '' && io.env['TERM'] !== 'dumb';
}

/**
 * Reads an option whose value is one of a few words.
 * @throws UsageError for any other, when it is read.
 */
export function oneOf<T extends string>(
  option: string,
  allowed: readonly T[],
): (text: string) => T {
  return (text) => {
    const found = allowed.find((word) => word === text);
    if (found !== undefined) return found;
    throw new UsageError(`--${option} ${text}: it is ${allowed.join(' or ')}`);
  };
}
