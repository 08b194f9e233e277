import { createHash } from 'node:crypto';

import type { CheckReport, Finding } from '../../schema/index.js';
import { audit, type AuditFinding, type Eyes } from '../audit/index.js';
import { check } from '../checks/index.js';
import { roll, view, type Roll, type View } from '../gate/index.js';
import type { Content, Instant } from '../model/index.js';
import { artOf, buildSite, drawPictures, publicData, type Encode } from '../out/site/index.js';
import { readArt, readProperty, readReview, type Folder, type ReviewFault } from '../read/index.js';
import { headOf } from '../review/index.js';
import { select, type Released } from '../select/index.js';
import { blockers } from './blocks.js';
import { auditEyes } from './eyes.js';

/** A content folder, read and checked: what holds at every instant. */
export interface Prepared {
  readonly folder: Folder;
  readonly content: Content;
  readonly report: CheckReport;
  readonly released: Released;
  readonly eyes: Eyes;
  /** The head of the ledger: a record that keeps it notices a ledger that is cut later. */
  readonly ledger: string;
}

/** How a site is made. */
export interface Making {
  readonly at: Instant;
  /** Marks every page as not to be passed on. */
  readonly preview: boolean;
  readonly theme?: string;
  readonly encode: Encode;
  /** Told what is being done, in a few words. */
  readonly progress?: (step: string) => void;
}

/** A finished site that may go out, and what it was made of. */
export interface Made {
  readonly ok: true;
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly seen: View;
  readonly called: Roll;
}

/** What is in the way of every site. */
export type Unready =
  | { readonly why: 'blocked'; readonly findings: readonly Finding[] }
  | { readonly why: 'ledger'; readonly faults: readonly ReviewFault[] };

/** Why a site was not made, or may not go out. */
export type Unmade =
  | { readonly why: 'before since' }
  | { readonly why: 'blocked'; readonly findings: readonly Finding[] }
  | { readonly why: 'audit'; readonly findings: readonly AuditFinding[] };

/** Reads and checks a content folder; what is in the way if no site can be made of it at all. */
export function prepare(folder: Folder): Prepared | Unready {
  const review = readReview(folder);
  if (review.faults.length > 0) return { why: 'ledger', faults: review.faults };
  const { content, fonts } = readProperty(folder);
  const report = check(content, { fonts });
  const released = select(content);
  if (released) {
    const ledger = headOf(review.ledger);
    return { folder, content, report, released, eyes: auditEyes(folder), ledger };
  }
  const findings = report.findings.filter(({ severity }) => severity === 'error');
  return { why: 'blocked', findings };
}

/**
 * Makes the public site of an instant and searches it for what is held then.
 * @throws SiteError, ArtError.
 */
export async function makeSite(
  prepared: Prepared,
  making: Making,
): Promise<Made | { readonly ok: false; readonly unmade: Unmade }> {
  const { content, report, released } = prepared;
  const audience = { kind: 'public', at: making.at } as const;
  const seen = view(released, audience);
  if (!seen) return { ok: false, unmade: { why: 'before since' } };
  const called = roll(released, audience);
  const blocking = blockers(report, called);
  if (blocking.length > 0) return { ok: false, unmade: { why: 'blocked', findings: blocking } };
  const files = await siteOf(seen, prepared.folder, making);
  making.progress?.('searching the finished site for what is held');
  const leaks = await audit(files, content, { at: making.at }, prepared.eyes);
  if (leaks.length > 0) return { ok: false, unmade: { why: 'audit', findings: leaks } };
  return { ok: true, files, seen, called };
}

async function siteOf(
  seen: View,
  folder: Folder,
  { preview, theme, encode, progress }: Making,
): Promise<ReadonlyMap<string, Uint8Array>> {
  progress?.('drawing pictures');
  const pictures = await drawPictures(artOf(seen), (source) => readArt(folder, source), encode);
  progress?.('making pages');
  const data = publicData(seen, pictures.bySource, preview);
  return buildSite(data, { images: pictures.files, ...(theme === undefined ? {} : { theme }) });
}

/** SHA-256 over the names and bytes of all files, in the order of the names, in hexadecimal. */
export function digestOf(files: ReadonlyMap<string, Uint8Array>): string {
  const sum = createHash('sha256');
  for (const [path, bytes] of files) {
    sum.update(`${path}\n${String(bytes.length)}\n`).update(bytes);
  }
  return sum.digest('hex');
}
