import { resolve } from 'node:path';

import type { Command } from 'commander';
import { createColors } from 'picocolors';

import { bioFits, check } from '../checks/index.js';
import { view } from '../gate/index.js';
import type { Content } from '../model/index.js';
import { approvalsOf, readProperty, readReview, keptDictionaries } from '../read/index.js';
import { readRehearsal } from '../release/index.js';
import { select, type Released } from '../select/index.js';
import {
  readabilityPicture,
  readabilityText,
  readingLevels,
  statusSheet,
  statusText,
  type StatusQuestion,
} from '../status/index.js';
import { realDisk, writeWhole } from '../write/index.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, inColour, type Common } from './options.js';
import { countedFolder, withProgress, type Working } from './progress.js';

interface StatusFlags extends Common {
  readonly format: string;
  readonly cut?: boolean;
  readonly mine?: string;
  readonly readability?: string | true;
}

/** `holdback status`: the status sheet. */
export function addStatus(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('status')
    .description('the state of each subset, who has what, and what opens when (for the house)')
    .option('--cut', 'the cards alone that were not read against the current cut')
    .option('--mine <person>', 'the cards of this writer alone')
    .option(
      '--readability [file]',
      'how hard the bios are to read, as a table; with a file, as a picture (SVG) too',
    )
    .option('--format <format>', 'text or json', 'text')
    .action(async (_flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<StatusFlags>();
      finish(
        await withProgress(io, (progress, whole) => runStatus(flags, io, { progress, whole })),
      );
    });
}

async function runStatus(
  flags: StatusFlags,
  io: Io,
  { progress, whole }: Working,
): Promise<number> {
  const { path, folder } = contentOf(flags, io);
  const { content, fonts } = await whole(() => readProperty(countedFolder(folder, progress)));
  const released = select(content);
  if (!released) {
    io.err('some files cannot be read: run `holdback check` first\n');
    return REFUSED;
  }
  if (flags.readability !== undefined) {
    tellReadability(flags.readability, content, released, io);
    return FINE;
  }
  const review = readReview(folder);
  if (review.faults.length > 0) {
    io.err('the ledger cannot be trusted: run `holdback ledger` to see what is wrong with it\n');
    return REFUSED;
  }
  const approvals = await whole(() => approvalsOf(folder, content, fonts, review));
  const isJudged = released.property.approvals !== 'none';
  const sheet = await whole(() =>
    statusSheet(
      {
        released,
        report: check(content, { fonts, dictionaries: keptDictionaries, approvals, progress }),
        fits: bioFits(content, fonts),
        rehearsal: readRehearsal(path, folder),
        reviewed: isJudged ? { content, approvals, ...review } : null,
        now: io.now,
      },
      questionOf(flags, released),
    ),
  );
  const red = createColors(inColour(io)).red;
  io.out(
    flags.format === 'json'
      ? `${JSON.stringify(sheet, null, 2)}\n`
      : statusText(sheet, released.property.zone, red),
  );
  return FINE;
}

/** The table, and the picture if a file is named for it. */
function tellReadability(file: string | true, content: Content, released: Released, io: Io): void {
  const levels = readingLevels(content);
  const highest = view(released, { kind: 'house' })?.highest ?? null;
  io.out(readabilityText(levels, highest, createColors(inColour(io)).red));
  if (file === true) return;
  const picture = readabilityPicture(levels, released.property, highest);
  writeWhole(realDisk, resolve(io.cwd, file), new TextEncoder().encode(picture));
  io.err(`wrote ${file}\n`);
}

/** What is asked besides the sheet: null without --cut and --mine. */
function questionOf({ cut, mine }: StatusFlags, { people }: Released): StatusQuestion | null {
  if (mine !== undefined && people.every(({ id }) => id !== mine)) {
    throw new UsageError(`people.yaml knows no ${mine}`);
  }
  if (cut !== true && mine === undefined) return null;
  return { cut: cut === true, writer: mine ?? null };
}
