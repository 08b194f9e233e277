import { createHash } from 'node:crypto';

import type { Finding, ReleaseRecord } from '../../schema/index.js';
import { auditSite, type AuditFinding } from '../audit/index.js';
import { check } from '../checks/index.js';
import { roll, view, type Roll, type View } from '../gate/index.js';
import { writeInstant, type Instant } from '../model/index.js';
import { artOf, buildSite, drawPictures, publicData, type Encode } from '../out/site/index.js';
import { readArt, readProperty, type Folder } from '../read/index.js';
import { select, type Released } from '../select/index.js';
import {
  realDisk,
  refuseBadPlace,
  takeLock,
  thisProcess,
  type Asker,
  type Disk,
  type Holder,
} from '../write/index.js';
import { blockers } from './blocks.js';
import { sendOut } from './send-out.js';

/** What to publish, and where. */
export interface PublishOrder {
  /** The content folder on the disk: the private record goes below it. */
  readonly contentPath: string;
  readonly folder: Folder;
  readonly at: Instant;
  readonly now: Instant;
  readonly preview: boolean;
  readonly out: string;
  readonly plain: boolean;
  /** Allows an earlier instant than that of the last release, and a site that shows less. */
  readonly earlier?: boolean;
  /** Allows the same, and lists in the record what caches must forget. */
  readonly takeBack?: boolean;
  readonly theme?: string;
  readonly encode: Encode;
  readonly disk?: Disk;
  /** The process that publishes; this one, if it is not said. */
  readonly asker?: Asker;
  /** Told what is being done, in a few words. */
  readonly progress?: (step: string) => void;
}

/** `changed` is false if the last release is the same: nothing was written then. */
export type PublishOutcome =
  | {
      readonly done: true;
      readonly changed: true;
      readonly record: ReleaseRecord;
      readonly files: number;
    }
  | { readonly done: true; readonly changed: false; readonly asOf: string }
  | { readonly done: false; readonly refusal: Refusal };

/** Why nothing was published. */
export type Refusal =
  | { readonly why: 'future' }
  | { readonly why: 'before since' }
  | { readonly why: 'locked'; readonly path: string; readonly holder: Holder | null }
  | { readonly why: 'blocked'; readonly findings: readonly Finding[] }
  | { readonly why: 'audit'; readonly findings: readonly AuditFinding[] }
  /** The last release shows what this would not, or is of a later instant: then `since`. */
  | { readonly why: 'less'; readonly since: string | null; readonly goes: readonly string[] }
  /** What lies in the place of the last release cannot be understood. */
  | { readonly why: 'unread' };

/**
 * Publishes the site of an instant: check, select, gate, out, audit, write. Anything that is not
 * right refuses the whole; nothing is written then. One process at a time publishes into a place.
 * @throws PlaceError, SiteError, ArtError, or what the disk throws.
 */
export async function publish(order: PublishOrder): Promise<PublishOutcome> {
  const { at, now, preview, disk = realDisk, asker = thisProcess } = order;
  if (at > now && !preview) return refused({ why: 'future' });
  refuseBadPlace(disk, order.out, order.plain);
  const lock = takeLock(disk, order.out, asker, now);
  if (!lock.free) return refused({ why: 'locked', path: lock.path, holder: lock.holder });
  try {
    return await publishAlone(order, disk);
  } finally {
    lock.release();
  }
}

async function publishAlone(order: PublishOrder, disk: Disk): Promise<PublishOutcome> {
  const { at, now, preview } = order;
  order.progress?.('reading and checking');
  const { content, fonts } = readProperty(order.folder);
  const report = check(content, { fonts });
  const released = select(content);
  if (!released) return refused({ why: 'blocked', findings: errorsOf(report.findings) });
  const audience = { kind: 'public', at } as const;
  const seen = view(released, audience);
  if (!seen) return refused({ why: 'before since' });
  const called = roll(released, audience);
  const blocking = blockers(report, called);
  if (blocking.length > 0) return refused({ why: 'blocked', findings: blocking });
  const files = await siteOf(seen, { ...order, preview: preview && at > now });
  order.progress?.('searching the finished site for what is held');
  const leaks = auditSite(files, content, at);
  if (leaks.length > 0) return refused({ why: 'audit', findings: leaks });
  return putOut(disk, order, recordOf(order, released, seen, called, files), files);
}

function putOut(
  disk: Disk,
  order: PublishOrder,
  record: ReleaseRecord,
  files: ReadonlyMap<string, Uint8Array>,
): PublishOutcome {
  const { earlier = false, takeBack = false } = order;
  const sent = sendOut(disk, { ...order, earlier, takeBack }, record, files);
  switch (sent.is) {
    case 'out':
      return { done: true, changed: true, record: sent.record, files: files.size };
    case 'unchanged':
      return { done: true, changed: false, asOf: sent.asOf };
    case 'less':
      return refused({ why: 'less', since: sent.since, goes: sent.goes });
    case 'unread':
      return refused({ why: 'unread' });
  }
}

function refused(refusal: Refusal): PublishOutcome {
  return { done: false, refusal };
}

function errorsOf(findings: readonly Finding[]): readonly Finding[] {
  return findings.filter((finding) => finding.severity === 'error');
}

async function siteOf(seen: View, order: PublishOrder): Promise<ReadonlyMap<string, Uint8Array>> {
  order.progress?.('drawing pictures');
  const pictures = await drawPictures(
    artOf(seen),
    (source) => readArt(order.folder, source),
    order.encode,
  );
  order.progress?.('making pages');
  const data = publicData(seen, pictures.bySource, order.preview);
  const theme = order.theme === undefined ? {} : { theme: order.theme };
  return buildSite(data, { images: pictures.files, ...theme });
}

function recordOf(
  order: PublishOrder,
  { property }: Released,
  seen: View,
  called: Roll,
  files: ReadonlyMap<string, Uint8Array>,
): ReleaseRecord {
  const say = (instant: Instant): string => writeInstant(instant, property.zone);
  const step = seen.asOf ?? order.at;
  const digest = digestOf(files);
  const day = say(step).slice(0, 10);
  return {
    format: 1,
    id: `${day}-${digest.slice(0, 12)}${order.preview && order.at > order.now ? '-preview' : ''}`,
    made: say(order.now),
    at: say(order.at),
    asOf: say(step),
    preview: order.preview && order.at > order.now,
    digest,
    files: files.size,
    shown: [...called.shown],
    placeholders: [...called.placeholders],
    left: [...called.left],
    zoneData: process.versions.tz ?? 'unknown',
  };
}

/** SHA-256 over the names and bytes of all files, in the order of the names. */
function digestOf(files: ReadonlyMap<string, Uint8Array>): string {
  const sum = createHash('sha256');
  for (const [path, bytes] of files) {
    sum.update(`${path}\n${String(bytes.length)}\n`).update(bytes);
  }
  return sum.digest('hex');
}
