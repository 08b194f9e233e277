import { join } from 'node:path';

import { RehearsalRecord } from '../../schema/index.js';
import { stepsUntil, writeInstant, type Instant } from '../model/index.js';
import type { Draw } from '../out/site/index.js';
import type { Policy } from '../select/index.js';
import { validate, type Folder } from '../read/index.js';
import { realDisk, refuseBadPlace, stagePlain, writeWhole, type Disk } from '../write/index.js';
import {
  digestOf,
  makeSite,
  prepare,
  wholly,
  type Making,
  type Prepared,
  type Stoppable,
  type Unmade,
  type Unready,
} from './make.js';
import { remembered } from './remembered.js';
import { readJson } from './verify.js';

/** What to rehearse. */
export interface RehearseOrder extends Stoppable {
  /** The content folder on the disk: the record goes below it. */
  readonly contentPath: string;
  readonly folder: Folder;
  readonly now: Instant;
  readonly theme?: string;
  readonly policy: Policy;
  readonly draw: Draw;
  /** Where the sites are kept to be looked at, in a folder for its owner's eyes; nowhere if not said. */
  readonly out?: string;
  readonly disk?: Disk;
  /** Told what is being done, in a few words. */
  readonly progress?: (step: string) => void;
}

export type Rehearsed =
  | { readonly done: true; readonly record: RehearsalRecord }
  | { readonly done: false; readonly unready: Unready };

/**
 * Builds and audits the site of every step of time to come, as it will be published then if nothing
 * changes, and writes down for each what would be in its way and the digest that it will have.
 * @throws PlaceError, SiteError, ArtError, or what the disk throws.
 */
export async function rehearse(order: RehearseOrder): Promise<Rehearsed> {
  const { disk = realDisk, now } = order;
  if (order.out !== undefined) refuseBadPlace(disk, order.out, true);
  order.progress?.('reading and checking');
  const whole = order.whole ?? wholly;
  const content = await whole(() => contentDigest(order.folder));
  const prepared = await whole(() => prepare(order.folder));
  if ('why' in prepared) return { done: false, unready: prepared };
  const { property, sets } = prepared.released;
  const steps = stepsUntil(property, sets, Number.MAX_SAFE_INTEGER).filter((at) => at > now);
  const draw = { ...order.draw, picture: remembered(order.draw.picture) };
  const lifts: RehearsalRecord['lifts'] = [];
  const sites = new Map<string, Uint8Array>();
  for (const at of steps) {
    const when = writeInstant(at, property.zone);
    const progress = (step: string): void => order.progress?.(`the site of ${when}: ${step}`);
    progress('choosing cards');
    const { lift, files } = await rehearseLift(prepared, { ...order, draw, progress }, at);
    lifts.push({ at: when, ...lift });
    const name = when.replace(/\[.*$/, '').replaceAll(':', '');
    for (const [path, bytes] of files) sites.set(`${name}/${path}`, bytes);
  }
  await whole(() => order.progress?.('writing'));
  if (order.out !== undefined) stagePlain(disk, order.out, sites, 'private')();
  const made = writeInstant(now, property.zone);
  const record: RehearsalRecord = { format: 1, made, content, ledger: prepared.ledger, lifts };
  const text = `${JSON.stringify(record, null, 2)}\n`;
  writeWhole(disk, join(order.contentPath, RECORD), new TextEncoder().encode(text));
  return { done: true, record };
}

async function rehearseLift(
  prepared: Prepared,
  { theme, draw, policy, signal, whole, progress }: RehearseOrder,
  at: Instant,
): Promise<{
  lift: Omit<RehearsalRecord['lifts'][number], 'at'>;
  files: ReadonlyMap<string, Uint8Array>;
}> {
  const how: Making = {
    at,
    preview: false,
    draw,
    policy,
    ...(theme === undefined ? {} : { theme }),
    ...(signal === undefined ? {} : { signal }),
    ...(whole === undefined ? {} : { whole }),
    ...(progress === undefined ? {} : { progress }),
  };
  const made = await makeSite(prepared, how);
  if (made.ok) return { lift: { digest: digestOf(made.files), blocks: [] }, files: made.files };
  return { lift: { digest: null, blocks: [...sayBlocks(made.unmade)] }, files: new Map() };
}

function sayBlocks(unmade: Unmade): readonly string[] {
  switch (unmade.why) {
    case 'before since':
      return ['nothing of this property is public by then'];
    case 'blocked':
      return unmade.findings.map(
        ({ file, line, message, rule }) => `${file}:${String(line)}: ${message} [${rule}]`,
      );
    case 'unapproved':
      return unmade.lines;
    case 'audit':
      return unmade.findings.map(({ file, words, from }) => `${file}: ${words} (${from})`);
  }
}

const RECORD = 'review/rehearsal.json';

/** What releases and rehearsals write below the content folder is no part of the content. */
const OWN = /^review\/(?:releases\/|rehearsal\.json)/;

/** SHA-256 over the names and bytes of a content folder, in hexadecimal. */
function contentDigest(folder: Folder): string {
  const files = folder
    .list()
    .filter(({ path }) => !OWN.test(path))
    .map(({ path, outside }) => [path, outside ? new Uint8Array() : folder.read(path)] as const);
  return digestOf(new Map(files));
}

/** The last rehearsal of a content folder, and whether the content is still what it was then. */
export interface Rehearsal {
  readonly record: RehearsalRecord;
  readonly isCurrent: boolean;
}

/** Reads the last rehearsal; null if there is none that can be understood. */
export function readRehearsal(
  contentPath: string,
  folder: Folder,
  disk: Disk = realDisk,
): Rehearsal | null {
  const valid = validate(RehearsalRecord, readJson(join(contentPath, RECORD), disk));
  if (!valid.ok) return null;
  return { record: valid.value, isCurrent: valid.value.content === contentDigest(folder) };
}
