import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Command } from 'commander';

import { rasterise } from '../read/index.js';
import {
  publish,
  verifySite,
  type PublishOrder,
  type PublishOutcome,
  type Refusal,
} from '../release/index.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, instantFrom, isDiscreet, type Common } from './options.js';
import { withProgress } from './progress.js';
import { count, findingsText, plain } from './report-text.js';

interface PublishFlags extends Common {
  readonly at?: string;
  readonly out?: string;
  readonly preview?: boolean;
  readonly plain?: boolean;
  readonly theme?: string;
  readonly verify?: string;
  readonly earlier?: boolean;
  readonly takeBack?: boolean;
  readonly discreet?: boolean;
}

/** `holdback publish`: the checklist site as of an instant. */
export function addPublish(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('publish')
    .description('build the checklist site as of an instant')
    .option('--out <dir>', 'where the site goes')
    .option('--at <instant>', 'the instant; now, if it is not said')
    .option('--preview', 'allow an instant to come; every page says so')
    .option('--plain', 'write into an empty folder instead of swapping a link')
    .option('--theme <dir>', 'templates of your own')
    .option('--earlier', 'allow a site that is earlier or shows less than the last one')
    .option('--take-back', 'the same, and list what caches must forget')
    .option('--verify <dir>', 'publish nothing: compare a published folder with its release.json')
    .option('--discreet', 'tell only what the public may know (default where CI is set)')
    .option('--no-discreet', 'tell everything')
    .action(async (_flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<PublishFlags>();
      finish(
        flags.verify === undefined
          ? await runPublish(flags, io)
          : runVerify(flags.verify, flags, io),
      );
    });
}

async function runPublish(flags: PublishFlags, io: Io): Promise<number> {
  if (flags.out === undefined) throw new UsageError('--out DIR is missing');
  const order = orderOf(flags, flags.out, io);
  const outcome = await withProgress(io, (progress) => publish({ ...order, progress }));
  const discreet = isDiscreet(flags.discreet, io);
  if (!outcome.done) {
    io.err(sayRefusal(outcome.refusal, flags.out, discreet));
    return REFUSED;
  }
  io.out(sayDone(outcome, flags.out));
  if (flags.takeBack === true) io.out(sayTakenBack(outcome, discreet));
  return FINE;
}

function orderOf(flags: PublishFlags, out: string, io: Io): PublishOrder {
  const { path, folder } = contentOf(flags, io);
  return {
    contentPath: path,
    folder,
    at: instantFrom(flags.at, io),
    now: io.now,
    preview: flags.preview === true,
    out: resolve(io.cwd, out),
    plain: flags.plain === true,
    earlier: flags.earlier === true,
    takeBack: flags.takeBack === true,
    ...(flags.theme === undefined ? {} : { theme: resolve(io.cwd, flags.theme) }),
    encode: (art: Uint8Array, width: number) => rasterise(art, width, 'webp'),
  };
}

type Done = Extract<PublishOutcome, { done: true }>;

function sayDone(outcome: Done, out: string): string {
  if (!outcome.changed) {
    return `nothing has changed since ${plain(outcome.asOf)}: nothing was published\n`;
  }
  const { record, files } = outcome;
  const kind = record.preview ? 'a preview, not to be passed on' : 'published';
  return `${kind}: ${count(files, 'file')} as of ${record.asOf} in ${out}\n`;
}

/** What was taken back is for the house: where others read the log, only the record tells it. */
function sayTakenBack(outcome: Done, discreet: boolean): string {
  if (!outcome.changed) return '';
  const { id, takenBack } = outcome.record;
  if (discreet) return `what to purge from caches is in review/releases/${id}.json\n`;
  if (!takenBack) return 'no last release could be read: purge the whole site from caches\n';
  const addresses = takenBack.addresses.map((address) => `  ${plain(address)}\n`).join('');
  return `${lines('taken back:', takenBack.parts)}purge from caches:\n${addresses}`;
}

function lines(title: string, items: readonly string[]): string {
  if (items.length === 0) return '';
  return `${title}\n${items.map((item) => `  ${plain(item)}\n`).join('')}`;
}

/** Whether a published folder is what its `release.json` says. */
function runVerify(dir: string, flags: PublishFlags, io: Io): number {
  if (flags.out !== undefined) {
    throw new UsageError('--verify publishes nothing: leave out --out, or leave out --verify');
  }
  const folder = resolve(io.cwd, dir);
  if (statSync(folder, { throwIfNoEntry: false })?.isDirectory() !== true) {
    throw new UsageError(`there is no folder ${dir}: name a published one after --verify`);
  }
  const found = verifySite(folder);
  if (found === null) {
    io.err(
      `${dir} has no release.json that can be read: it is no published folder, or a broken one\n`,
    );
    return REFUSED;
  }
  const { release, missing, changed, extra } = found;
  if (missing.length + changed.length + extra.length === 0) {
    const files = count(Object.keys(release.files).length, 'file');
    io.out(`${dir} is what its release.json says: ${files} as of ${plain(release.asOf)}\n`);
    return FINE;
  }
  io.out(
    `${dir} is not what its release.json says\n` +
      [lines('missing:', missing), lines('changed:', changed), lines('extra:', extra)].join(''),
  );
  return REFUSED;
}

const SECRET_REFUSAL = 'nothing was published: something has a finding; run the check in private\n';

function sayRefusal(refusal: Refusal, out: string, discreet: boolean): string {
  switch (refusal.why) {
    case 'future':
      return 'that instant is still to come: --preview builds it, and says so on every page\n';
    case 'before since':
      return 'nothing of this property is public by then\n';
    case 'locked':
      return sayLocked(refusal, out);
    case 'unread':
      return (
        `nothing was published: the last release in ${out} cannot be read, so nobody can tell ` +
        'what would go; --earlier publishes all the same\n'
      );
    case 'blocked':
    case 'audit':
    case 'less':
      return discreet ? SECRET_REFUSAL : sayFindings(refusal, out);
  }
}

type Found = Extract<Refusal, { why: 'blocked' | 'audit' | 'less' }>;

function sayFindings(refusal: Found, out: string): string {
  if (refusal.why === 'less') return sayLess(refusal, out);
  if (refusal.why === 'blocked') {
    const blocked = `nothing was published: ${count(refusal.findings.length, 'finding')} in the way`;
    return `${blocked}\n${findingsText(refusal.findings)}`;
  }
  const told = refusal.findings.map(({ file, words, from }) => `${file}: ${words} (${from})`);
  return lines('nothing was published: the finished site tells what is held', told);
}

function sayLess({ since, goes }: Extract<Refusal, { why: 'less' }>, out: string): string {
  const later = since === null ? '' : `: its last release is as of ${plain(since)}, which is later`;
  return (
    `nothing was published into ${out}${later}\n` +
    lines('this would go:', goes) +
    '--earlier publishes it all the same; --take-back too, and lists what to purge from caches\n'
  );
}

function sayLocked({ path, holder }: Extract<Refusal, { why: 'locked' }>, out: string): string {
  if (holder === null) {
    return `nothing was published: ${path} is in the way and is no lock; look at it and remove it\n`;
  }
  const since = new Date(holder.since).toISOString();
  return (
    `nothing was published: process ${String(holder.pid)} on ${holder.host} has been publishing ` +
    `into ${out} since ${since}; wait until it ends, or end it, and publish again. ` +
    `If there is no such process, remove ${path}\n`
  );
}
