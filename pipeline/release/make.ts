import { createHash } from 'node:crypto';

import type { CheckReport, Finding } from '../../schema/index.js';
import { audit, type AuditFinding, type Eyes } from '../audit/index.js';
import { lookInSteps, reportOf } from '../checks/index.js';
import { earlierViews, publicSight, roll, view, type Roll, type View } from '../gate/index.js';
import type { Content, Instant } from '../model/index.js';
import {
  artOf,
  buildSite,
  drawPictures,
  publicData,
  STEPS_TOLD,
  type Draw,
} from '../out/site/index.js';
import {
  approvalsOf,
  readArt,
  readKeptArt,
  readProperty,
  readReview,
  type Folder,
  type ReviewFault,
  keptDictionaries,
} from '../read/index.js';
import { headOf, type Approvals } from '../review/index.js';
import {
  select,
  selectForSite,
  type Policy,
  type Released,
  type SiteSelection,
} from '../select/index.js';
import { blockers } from './blocks.js';
import { auditEyes } from './eyes.js';
import { sayUnapproved } from './unapproved.js';

/** A content folder, read and checked: what holds at every instant. */
export interface Prepared {
  readonly folder: Folder;
  readonly content: Content;
  readonly report: CheckReport;
  readonly released: Released;
  readonly approvals: Approvals;
  readonly eyes: Eyes;
  /** The head of the ledger: a record that keeps it notices a ledger that is cut later. */
  readonly ledger: string;
}

/** How work is stopped on its way. */
export interface Stoppable {
  /** Aborted once it is to stop: the child that makes the pages ends then. */
  readonly signal?: AbortSignal;
  /** Does what has no pause in it, and writes nothing: whoever may stop it wraps it. */
  readonly whole?: <T>(job: () => T | Promise<T>) => Promise<T>;
}

/** How a site is made. */
export interface Making extends Stoppable {
  readonly at: Instant;
  /** Marks every page as not to be passed on. */
  readonly preview: boolean;
  /** What becomes of cards that are not approved. */
  readonly policy: Policy;
  readonly theme?: string;
  readonly draw: Draw;
  /** Told what is being done, in a few words. */
  readonly progress?: (step: string) => void;
}

/** A finished site that may go out, and what it was made of. */
export interface Made {
  readonly ok: true;
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly seen: View;
  readonly called: Roll;
  /** Cards that are not shown as they stand in the files. */
  readonly instead: Pick<SiteSelection, 'held' | 'broughtBack'>;
}

/** What is in the way of every site. */
export type Unready =
  | { readonly why: 'blocked'; readonly findings: readonly Finding[] }
  | { readonly why: 'ledger'; readonly faults: readonly ReviewFault[] };

/** Why a site was not made, or may not go out. */
export type Unmade =
  | { readonly why: 'before since' }
  | { readonly why: 'blocked'; readonly findings: readonly Finding[] }
  /** What is not approved, a line each, with what was changed since. */
  | { readonly why: 'unapproved'; readonly lines: readonly string[] }
  | { readonly why: 'audit'; readonly findings: readonly AuditFinding[] };

/** Reads and checks a content folder; what is in the way if no site can be made of it at all. */
export function prepare(folder: Folder): Prepared | Unready {
  const steps = prepareInSteps(folder);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

/** As `prepare`: whoever asks may do something else, or stop, between two steps. */
export function* prepareInSteps(
  folder: Folder,
): Generator<undefined, Prepared | Unready, undefined> {
  const review = readReview(folder);
  if (review.faults.length > 0) return { why: 'ledger', faults: review.faults };
  const { content, fonts } = readProperty(folder);
  yield undefined;
  const approvals = approvalsOf(folder, content, fonts, review);
  const looked = yield* lookInSteps(content, { fonts, dictionaries: keptDictionaries, approvals });
  const report = reportOf(looked);
  const released = select(content);
  if (released) {
    const ledger = headOf(review.ledger);
    return { folder, content, report, released, approvals, eyes: auditEyes(folder), ledger };
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
  const { content, report } = prepared;
  const whole = making.whole ?? wholly;
  const audience = { kind: 'public', at: making.at } as const;
  const selected = await whole(() => selectedFor(prepared, making));
  const seen = await whole(() => view(selected.released, audience));
  if (!seen) return { ok: false, unmade: { why: 'before since' } };
  const called = roll(selected.released, audience);
  const blocking = blockers(report, called);
  if (blocking.length > 0) return { ok: false, unmade: { why: 'blocked', findings: blocking } };
  if (selected.refused.length > 0) {
    const lines = sayUnapproved(selected.refused, prepared);
    return { ok: false, unmade: { why: 'unapproved', lines } };
  }
  const earlier = await whole(() => earlierViews(selected.released, seen, STEPS_TOLD));
  const files = await siteOf([seen, ...earlier], prepared.folder, selected.keptArt, making);
  making.progress?.('searching the finished site for what is held');
  const leaks = await audit(files, content, { at: making.at }, prepared.eyes, whole);
  if (leaks.length > 0) return { ok: false, unmade: { why: 'audit', findings: leaks } };
  return { ok: true, files, seen, called, instead: selected };
}

/** Does it, and nothing can stop it. */
export async function wholly<T>(job: () => T | Promise<T>): Promise<T> {
  return await job();
}

/** Nothing is selected of a content that cannot be read, and then it is not prepared either. */
function selectedFor(
  { content, approvals, released }: Prepared,
  { at, policy }: Making,
): SiteSelection {
  const order = { content, approvals, policy, at, see: publicSight(at) };
  const nothing = { refused: [], held: [], broughtBack: [], keptArt: new Map<string, string>() };
  return selectForSite(order) ?? { released: { ...released, sets: [] }, ...nothing };
}

async function siteOf(
  [seen, ...earlier]: readonly [View, ...View[]],
  folder: Folder,
  keptArt: ReadonlyMap<string, string>,
  { preview, theme, draw, progress, signal, whole = wholly }: Making,
): Promise<ReadonlyMap<string, Uint8Array>> {
  progress?.('drawing pictures');
  const artAt = (source: string): Uint8Array => {
    const kept = keptArt.get(source);
    return kept === undefined ? readArt(folder, source) : readKeptArt(folder, kept);
  };
  const pictures = await drawPictures(artOf(seen), artAt, draw.picture);
  const data = await whole(() => publicData(seen, earlier, pictures.bySource, preview));
  return buildSite(data, {
    images: pictures.files,
    drawShare: draw.share,
    ...(progress === undefined ? {} : { progress }),
    ...(signal === undefined ? {} : { signal }),
    ...(theme === undefined ? {} : { theme }),
  });
}

/** SHA-256 over the names and bytes of all files, in the order of the names, in hexadecimal. */
export function digestOf(files: ReadonlyMap<string, Uint8Array>): string {
  const sum = createHash('sha256');
  for (const [path, bytes] of files) {
    sum.update(`${path}\n${String(bytes.length)}\n`).update(bytes);
  }
  return sum.digest('hex');
}
