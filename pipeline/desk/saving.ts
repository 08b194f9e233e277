import { join } from 'node:path';

import { isOwnFile, writeChanges } from '../mend/index.js';
import { realDisk, type Disk } from '../write/index.js';
import type { CardFile } from './card-files.js';
import { bytesOf, fileText, type FileText } from './texts.js';

/** Where cards are written. */
export interface SavingPlace {
  readonly contentPath: string;
  readonly now: () => number;
  readonly disk?: Disk;
}

/** What became of a file: written, or not since it is another by now, or somebody else is writing. */
export type Written = 'written' | 'moved' | 'busy';

/** How often, and after how many milliseconds, it is tried again while somebody else writes. */
const TRIES = 40;
const WAIT = 50;

/**
 * Writes a card's file if it still is what it was taken for: under the lock of the content, in one
 * journalled write, which is whole or not at all.
 * @throws what the disk throws.
 */
export async function writeCard(
  place: SavingPlace,
  { path }: CardFile,
  before: FileText,
  after: FileText,
): Promise<Written> {
  const changes = new Map([[path, { before: bytesOf(before), after: bytesOf(after) }]]);
  for (let tries = 0; tries < TRIES; tries += 1) {
    const { contentPath, disk = realDisk } = place;
    const outcome = await writeChanges({ contentPath, now: place.now(), disk }, changes);
    if (outcome.done) return 'written';
    if (readCardFile(place, path)?.digest !== before.digest) return 'moved';
    await new Promise((resolve) => setTimeout(resolve, WAIT));
  }
  return 'busy';
}

/** A card's file as it is on the disk; null if it is not there, is a link, or is no text. */
export function readCardFile(
  { contentPath, disk = realDisk }: SavingPlace,
  path: string,
): FileText | null {
  if (!isOwnFile(disk, contentPath, path)) return null;
  return fileText(disk.read(join(contentPath, path)));
}
