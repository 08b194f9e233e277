import { join } from 'node:path';

import type { ReleaseRecord } from '../../schema/index.js';
import { writeInstant, type Instant } from '../model/index.js';
import { readReview, type Folder } from '../read/index.js';
import { appended, ledgerText } from '../review/index.js';
import { settle, takeLock, writeWhole, type Asker, type Disk } from '../write/index.js';

/** Where a release is noted, by whom, and when. */
export interface Noting {
  /** The content folder on the disk. */
  readonly contentPath: string;
  readonly folder: Folder;
  readonly zone: string;
  readonly now: Instant;
  readonly asker: Asker;
}

const LEDGER = 'review/ledger.jsonl';

/**
 * Puts a release that went out into the ledger; false if somebody else was writing it, or it cannot be
 * trusted: the release is out all the same, and its record says of what it was made.
 */
export function noteRelease(disk: Disk, noting: Noting, record: ReleaseRecord): boolean {
  const { contentPath, folder, zone, now, asker } = noting;
  const path = join(contentPath, LEDGER);
  const lock = takeLock(disk, path, asker, now);
  if (!lock.free) return false;
  try {
    settle(disk, contentPath);
    const { ledger, faults } = readReview(folder);
    if (faults.length > 0) return false;
    const { id: release, asOf, digest } = record;
    const entry = { kind: 'released', at: writeInstant(now, zone), release, asOf, digest } as const;
    const text = ledgerText(appended(ledger, [entry]));
    writeWhole(disk, path, new TextEncoder().encode(text));
    return true;
  } finally {
    lock.release();
  }
}
