import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Command } from 'commander';

import {
  answeredAll,
  groundOf,
  newSet,
  unanswered,
  writeChanges,
  type Answers,
  type Ground,
  type NewSet,
} from '../mend/index.js';
import { memoryFolder, type Folder } from '../read/index.js';
import { realDisk } from '../write/index.js';
import { COULD_NOT_RUN, FINE, REFUSED, UsageError, type Io } from './io.js';
import { answersFrom, optionsOf, type SetFlags } from './new-set-flags.js';
import { conversation, type Conversation } from './new-set-talk.js';
import { missingText, newSetText, worseText } from './new-set-text.js';
import { contentOf } from './options.js';
import { withProgress } from './progress.js';
import { plain } from './report-text.js';

/** `holdback new set`: a set to start from, and a property if there is none. */
export function addNewSet(group: Command, io: Io, finish: (code: number) => void): void {
  const command = group
    .command('set')
    .description(
      'a set to start from, and a property if there is none: asks, or takes it all by options',
    )
    .addHelpText('after', HELP);
  for (const option of optionsOf()) command.addOption(option);
  command.action(async (_flags: unknown, own: Command) => {
    finish(await runNewSet(own.optsWithGlobals<SetFlags>(), io));
  });
}

const HELP = `
On a terminal it asks for what is not said: ? explains a question, an empty answer takes what stands
in brackets, Ctrl-C leaves nothing. It shows what would be written; --write writes it.

  holdback new set --property-title "The Ferrywrights" --zone Europe/London \\
    --title "High Water" --street 2027-04-16 --licensor "Amara Linde" \\
    --subset "title=Crew;numbers=1-48;bio=35-60" --subset "title=Charts;numbers=LC-1-LC-8" --write

What the licence asks for, its legal line first, is for the contract and counsel to say.
`;

async function runNewSet(flags: SetFlags, io: Io): Promise<number> {
  const { path, folder } = placeOf(flags, io);
  const found = await withProgress(io, (_progress, whole) => whole(() => groundOf(folder, io.now)));
  if (!found.ok) return refuse([found.why], '', io);
  const { ground } = found;
  const given = answersFrom(flags);
  const { answers, why } = answeredAll(given, ground);
  const missing = unanswered(answers, ground, given);
  const asks = io.talk !== undefined && missing.length > 0 && why.length === 0;
  if (!asks) {
    if (missing.length > 0) return refuse(why, missingText(missing), io, COULD_NOT_RUN);
    if (why.length > 0) return refuse(why, '', io);
    return settle(await made(answers, folder, ground, io), flags, path, io);
  }
  const talk = conversation(io.talk);
  try {
    const all = await talk.askAll(answers, ground);
    return await settle(await made(all, folder, ground, io), flags, path, io, talk);
  } finally {
    talk.close();
  }
}

/** The content folder, which need not be there. */
function placeOf(flags: SetFlags, io: Io): { path: string; folder: Folder } {
  const path = resolve(io.cwd, flags.content);
  const stat = statSync(path, { throwIfNoEntry: false });
  if (!stat) return { path, folder: memoryFolder(new Map()) };
  if (!stat.isDirectory())
    throw new UsageError(`${flags.content} is no folder: name one with --content DIR`);
  return contentOf(flags, io);
}

function made(answers: Answers, folder: Folder, ground: Ground, io: Io): Promise<NewSet> {
  return withProgress(io, (progress, whole) =>
    whole(() => newSet(answers, folder, ground, { progress })),
  );
}

/** Shows what would be written, and writes it if it is asked to. */
async function settle(
  result: NewSet,
  flags: SetFlags,
  path: string,
  io: Io,
  talk?: Conversation,
): Promise<number> {
  if (!result.ok) return refuse(result.why, worseText(result.worse), io);
  io.out(newSetText(result));
  if (!(await isToBeWritten(flags, talk))) {
    io.out('\nnothing is written: add --write to write it\n');
    return FINE;
  }
  const written = await writeNew(path, result, io);
  if (!written.done) return refuse(written.why, '', io);
  io.out(
    `\nwritten: see it with \`holdback check\`${result.stubs > 0 ? '' : ', and make cards with `holdback new cards`'}\n`,
  );
  return FINE;
}

async function isToBeWritten(
  { write, yes, dryRun }: SetFlags,
  talk?: Conversation,
): Promise<boolean> {
  if (dryRun === true) return false;
  if (write === true || yes === true) return true;
  return talk ? talk.confirms('\nWrite these files') : false;
}

/** Makes the content folder if need be, and takes it away again if nothing came to stand in it. */
async function writeNew(path: string, { files }: Extract<NewSet, { ok: true }>, io: Io) {
  const wasThere = realDisk.kind(path) !== null;
  realDisk.makeFolder(path);
  try {
    return await writeChanges({ contentPath: path, now: io.now }, files);
  } finally {
    if (!wasThere && realDisk.list(path).length === 0) realDisk.remove(path);
  }
}

function refuse(why: readonly string[], more: string, io: Io, code: number = REFUSED): number {
  io.err('refused: nothing was written\n');
  for (const line of why) io.err(`  ${plain(line)}\n`);
  io.err(more);
  return code;
}
