import { createHash } from 'node:crypto';
import { join } from 'node:path';

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
  swapIn,
  writePlain,
  writeWhole,
  type Disk,
} from '../write/index.js';
import { blockers } from './blocks.js';

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
  readonly theme?: string;
  readonly encode: Encode;
  readonly disk?: Disk;
  /** Told what is being done, in a few words. */
  readonly progress?: (step: string) => void;
}

export type PublishOutcome =
  | { readonly done: true; readonly record: ReleaseRecord; readonly files: number }
  | { readonly done: false; readonly refusal: Refusal };

/** Why nothing was published. */
export type Refusal =
  | { readonly why: 'future' }
  | { readonly why: 'before since' }
  | { readonly why: 'blocked'; readonly findings: readonly Finding[] }
  | { readonly why: 'audit'; readonly findings: readonly AuditFinding[] };

/**
 * Publishes the site of an instant: check, select, gate, out, audit, write. Anything that is not
 * right refuses the whole; nothing is written then.
 * @throws PlaceError, SiteError, ArtError, or what the disk throws.
 */
export async function publish(order: PublishOrder): Promise<PublishOutcome> {
  const { at, now, preview, disk = realDisk } = order;
  if (at > now && !preview) return refused({ why: 'future' });
  refuseBadPlace(disk, order.out, order.plain);
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
  const record = recordOf(order, released, seen, called, files);
  writeRelease(disk, order, record, files);
  return { done: true, record, files: files.size };
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

function writeRelease(
  disk: Disk,
  order: PublishOrder,
  record: ReleaseRecord,
  files: ReadonlyMap<string, Uint8Array>,
): void {
  if (order.plain) writePlain(disk, order.out, files);
  else swapIn(disk, order.out, record.id, files);
  const path = join(order.contentPath, 'review', 'releases', `${record.id}.json`);
  const text = `${JSON.stringify(record, null, 2)}\n`;
  writeWhole(disk, path, new TextEncoder().encode(text));
}
