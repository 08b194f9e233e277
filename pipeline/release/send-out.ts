import { join } from 'node:path';

import type { ReleaseRecord } from '../../schema/index.js';
import type { Instant } from '../model/index.js';
import { stagePlain, stageSwap, writeWhole, type Disk } from '../write/index.js';
import {
  addressesToPurge,
  isEarlier,
  isSame,
  lastRelease,
  toKeep,
  withKept,
  wouldGo,
} from './last.js';

type Files = ReadonlyMap<string, Uint8Array>;

/** Where a finished site goes, and what it may do to the one that is there. */
export interface Sending {
  /** The content folder on the disk: the private record goes below it. */
  readonly contentPath: string;
  readonly out: string;
  readonly plain: boolean;
  readonly at: Instant;
  /** Allows an earlier instant than that of the last release, and a site that shows less. */
  readonly earlier: boolean;
  /** Allows the same, and says what caches must forget. */
  readonly takeBack: boolean;
  /** Whether what is kept of the release before may go out again. */
  readonly mayKeep: (kept: Files) => boolean;
}

const NOTHING: Files = new Map();

/** What became of a finished site. */
export type Sent =
  | { readonly is: 'out'; readonly record: ReleaseRecord }
  | { readonly is: 'unchanged'; readonly asOf: string }
  | { readonly is: 'less'; readonly since: string | null; readonly goes: readonly string[] }
  | { readonly is: 'unread' };

/**
 * Puts a finished site in the place of the last release, unless the two are the same or something
 * would go that nobody said may go. All that is written before the last rename lies beside what is
 * out: the private record too, so that a list of what to purge is never lost.
 * @throws PlaceError, or what the disk throws.
 */
export function sendOut(disk: Disk, sending: Sending, record: ReleaseRecord, files: Files): Sent {
  const { out, plain, earlier, takeBack } = sending;
  const last = plain ? null : lastRelease(disk, out);
  if (last === 'unread' && !earlier && !takeBack) return { is: 'unread' };
  if (last === null || last === 'unread') return written(disk, sending, record, files);
  if (isSame(disk, out, last, files)) return { is: 'unchanged', asOf: last.release.asOf };
  // A preview was shown to nobody outside: nothing of it can be taken from the public.
  const goes = last.release.preview ? [] : wouldGo(last, files);
  const isBack = !last.release.preview && isEarlier(last, sending.at);
  if ((goes.length > 0 || isBack) && !earlier && !takeBack) {
    return { is: 'less', since: isBack ? last.release.asOf : null, goes };
  }
  if (!takeBack) {
    const kept = earlier ? NOTHING : toKeep(disk, out, last, files);
    const mayKeep = kept.size > 0 && sending.mayKeep(kept);
    return written(disk, sending, record, mayKeep ? withKept(files, kept) : files);
  }
  const takenBack = { parts: [...goes], addresses: [...addressesToPurge(last, files)] };
  return written(disk, sending, { ...record, takenBack }, files);
}

function written(disk: Disk, sending: Sending, record: ReleaseRecord, files: Files): Sent {
  const { contentPath, out, plain } = sending;
  const putInPlace = plain ? stagePlain(disk, out, files) : stageSwap(disk, out, record.id, files);
  const text = `${JSON.stringify(record, null, 2)}\n`;
  const path = join(contentPath, 'review', 'releases', `${record.id}.json`);
  writeWhole(disk, path, new TextEncoder().encode(text));
  putInPlace();
  return { is: 'out', record };
}
