import type { ReleaseRecord } from '../../schema/index.js';
import { auditSite } from '../audit/index.js';
import { writeInstant, type Instant } from '../model/index.js';
import type { Draw } from '../out/site/index.js';
import type { Folder } from '../read/index.js';
import type { Policy } from '../select/index.js';
import {
  realDisk,
  refuseBadPlace,
  takeLock,
  thisProcess,
  type Asker,
  type Disk,
  type Holder,
} from '../write/index.js';
import {
  digestOf,
  makeSite,
  prepare,
  wholly,
  type Made,
  type Prepared,
  type Stoppable,
  type Unmade,
  type Unready,
} from './make.js';
import { keepPictures } from './kept-pictures.js';
import { lastRelease } from './last.js';
import { noteRelease } from './note-release.js';
import { sendOut } from './send-out.js';

/** What to publish, and where. */
export interface PublishOrder extends Stoppable {
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
  /** What becomes of cards that are not approved. */
  readonly policy: Policy;
  readonly draw: Draw;
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
      /** Cards that are not shown as they stand in the files, for want of approval. */
      readonly instead: Made['instead'];
      /** Whether it stands in the ledger, where the property has one; a preview never does. */
      readonly noted: boolean;
    }
  | { readonly done: true; readonly changed: false; readonly asOf: string }
  | { readonly done: false; readonly refusal: Refusal };

/** Why nothing was published. */
export type Refusal =
  | Unmade
  | Unready
  | { readonly why: 'future' }
  /** A preview would take the place of what the public sees. */
  | { readonly why: 'public place' }
  | { readonly why: 'locked'; readonly path: string; readonly holder: Holder | null }
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
  if (isPreview(order) && isPublicPlace(disk, order)) return refused({ why: 'public place' });
  order.progress?.('reading and checking');
  const prepared = await (order.whole ?? wholly)(() => prepare(order.folder));
  if ('why' in prepared) return refused(prepared);
  const pictures = `${order.out}.pictures`;
  const wasThere = disk.kind(pictures) !== null;
  const kept = order.plain ? null : await keepPictures(disk, pictures, order.draw);
  const draw = { ...order.draw, ...(kept && { picture: kept.picture }) };
  let made;
  try {
    made = await makeSite(prepared, { ...order, draw, preview: isPreview(order) });
    await (order.whole ?? wholly)(() => order.progress?.('writing'));
  } catch (error) {
    // Whoever stops the first release finds nothing of it.
    if (kept && !wasThere) disk.remove(pictures);
    throw error;
  }
  if (!made.ok) return refused(made.unmade);
  const outcome = putOut(disk, order, prepared, made);
  if (outcome.done) kept?.forgetOthers();
  return outcome;
}

function putOut(disk: Disk, order: PublishOrder, prepared: Prepared, made: Made): PublishOutcome {
  const { earlier = false, takeBack = false } = order;
  const mayKeep = (kept: Made['files']): boolean =>
    auditSite(kept, prepared.content, order.at).length === 0;
  const sending = { ...order, earlier, takeBack, mayKeep };
  const sent = sendOut(disk, sending, recordOf(order, prepared, made), made.files);
  switch (sent.is) {
    case 'out':
      return {
        done: true,
        changed: true,
        record: sent.record,
        files: made.files.size,
        instead: made.instead,
        noted: isToBeNoted(order, prepared) && noted(disk, order, prepared, sent.record),
      };
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

/** A property that asks for no approvals keeps no ledger. */
function isToBeNoted(order: PublishOrder, { released: { property } }: Prepared): boolean {
  return !isPreview(order) && property.approvals !== 'none';
}

function noted(
  disk: Disk,
  { contentPath, folder, now, asker = thisProcess }: PublishOrder,
  { released }: Prepared,
  record: ReleaseRecord,
): boolean {
  const { zone } = released.property;
  return noteRelease(disk, { contentPath, folder, zone, now, asker }, record);
}

/** What cannot be understood counts as public. */
function isPublicPlace(disk: Disk, { out, plain }: PublishOrder): boolean {
  const last = plain ? null : lastRelease(disk, out);
  return last !== null && (last === 'unread' || !last.release.preview);
}

/** An instant that has come needs no mark. */
function isPreview({ preview, at, now }: PublishOrder): boolean {
  return preview && at > now;
}

function recordOf(
  order: PublishOrder,
  { released: { property }, ledger }: Prepared,
  { files, seen, called }: Made,
): ReleaseRecord {
  const say = (instant: Instant): string => writeInstant(instant, property.zone);
  const step = seen.asOf ?? order.at;
  const digest = digestOf(files);
  const day = say(step).slice(0, 10);
  const preview = isPreview(order);
  return {
    format: 1,
    id: `${day}-${digest.slice(0, 12)}${preview ? '-preview' : ''}`,
    made: say(order.now),
    at: say(order.at),
    asOf: say(step),
    preview,
    digest,
    files: files.size,
    shown: [...called.shown],
    placeholders: [...called.placeholders],
    left: [...called.left],
    zoneData: process.versions.tz ?? 'unknown',
    ledger,
  };
}
